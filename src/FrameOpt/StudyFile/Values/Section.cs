using FrameOpt.Model;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.StudyFile.Values;

/// <summary>A group of keys being read. Every accessor reports what is wrong with its key and then gives NaN or null, which stand for
/// "already reported": a study with errors is never used, so reading goes on to find the next one.</summary>
internal sealed class Section
{
    private readonly Dictionary<string, Node.Entry> entries = [];
    private readonly SectionKeys keys;

    private Section(Node.Map map, Node owner, string path, SectionKeys keys, DiagnosticBag diagnostics)
    {
        this.keys = keys;
        Owner = owner;
        Path = path;
        DiagnosticBag = diagnostics;
        var whole = DecimalComma.Rejoin(map.Entries, diagnostics);
        foreach (var entry in whole.Where(entry => keys.Find(entry.Key.Text) is not null))
            Take(entry.Key.Text, entry);
        foreach (var entry in whole.Where(entry => keys.Find(entry.Key.Text) is null))
            TakeMisspelt(entry);
        foreach (var key in keys.Keys.Where(key => key.IsRequired && !entries.ContainsKey(key.Name)
            && !(key.StandIn is { } other && entries.ContainsKey(other))))
            diagnostics.AddMissing(owner, PathOf(key.Name), key.FixWhenMissing(Under));
    }

    /// <summary>The key the section stands under, or the section itself.</summary>
    public Node Owner { get; }

    /// <summary>Its path, for messages: machine.propeller.</summary>
    public string Path { get; }

    public DiagnosticBag DiagnosticBag { get; }

    private string Under => Path.Length > 0 ? $"under {Path}" : "at the left edge";

    /// <summary>The section in a node, or null after an error; null without one when there is no node.</summary>
    public static Section? Open(Node? node, Node owner, string path, SectionKeys keys, DiagnosticBag diagnostics)
    {
        if (node is Node.Map map)
            return new Section(map, owner, path, keys, diagnostics);
        if (node is not null)
            diagnostics.Add(node, $"{path} wants keys, each with its value.", $"Write in it {keys.Names}, each with its value.");
        return null;
    }

    /// <summary>True when the key stands in the file, rightly or wrongly filled.</summary>
    public bool Has(string key) => entries.ContainsKey(key);

    /// <summary>Where a key stands, for a message about it.</summary>
    public Node At(string key) => entries.TryGetValue(key, out var entry) ? entry.Value.IsNull ? entry.Key : entry.Value : Owner;

    /// <summary>The key's own place, for a message about a whole section.</summary>
    public Node KeyAt(string key) => entries.TryGetValue(key, out var entry) ? entry.Key : Owner;

    /// <summary>What stands under a key; null when absent or empty.</summary>
    public Node? Value(string key) => entries.TryGetValue(key, out var entry) && !entry.Value.IsNull ? entry.Value : null;

    public string PathOf(string key) => Path.Length > 0 ? $"{Path}.{key}" : key;

    /// <summary>A value in the base unit of its dimension; NaN when absent or wrong.</summary>
    public double Number(string key, Dimension dimension, AllowedRange bound) => Quantity(key, dimension, bound)?.Base ?? double.NaN;

    /// <summary>As <see cref="Number"/>, but null when the key is absent.</summary>
    public double? OptionalNumber(string key, Dimension dimension, AllowedRange bound) => Has(key) ? Number(key, dimension, bound) : null;

    /// <summary>A value as typed; null when absent or wrong.</summary>
    public Quantity? Quantity(string key, Dimension dimension, AllowedRange bound) =>
        Value(key) is { } node ? Values.Quantity.Read(node, PathOf(key), dimension, bound, DiagnosticBag) : null;

    /// <summary>One piece of text; null when absent or wrong.</summary>
    public string? Text(string key)
    {
        switch (Value(key))
        {
            case null:
                return null;
            case Node.Scalar scalar:
                return scalar.Text;
            case var node:
                DiagnosticBag.Add(node, $"{PathOf(key)} wants one value.", keys.Find(key)!.Fix);
                return null;
        }
    }

    /// <summary>One of some words, in whatever case; null when absent or wrong.</summary>
    public string? Choice(string key, IReadOnlyList<string> choices)
    {
        if (Text(key) is not { } text)
            return null;
        if (choices.FirstOrDefault(choice => string.Equals(choice, text.Trim(), StringComparison.OrdinalIgnoreCase)) is { } found)
            return found;
        DiagnosticBag.Add(At(key), $"{PathOf(key)} has no choice `{text}`.", NearestName.Of(text, choices) is { } near
            ? $"Did you mean `{near}`?"
            : $"Write one of {string.Join(", ", choices)}.");
        return null;
    }

    /// <summary>A whole number; what is assumed when the key is absent or wrong.</summary>
    public int Integer(string key, int assumed, int least, int most)
    {
        if (!Has(key))
            return assumed;
        if (Value(key) is Node.Scalar { Text: var text } && text.Length > 0
            && text.All(letter => char.IsAsciiDigit(letter) || ",.' _".Contains(letter)) && !text.All(char.IsAsciiDigit)
            && text.Split(',', '.', '\'', ' ', '_') is [{ Length: > 0 and <= 3 }, .. var groups] && groups.All(group => group.Length == 3))
        {
            DiagnosticBag.Add(At(key), $"{PathOf(key)} is a whole number, written without grouping.",
                $"Write {string.Concat(text.Where(char.IsAsciiDigit))}.");
            return assumed;
        }

        var value = Number(key, Dimension.Number, AllowedRange.Between(least, most, $"{least}", $"{most}"));
        if (double.IsNaN(value))
            return assumed;
        if (value != Math.Floor(value))
            DiagnosticBag.Add(At(key), $"{PathOf(key)} is a whole number.", $"Write {Math.Floor(value)} or {Math.Ceiling(value)}.");
        return (int)value;
    }

    /// <summary>True or false; false when absent or wrong.</summary>
    public bool Boolean(string key) => Choice(key, ["true", "false"]) == "true";

    /// <summary>The section under a key; null when absent or wrong.</summary>
    public Section? Child(string key, SectionKeys childKeys) =>
        Open(Value(key), KeyAt(key), PathOf(key), childKeys, DiagnosticBag);

    /// <summary>The items of a list, none when absent or wrong.</summary>
    public IReadOnlyList<Node> List(string key)
    {
        switch (Value(key))
        {
            case null:
                return [];
            case Node.List list:
                return list.Items;
            case var node:
                DiagnosticBag.Add(node, $"{PathOf(key)} wants a list.", keys.Find(key)!.Fix);
                return [];
        }
    }

    /// <summary>The entries of a group whose keys the user chooses, none when absent or wrong.</summary>
    public IReadOnlyList<Node.Entry> Entries(string key)
    {
        switch (Value(key))
        {
            case null:
                return [];
            case Node.Map map:
                return map.Entries;
            case var node:
                DiagnosticBag.Add(node, $"{PathOf(key)} wants keys, each with its value.", keys.Find(key)!.Fix);
                return [];
        }
    }

    /// <summary>The point whose forward, right and up stand in this section.</summary>
    public FramePoint Point()
    {
        var bound = AllowedRange.Within(3, "3 m");
        return new FramePoint(Number("forward", Dimension.Length, bound), Number("right", Dimension.Length, bound),
            Number("up", Dimension.Length, bound));
    }

    private void Take(string name, Node.Entry entry)
    {
        entries.Add(name, entry);
        if (entry.Value.IsNull)
            DiagnosticBag.Add(entry.Key, $"{PathOf(name)} has no value.", keys.Find(name)!.Fix);
    }

    /// <summary>Reports an unknown key; where the intended key is clear and absent, reads on as if it were written.</summary>
    private void TakeMisspelt(Node.Entry entry)
    {
        var name = entry.Key.Text;
        if (keys.Replaced.FirstOrDefault(old => old.Name == name) is { Fix: { } fix })
        {
            DiagnosticBag.Add(entry.Key, $"The key `{name}` {Under} is gone.", fix);
            return;
        }

        var what = $"There is no key `{entry.Key.Excerpt}` {Under}.";
        var colon = name.IndexOf(':');
        var beforeColon = colon > 0 ? keys.Find(name[..colon])?.Name : null;
        var near = NearestName.Of(name,
            keys.Keys.Select(key => key.Name).Where(key => !entries.ContainsKey(key)).Concat(keys.Path.Length > 0 ? Reasons.Keys : []));
        if (beforeColon is not null)
            DiagnosticBag.Add(entry.Key, what, $"Put a space after the colon: `{name[..(colon + 1)]} {name[(colon + 1)..]}`.");
        else if (near is not null)
            DiagnosticBag.Add(entry.Key, what, $"Did you mean `{near}`?");
        else
            DiagnosticBag.Add(entry.Key, what, $"Remove it, or use one of {string.Join(", ", keys.Keys.Select(key => key.Name))}.");
        if ((beforeColon ?? near) is { } meant)
            entries.TryAdd(meant, entry);
    }
}
