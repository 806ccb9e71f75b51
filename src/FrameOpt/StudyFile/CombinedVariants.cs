using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile;

/// <summary>The variants asked for, put over the study one after the other: a later one counts where two set the same value.</summary>
/// <param name="Changes">In the order asked for, under the names asked for.</param>
internal sealed record CombinedVariants(IReadOnlyList<(string Name, Node.Entry Change)> Changes)
{
    /// <summary>All names, as the study calls itself.</summary>
    public string Name => string.Join(Study.VariantSeparator, Changes.Select(change => change.Name));

    /// <summary>Finds what is asked for: a variant of the file, or a choice of an option of its line, as in "engine=big".</summary>
    public static CombinedVariants Of(
        Node.Map root, IReadOnlyList<Node.Entry> variants, IEnumerable<string> asked, DiagnosticBag diagnostics)
    {
        var found = new List<(string, Node.Entry)>();
        foreach (var name in asked)
        {
            var change = variants.FirstOrDefault(variant => variant.Key.Text == name) ?? Choice(root, name, variants, diagnostics);
            if (change is not null && found.Exists(other => other.Item1 == name))
                diagnostics.AddForFile($"Variant `{name}` is asked for twice.", "Keep one of the two.");
            else if (change is not null)
                found.Add((name, change));
        }

        return new CombinedVariants(found);
    }

    /// <summary>The study with every change made, or null after an error, with its warnings, and the file so changed.</summary>
    public (Study? Study, IReadOnlyList<Warning> Warnings, Node.Map Root) Read(Node.Map root, string hash, DiagnosticBag diagnostics)
    {
        var changed = new DiagnosticBag(diagnostics.File, diagnostics.Folder, diagnostics.Cache);
        for (var later = 1; later < Changes.Count; later++)
        {
            foreach (var earlier in Changes.Take(later))
                AddConflicts(earlier, Changes[later], changed);
        }

        var merged = Changes.Aggregate(root, (under, change) => VariantReader.Apply(under, change.Change, changed));
        var study = StudySectionsReader.Read(merged, hash, changed);
        diagnostics.AddNew(changed, $"With `{Name}`: ");
        return (study is null ? null : study with { Variant = Name }, changed.Warnings, merged);
    }

    private static Node.Entry? Choice(Node.Map root, string name, IReadOnlyList<Node.Entry> variants, DiagnosticBag diagnostics)
    {
        string[] names = [.. variants.Select(entry => entry.Key.Text)];
        var options = Under(Under(root, "line"), "options");
        var at = name.IndexOf('=');
        if (at < 0 || options is null)
        {
            diagnostics.AddForFile($"This study has no variant `{name}`.", NearestName.Of(name, names) is { } near
                ? $"Did you mean `{near}`?"
                : names.Length > 0 ? $"Its variants are {string.Join(", ", names)}." : "It has none: leave --variant out.");
            return null;
        }

        var (option, choice) = (name[..at].Trim(), name[(at + 1)..].Trim());
        if (Under(options, option) is not { } choices)
            diagnostics.AddForFile($"The line of this study has no option `{option}`.",
                $"Its options are {string.Join(", ", options.Entries.Select(entry => entry.Key.Text))}.");
        else if (choices.Entries.FirstOrDefault(entry => entry.Key.Text == choice) is { Value: Node.Map } found)
            return found;
        else
            diagnostics.AddForFile($"{option} has no choice `{choice}`.",
                $"Its choices are {string.Join(", ", choices.Entries.Select(entry => entry.Key.Text))}.");
        return null;
    }

    private static Node.Map? Under(Node.Map? map, string key) =>
        map?.Entries.FirstOrDefault(entry => entry.Key.Text == key)?.Value as Node.Map;

    private static void AddConflicts((string Name, Node.Entry Change) earlier, (string Name, Node.Entry Change) later,
        DiagnosticBag diagnostics)
    {
        var before = Values(earlier.Change.Value, "").ToList();
        foreach (var (path, value) in Values(later.Change.Value, ""))
        {
            foreach (var other in before.Where(other => IsSamePlace(other.Path, path) && other.Value.Excerpt != value.Excerpt))
                diagnostics.AddWarning(value, $"`{earlier.Name}` and `{later.Name}` both set {path}: {value.Excerpt} of `{later.Name}` is "
                    + $"used, not {other.Value.Excerpt}.");
        }
    }

    /// <summary>True for one value, and for a value inside a group that the other replaces as a whole.</summary>
    private static bool IsSamePlace(string one, string other) => one == other
        || one.StartsWith($"{other}.", StringComparison.Ordinal) || other.StartsWith($"{one}.", StringComparison.Ordinal);

    private static IEnumerable<(string Path, Node Value)> Values(Node node, string path) => node is not Node.Map map ? [(path, node)]
        : map.Entries.SelectMany(entry => Values(entry.Value, path.Length > 0 ? $"{path}.{entry.Key.Text}" : entry.Key.Text));
}
