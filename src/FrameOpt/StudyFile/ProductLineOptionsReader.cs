using FrameOpt.Studies;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Reads what customers of a line choose, and checks every choice.</summary>
internal static class ProductLineOptionsReader
{
    /// <summary>Largest number of combinations of choices; each is a study to check.</summary>
    public const int MaxConfigurations = 60;

    private static readonly string[] changeable = ["machine", "wing", "mission", "strength", "limits"];
    private static readonly string[] taken = [.. LineKeys.ProductLineCustomer.Keys.Select(key => key.Name), "sample", "seed"];

    /// <summary>An option with what each choice changes.</summary>
    internal sealed record OptionChanges(ProductLineOption Option, IReadOnlyList<Node.Entry> Changes);

    /// <summary>The options, as far as they have choices.</summary>
    public static IReadOnlyList<OptionChanges> Options(Section line)
    {
        var read = new List<OptionChanges>();
        foreach (var option in line.Entries("options"))
        {
            if (NameRules.Problem("option", option.Key.Text) is var (what, fix))
                line.DiagnosticBag.Add(option.Key, what, fix);
            else if (taken.Contains(NameRules.Key(option.Key.Text)))
                line.DiagnosticBag.Add(option.Key, $"An option cannot be named `{option.Key.Text}`: customers have a key of that name.",
                    "Choose another name, such as that of the part it changes.");
            else if (read.Any(other => NameRules.AreAlike(other.Option.Name, option.Key.Text)))
                line.DiagnosticBag.Add(option.Key, "Two options have this name.", "Give each its own.");
            else if (option.Value is not Node.Map { Entries.Count: > 0 } choices)
                line.DiagnosticBag.Add(option.Key, $"The option `{option.Key.Excerpt}` has no choices.",
                    "Write under it a name for each choice, and under each the keys of the study that it changes, with their values.");
            else
                read.Add(new OptionChanges(new ProductLineOption(option.Key.Text, [.. choices.Entries.Select(choice => choice.Key.Text)]),
                    choices.Entries));
        }

        if (read.Aggregate(1.0, (product, option) => product * option.Changes.Count) > MaxConfigurations)
        {
            line.DiagnosticBag.Add(line.KeyAt("options"), $"The options make more than {MaxConfigurations} combinations.",
                "Leave out choices that hardly differ.");
            return [];
        }

        // A wrong choice still counts as a choice, so that customers who have it are not reported again.
        foreach (var option in read)
        {
            foreach (var (index, choice) in option.Changes.Index())
            {
                if (NameRules.Problem("choice", choice.Key.Text) is var (what, fix))
                    line.DiagnosticBag.Add(choice.Key, what, fix);
                else if (option.Changes.Take(index).Any(other => NameRules.AreAlike(other.Key.Text, choice.Key.Text)))
                    line.DiagnosticBag.Add(choice.Key, $"Two choices of {option.Option.Name} have this name.", "Give each its own.");
                Check(line, option.Option.Name, choice);
            }
        }

        return read;
    }

    /// <summary>Every combination of choices, or null after an error.</summary>
    public static IReadOnlyList<ProductLineConfiguration>? Configurations(
        Section line, Node.Map root, Study study, IReadOnlyList<OptionChanges> options, string? pilot)
    {
        var plain = root with { Entries = [.. root.Entries.Where(entry => entry.Key.Text is not ("line" or "decision"))] };
        foreach (var option in options)
        {
            foreach (var change in option.Changes)
                ValidateChoice(line, plain, study, change, $"In {option.Option.Name} `{change.Key.Excerpt}`: ");
        }

        if (line.DiagnosticBag.HasErrors)
            return null;
        List<ProductLineConfiguration> configurations = [];
        foreach (var choices in Combinations(options))
        {
            if (Configuration(line, plain, study, choices, pilot) is not { } configuration)
                return null;
            configurations.Add(configuration);
        }

        return configurations;
    }

    private static void Check(Section line, string option, Node.Entry choice)
    {
        if (choice.Value is not Node.Map { Entries.Count: > 0 } change)
        {
            line.DiagnosticBag.Add(choice.Key, $"The choice `{choice.Key.Excerpt}` of {option} changes nothing.",
                "Write under it the keys that are different, as in a variant.");
            return;
        }

        foreach (var entry in change.Entries.Where(entry => !changeable.Contains(entry.Key.Text)))
        {
            line.DiagnosticBag.Add(entry.Key, $"A choice of {option} cannot change `{entry.Key.Excerpt}`.",
                NearestName.Of(entry.Key.Text, changeable) is { } near
                ? $"Did you mean `{near}`?"
                : $"It may change {string.Join(", ", changeable)}; all else is the same for the whole line.");
        }
    }

    private static void ValidateChoice(Section line, Node.Map root, Study study, Node.Entry change, string prefix)
    {
        var diagnostics = new DiagnosticBag(line.DiagnosticBag.File, line.DiagnosticBag.Folder, line.DiagnosticBag.Cache);
        StudySectionsReader.Read(VariantReader.Apply(root, change, diagnostics), study.Hash, diagnostics);
        line.DiagnosticBag.AddNew(diagnostics, prefix);
    }

    private static ProductLineConfiguration? Configuration(
        Section line, Node.Map root, Study study, IReadOnlyList<Node.Entry> choices, string? pilot)
    {
        string[] names = [.. choices.Select(choice => choice.Key.Text)];
        var diagnostics = new DiagnosticBag(line.DiagnosticBag.File, line.DiagnosticBag.Folder, line.DiagnosticBag.Cache);
        var changed = choices.Aggregate(root, (under, choice) => VariantReader.Apply(under, choice, diagnostics));
        var read = choices.Count == 0 ? study : StudySectionsReader.Read(changed, study.Hash, diagnostics);
        line.DiagnosticBag.AddNew(diagnostics, $"With {string.Join(", ", names)}: ");
        if (read is null || diagnostics.HasErrors)
            return null;
        line.DiagnosticBag.AddNewAssumptions(diagnostics, string.Join(", ", names));
        line.DiagnosticBag.AddNewWarnings(diagnostics, $"with {string.Join(", ", names)}");
        var masses = read.Machine.Masses;
        var name = pilot ?? masses.First(item => item.IsBody).Name;
        if (masses.Any(item => item.Name == name))
            return new ProductLineConfiguration(names, read, name);
        line.DiagnosticBag.Add(
            line.At("pilot"), $"There is no mass named `{name}`{(names.Length > 0 ? $" with {string.Join(", ", names)}" : "")}.",
            NearestName.Of(name, masses.Select(item => item.Name)) is { } near
            ? $"Did you mean `{near}`?"
            : $"The masses are {string.Join(", ", masses.Select(item => item.Name))}.");
        return null;
    }

    /// <summary>One choice of every option, the last option changing first.</summary>
    private static IEnumerable<IReadOnlyList<Node.Entry>> Combinations(IReadOnlyList<OptionChanges> options)
    {
        IEnumerable<IReadOnlyList<Node.Entry>> all = [[]];
        foreach (var option in options)
            all = all.SelectMany(begun => option.Changes.Select(change => (IReadOnlyList<Node.Entry>)[.. begun, change])).ToList();
        return all;
    }
}
