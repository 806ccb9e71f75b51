using FrameOpt.Studies;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>Takes `reason` and `source` out of a study before it is read: any group may have them, and any figure that is written as
/// a group, `{ value: 0.4, reason: ... }`. No other reader knows of them.</summary>
internal static class Reasons
{
    private const string Value = "value";

    /// <summary>The two keys.</summary>
    public static readonly IReadOnlyList<string> Keys = ["reason", "source"];

    /// <summary>Groups with words of their own, or with names that the user gives to plain values.</summary>
    private static readonly string[] untouched = ["variants", "origins", "decision", "line.customers", "machine.masses"];

    /// <summary>The study without them, and what they say, in the order of the file.</summary>
    public static (Node Root, IReadOnlyList<FigureReason> Reasons) Take(Node root, DiagnosticBag diagnostics)
    {
        var taken = new List<FigureReason>();
        return root is Node.Map map ? (Under(map, "", taken, diagnostics), taken) : (root, taken);
    }

    /// <summary>True for a figure that is written as a group.</summary>
    public static bool IsFigure(Node node) => node is Node.Map map && Find(map.Entries, Value) is { Value: not Node.Map };

    private static Node Read(Node node, string path, List<FigureReason> taken, DiagnosticBag diagnostics)
    {
        switch (node)
        {
            case Node.List list:
                return list with
                {
                    Items = [.. list.Items.Select((item, i) => Read(item, $"{path}[{Name(item, i)}]", taken, diagnostics))],
                };
            case Node.Map map when !(untouched.Contains(path) || path.EndsWith(".machine.masses", StringComparison.Ordinal)):
                var whole = map with { Entries = DecimalComma.Rejoin(map.Entries, diagnostics) };
                return IsFigure(whole) ? Figure(whole, path, taken, diagnostics) : Group(whole, path, taken, diagnostics);
            default:
                return node;
        }
    }

    private static Node Figure(Node.Map map, string path, List<FigureReason> taken, DiagnosticBag diagnostics)
    {
        var value = Find(map.Entries, Value)!;
        foreach (var other in map.Entries.Where(entry => entry != value && !Keys.Contains(entry.Key.Text)))
            diagnostics.Add(other.Key, $"There is no key `{other.Key.Excerpt}` under {path}, which has its figure under `{Value}`.",
                NearestName.Of(other.Key.Text, Keys) is { } near ? $"Did you mean `{near}`?"
                    : $"Beside `{Value}` write {string.Join(" or ", Keys)}, or remove it.");
        Add(map, path, value.Value.Excerpt, taken, diagnostics);
        return value.Value.IsNull ? value.Value : Read(value.Value, path, taken, diagnostics);
    }

    private static Node.Map Group(Node.Map map, string path, List<FigureReason> taken, DiagnosticBag diagnostics)
    {
        Add(map, path, "", taken, diagnostics);
        return Under(map with { Entries = [.. map.Entries.Where(entry => !IsReason(entry))] }, path, taken, diagnostics);
    }

    private static Node.Map Under(Node.Map map, string path, List<FigureReason> taken, DiagnosticBag diagnostics) => map with
    {
        Entries = [.. map.Entries.Select(entry => entry with
        {
            Value = Read(entry.Value, path.Length > 0 ? $"{path}.{entry.Key.Text}" : entry.Key.Text, taken, diagnostics),
        })],
    };

    private static void Add(Node.Map map, string path, string value, List<FigureReason> taken, DiagnosticBag diagnostics)
    {
        string Text(string key)
        {
            if (Find(map.Entries, key) is not { } entry || !IsReason(entry))
                return "";
            if (entry.Value.IsNull || entry.Value is not Node.Scalar { Text: var text } || text.Trim().Length == 0)
                diagnostics.Add(entry.Key, $"{path}.{key} has no text.", "Write a line of text after it, or remove it.");
            else
                return text.ReplaceLineEndings(" ").Trim();
            return "";
        }

        if (new FigureReason(path, value, Text(Keys[0]), Text(Keys[1])) is { Text.Length: > 0 } reason)
            taken.Add(reason);
    }

    /// <summary>A phase or a choice may have that name, and has a group under it.</summary>
    private static bool IsReason(Node.Entry entry) => Keys.Contains(entry.Key.Text) && entry.Value is not Node.Map;

    private static Node.Entry? Find(IReadOnlyList<Node.Entry> entries, string key) =>
        entries.FirstOrDefault(entry => entry.Key.Text == key);

    /// <summary>An item of a list is known by its name where it has one, else by its number from 1.</summary>
    private static string Name(Node item, int index) => item is Node.Map map && Find(map.Entries, "name") is { Value: Node.Scalar name }
        ? name.Text : FormattableString.Invariant($"{index + 1}");
}
