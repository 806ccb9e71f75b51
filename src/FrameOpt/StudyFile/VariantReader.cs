using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile;

/// <summary>Reads the variants of a study: the same file with some values written over.</summary>
internal static class VariantReader
{
    /// <summary>Largest number of variants of a file; each is a study to check.</summary>
    public const int MaxVariants = 50;

    private const string Variants = "variants";

    /// <summary>Stands in the place of a mass that a variant leaves out.</summary>
    private const string Dropped = "none";

    private static readonly string[] unchangeable = ["format", "template", Variants];

    /// <summary>The variants with a right name, in the file's order.</summary>
    public static IReadOnlyList<Node.Entry> Of(Node root, DiagnosticBag diagnostics)
    {
        if (root is not Node.Map map || map.Entries.FirstOrDefault(entry => entry.Key.Text == Variants) is not { } variants
            || variants.Value.IsNull)
            return [];
        if (variants.Value is not Node.Map { Entries.Count: > 0 } named)
        {
            diagnostics.Add(variants.Value, "variants wants a name for each variant, and under it what is different.",
                "Write each variant's name, and under it the keys of the study that are different, with their values.");
            return [];
        }

        if (named.Entries.Count > MaxVariants)
        {
            diagnostics.Add(variants.Key, $"There are {named.Entries.Count} variants; {MaxVariants} is the most.",
                "Split the study into several files.");
            return [];
        }

        return [.. named.Entries.Where(entry => IsRight(entry, named.Entries, diagnostics))];
    }

    /// <summary>The study with one variant's values in the place of its own. What the variant does not name stays.</summary>
    public static Node.Map Apply(Node.Map root, Node.Entry variant, DiagnosticBag diagnostics)
    {
        var changes = (Node.Map)variant.Value;
        foreach (var entry in changes.Entries.Where(entry => unchangeable.Contains(entry.Key.Text)))
            diagnostics.Add(entry.Key, $"{entry.Key.Text} is the same for the whole file.", "Remove it from the variant.");
        var allowed = changes with { Entries = [.. changes.Entries.Where(entry => !unchangeable.Contains(entry.Key.Text))] };
        return Merge(root with { Entries = [.. root.Entries.Where(entry => entry.Key.Text != Variants)] }, allowed, "", diagnostics);
    }

    private static bool IsRight(Node.Entry variant, IReadOnlyList<Node.Entry> all, DiagnosticBag diagnostics)
    {
        if (NameRules.Problem("variant", variant.Key.Text) is var (what, fix))
            diagnostics.Add(variant.Key, what, fix);
        else if (variant.Key.Text.Contains(Study.VariantSeparator))
            diagnostics.Add(variant.Key, $"The name of a variant contains `{Study.VariantSeparator}`, which joins the names of variants.",
                "Choose another name.");
        else if (all.TakeWhile(other => other != variant).Any(other => NameRules.AreAlike(other.Key.Text, variant.Key.Text)))
            diagnostics.Add(variant.Key, "Two variants have this name.", "Give each its own.");
        else if (variant.Value is not Node.Map { Entries.Count: > 0 })
            diagnostics.Add(variant.Value.IsNull ? variant.Key : variant.Value, $"Variant `{variant.Key.Excerpt}` changes nothing.",
                "Write under it the keys of the study that are different, with their values.");
        else
            return true;
        return false;
    }

    private static Node.Map Merge(Node.Map under, Node.Map over, string path, DiagnosticBag diagnostics)
    {
        var entries = under.Entries.ToList();
        foreach (var change in over.Entries)
        {
            var index = entries.FindIndex(entry => entry.Key.Text == change.Key.Text);
            if (index >= 0)
                entries[index] = Merge(entries[index], change, path.Length > 0 ? $"{path}.{change.Key.Text}" : change.Key.Text,
                    diagnostics);
            else if (path == "mission")
                diagnostics.Add(change.Key, $"The mission has no phase `{change.Key.Excerpt}`.",
                    Suggestion(change.Key.Text, entries.Select(entry => entry.Key.Text)));
            else
                entries.Add(change);
        }

        return under with { Entries = entries };
    }

    private static Node.Entry Merge(Node.Entry under, Node.Entry over, string path, DiagnosticBag diagnostics) =>
        (under.Value, over.Value) switch
        {
            (Node.Map below, Node.Map above) when path.StartsWith("factors.", StringComparison.Ordinal)
                && (HasValues(below) ? HasRange(above) : HasValues(above)) => over,
            (Node.Map below, Node.Map above) when !Reasons.IsFigure(below) && !Reasons.IsFigure(above) =>
                under with { Value = Merge(below, above, path, diagnostics) },
            (Node.List below, Node.Map above) when path == "machine.masses" =>
                under with { Value = MergeMasses(below, above, diagnostics) },
            _ => over,
        };

    /// <summary>Masses are a list in the file and are changed by their names.</summary>
    private static Node.List MergeMasses(Node.List under, Node.Map over, DiagnosticBag diagnostics)
    {
        var items = under.Items.ToList();
        foreach (var change in over.Entries)
        {
            var index = items.FindIndex(item => NameOf(item) == change.Key.Text);
            if (index >= 0 && change.Value is Node.Scalar { Text: Dropped })
                items.RemoveAt(index);
            else if (index < 0 && change.Value is Node.Map added && IsWhole(added))
                items.Add(Added(change, added, items, diagnostics));
            else if (index < 0)
                diagnostics.Add(change.Key, $"There is no mass named `{change.Key.Excerpt}`.",
                    Suggestion(change.Key.Text, items.Select(NameOf).OfType<string>())
                        + " To add a mass give all of it: its mass, forward, right and up.");
            else if (change.Value is Node.Map above)
                items[index] = Merge((Node.Map)items[index], above, "machine.masses[]", diagnostics);
            else
                diagnostics.Add(change.Value, $"The change of `{change.Key.Excerpt}` wants keys, each with its value.",
                    $"Write under `{change.Key.Excerpt}` its keys that are different, for example mass, with their values, or "
                        + $"`{change.Key.Excerpt}: {Dropped}` to drop it.");
        }

        return under with { Items = items };
    }

    /// <summary>A mass that the file does not have.</summary>
    private static Node.Map Added(Node.Entry change, Node.Map mass, List<Node> items, DiagnosticBag diagnostics)
    {
        if (NearestName.Of(change.Key.Text, items.Select(NameOf).OfType<string>()) is { } near)
            diagnostics.AddWarning(change.Key,
                $"a mass `{change.Key.Excerpt}` is added beside `{near}`; to change that one, write its name.");
        var name = new Node.Entry(new Node.Scalar("name", false, change.Key.Line, change.Key.Column), change.Key);
        return mass with { Entries = [name, .. mass.Entries] };
    }

    /// <summary>True when a change says all that a mass of its own needs.</summary>
    private static bool IsWhole(Node.Map mass) => (Has(mass, "mass") || Has(mass, "volume"))
        && Has(mass, "forward") && Has(mass, "right") && Has(mass, "up") && !Has(mass, "name");

    /// <summary>Values of a factor and its range take each other's place.</summary>
    private static bool HasValues(Node.Map factor) => Has(factor, "values");

    private static bool HasRange(Node.Map factor) => Has(factor, "from") || Has(factor, "to");

    private static bool Has(Node.Map map, string key) => map.Entries.Any(entry => entry.Key.Text == key);

    private static string? NameOf(Node item) =>
        item is Node.Map map && map.Entries.FirstOrDefault(entry => entry.Key.Text == "name") is { Value: Node.Scalar name } ? name.Text
            : null;

    private static string Suggestion(string name, IEnumerable<string> known) => NearestName.Of(name, known) is { } near
        ? $"Did you mean `{near}`?"
        : $"A variant changes what the file has: {string.Join(", ", known)}.";
}
