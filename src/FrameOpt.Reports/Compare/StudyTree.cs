using System.Text.Json;

namespace FrameOpt.Reports.Compare;

/// <summary>The study of a run.json as a tree of values in words.</summary>
internal static class StudyTree
{
    /// <summary>Keys that are not shown because their parts say the same.</summary>
    private static readonly string[] unnamedKeys = ["masses", "rows"];

    /// <summary>Keys that are shown under another name.</summary>
    private static readonly Dictionary<string, string> displayNames = new()
    {
        ["at"] = "position",
        ["forward"] = "fore and aft",
        ["right"] = "sideways",
        ["up"] = "height",
        ["body"] = "leans with the pilot",
        ["carried"] = "share of the weight on the risers",
        ["bench"] = "coefficients",
        ["fraction"] = "speed",
        ["airspeed"] = "speed",
        ["lines"] = "line length",
    };

    public static StudyNode Of(RunJsonElement study) => Node("study", study, "");

    /// <param name="key">Key in the file; it decides the unit and the words for the side.</param>
    /// <param name="part">The value.</param>
    /// <param name="unit">The unit of plain numbers in it.</param>
    private static StudyNode Node(string key, RunJsonElement part, string unit)
    {
        var isPolar = part.Path.Contains("> polar >", StringComparison.Ordinal);
        var name = unnamedKeys.Contains(key) ? "" : !isPolar && displayNames.TryGetValue(key, out var other) ? other
            : RunJsonElement.SingleLine(key).Replace('_', ' ');
        return part.Element.ValueKind switch
        {
            JsonValueKind.Object when part.Has("value") || part.Has("levels") => Value(name, key, part, unit),
            JsonValueKind.Object => Group(name, part.Properties.Where(member => !IsLabel(part, member.Name))
                .Select(member => Node(member.Name, member.Part, UnitOf(part)))),
            JsonValueKind.Array when part.Items.All(item => item.Has("name") || item.Has("response")) => Group(name, Named(part.Items)),
            JsonValueKind.Array => Table(name, part.Items.Select((row, i) => Row($"row {i + 1}", row))),
            _ => Value(name, key, part, unit),
        };
    }

    /// <summary>True for the name or the unit of an item, which is not a value of its own.</summary>
    private static bool IsLabel(RunJsonElement part, string key) => key is "name" or "response" || (key == "unit" && part.Has("response"));

    private static string UnitOf(RunJsonElement part) => part.Has("unit") ? part["unit"].Text : "";

    private static IEnumerable<StudyNode> Named(IReadOnlyList<RunJsonElement> items)
    {
        var seen = new Dictionary<string, int>();
        foreach (var item in items)
        {
            var name = item.Has("name") ? item["name"].Text : item["response"].Text.Replace('_', ' ');
            seen[name] = seen.GetValueOrDefault(name) + 1;
            yield return Node("", item, "") with { Name = seen[name] > 1 ? FormattableString.Invariant($"{name} ({seen[name]})") : name };
        }
    }

    private static StudyNode Row(string name, RunJsonElement row) => row.Element.ValueKind == JsonValueKind.Array
        ? Group(name, row.Items.Zip((string[])["J", "CT", "CP"], (number, column) => Value(column, "", number, "")))
        : Node("", row, "") with { Name = name };

    private static StudyNode Value(string name, string key, RunJsonElement part, string unit) =>
        new(name, StudyNodeKind.Value, StudyValueText.Of(key, part, unit), part.Element.GetRawText(), []);

    private static StudyNode Group(string name, IEnumerable<StudyNode> parts) => With(name, StudyNodeKind.Group, [.. parts]);

    private static StudyNode Table(string name, IEnumerable<StudyNode> rows) => With(name, StudyNodeKind.Table, [.. rows]);

    private static StudyNode With(string name, StudyNodeKind kind, IReadOnlyList<StudyNode> parts) => new(
        name,
        kind,
        parts.Count == 0 ? "none" : string.Join(kind == StudyNodeKind.Table ? "; " : ", ",
            parts.Select(part => $"{part.Name} {part.Text}".Trim())),
        string.Join('\n', parts.Select(part => $"{part.Name}\t{part.Exact}")),
        parts);
}

/// <summary>A value of a study as understood, or a group of values, in words.</summary>
/// <param name="Name">Distinguishes it from its neighbours; empty where the names of its parts say enough.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Text">In words, with units.</param>
/// <param name="Exact">The value to the last digit; two values are equal when these are.</param>
/// <param name="Parts">Of a group or a table, in the study's order.</param>
public sealed record StudyNode(string Name, StudyNodeKind Kind, string Text, string Exact, IReadOnlyList<StudyNode> Parts);

/// <summary>What a node of a study holds.</summary>
public enum StudyNodeKind
{
    /// <summary>One value.</summary>
    Value,

    /// <summary>Parts with names.</summary>
    Group,

    /// <summary>Rows with numbers.</summary>
    Table,
}
