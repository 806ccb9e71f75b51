using FrameOpt.Studies;
using FrameOpt.StudyFile.Sections;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile;

/// <summary>Reads what customers of a line choose, and tries out every choice.</summary>
internal static class LineOptionsReader
{
    /// <summary>Most combinations of choices: each is a study to check.</summary>
    public const int MostOutfits = 60;

    private const string Example = "`engine: { light: { machine: { propeller: { diameter: 1.25 m } } }, big: { machine: { propeller: { diameter: 1.40 m } } } }`";

    private static readonly string[] changeable = ["machine", "wing", "mission", "strength", "limits"];
    private static readonly string[] taken = [.. StudyKeys.LineCustomer.Keys.Select(key => key.Name), "sample", "seed"];

    /// <summary>An option with what each choice changes.</summary>
    internal sealed record Read(LineOption Option, IReadOnlyList<Node.Entry> Changes);

    /// <summary>The options, as far as they have choices.</summary>
    public static IReadOnlyList<Read> Options(Section line)
    {
        var read = new List<Read>();
        foreach (var option in line.Entries("options"))
        {
            if (taken.Contains(option.Key.Text))
                line.Findings.Mistake(option.Key, $"An option cannot be named `{option.Key.Text}`: customers have a key of that name.", "Choose another name, for example `engine`.");
            else if (option.Value is not Node.Map { Entries.Count: > 0 } choices)
                line.Findings.Mistake(option.Key, $"The option `{option.Key.Found}` has no choices.", $"Write under it each choice and what it changes, for example {Example}.");
            else
                read.Add(new Read(new LineOption(option.Key.Text, [.. choices.Entries.Select(choice => choice.Key.Text)]), choices.Entries));
        }

        // A wrong choice is a choice all the same: the customers who have it make no second mistake.
        foreach (var option in read)
        {
            foreach (var choice in option.Changes)
                Check(line, option.Option.Name, choice);
        }

        if (read.Aggregate(1.0, (product, option) => product * option.Changes.Count) > MostOutfits)
            line.Findings.Mistake(line.KeyAt("options"), $"The options make more than {MostOutfits} combinations.", "Leave out choices that hardly differ.");
        return read;
    }

    /// <summary>Every combination of choices, or null after a mistake.</summary>
    public static IReadOnlyList<LineOutfit>? Outfits(Section line, Node.Map root, Study study, IReadOnlyList<Read> options, string? pilot)
    {
        var plain = root with { Entries = [.. root.Entries.Where(entry => entry.Key.Text != "line")] };
        foreach (var option in options)
        {
            foreach (var change in option.Changes)
                TryOut(line, plain, study, change, $"In {option.Option.Name} `{change.Key.Found}`: ");
        }

        if (line.Findings.HasMistakes)
            return null;
        List<LineOutfit> outfits = [];
        foreach (var choices in Combinations(options))
        {
            if (Outfit(line, plain, study, choices, pilot) is not { } outfit)
                return null;
            outfits.Add(outfit);
        }

        return outfits;
    }

    private static void Check(Section line, string option, Node.Entry choice)
    {
        if (choice.Value is not Node.Map { Entries.Count: > 0 } change)
        {
            line.Findings.Mistake(choice.Key, $"The choice `{choice.Key.Found}` of {option} changes nothing.", "Write under it the keys that are different, as in a variant.");
            return;
        }

        foreach (var entry in change.Entries.Where(entry => !changeable.Contains(entry.Key.Text)))
        {
            line.Findings.Mistake(entry.Key, $"A choice of {option} cannot change `{entry.Key.Found}`.", NearestName.Of(entry.Key.Text, changeable) is { } near
                ? $"Did you mean `{near}`?"
                : $"It may change {string.Join(", ", changeable)}; all else is the same for the whole line.");
        }
    }

    private static void TryOut(Section line, Node.Map root, Study study, Node.Entry change, string prefix)
    {
        var findings = new Findings(line.Findings.File, line.Findings.Folder);
        WholeStudyReader.Read(VariantReader.Apply(root, change, findings), study.Hash, findings);
        line.Findings.TakeNew(findings, prefix);
    }

    private static LineOutfit? Outfit(Section line, Node.Map root, Study study, IReadOnlyList<Node.Entry> choices, string? pilot)
    {
        string[] names = [.. choices.Select(choice => choice.Key.Text)];
        var findings = new Findings(line.Findings.File, line.Findings.Folder);
        var changed = choices.Aggregate(root, (under, choice) => VariantReader.Apply(under, choice, findings));
        var read = choices.Count == 0 ? study : WholeStudyReader.Read(changed, study.Hash, findings);
        line.Findings.TakeNew(findings, $"With {string.Join(", ", names)}: ");
        if (read is null || findings.HasMistakes)
            return null;
        line.Findings.AssumeNew(findings, string.Join(", ", names));
        var masses = read.Machine.Masses;
        var name = pilot ?? masses.First(item => item.IsBody).Name;
        if (masses.Any(item => item.Name == name))
            return new LineOutfit(names, read, name);
        line.Findings.Mistake(line.At("pilot"), $"There is no mass named `{name}`{(names.Length > 0 ? $" with {string.Join(", ", names)}" : "")}.", NearestName.Of(name, masses.Select(item => item.Name)) is { } near
            ? $"Did you mean `{near}`?"
            : $"The masses are {string.Join(", ", masses.Select(item => item.Name))}.");
        return null;
    }

    /// <summary>One choice of every option, the last option changing first.</summary>
    private static IEnumerable<IReadOnlyList<Node.Entry>> Combinations(IReadOnlyList<Read> options)
    {
        IEnumerable<IReadOnlyList<Node.Entry>> all = [[]];
        foreach (var option in options)
            all = all.SelectMany(begun => option.Changes.Select(change => (IReadOnlyList<Node.Entry>)[.. begun, change])).ToList();
        return all;
    }
}
