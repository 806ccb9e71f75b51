using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Compare;

/// <summary>What differs between two studies as understood, value by value.</summary>
public static class StudyDifferences
{
    private const int MaxText = 4_000;

    /// <summary>Every value that differs, in the order of the first study; what only the other study has comes last in its group.</summary>
    public static IReadOnlyList<StudyDifference> Of(StudyNode from, StudyNode to) =>
        [.. Pairs(from, to).SelectMany(pair => Collect((pair.From ?? pair.To)!.Name, "", pair.From, pair.To))];

    private static IEnumerable<StudyDifference> Collect(string group, string path, StudyNode? from, StudyNode? to)
    {
        if (from?.Exact == to?.Exact && from?.Kind == to?.Kind)
            return [];
        return from is not null && to is not null && IsComparedByParts(from, to)
            ? Pairs(from, to).SelectMany(pair => Collect(group, $"{path} {(pair.From ?? pair.To)!.Name}".Trim(), pair.From, pair.To))
            : [Difference(group, path, from, to)];
    }

    /// <summary>Tables of different length are shown whole: compared row by row, every figure after a new row would seem changed.</summary>
    private static bool IsComparedByParts(StudyNode from, StudyNode to) => from.Kind == to.Kind && from.Kind != StudyNodeKind.Value
        && (from.Kind != StudyNodeKind.Table || from.Parts.Count == to.Parts.Count);

    private static IEnumerable<(StudyNode? From, StudyNode? To)> Pairs(StudyNode from, StudyNode to)
    {
        var (ours, theirs) = (ByName(from), ByName(to));
        return
        [
            .. from.Parts.Select(part => ((StudyNode?)part, theirs.GetValueOrDefault(part.Name))),
            .. to.Parts.Where(part => !ours.ContainsKey(part.Name)).Select(part => ((StudyNode?)null, (StudyNode?)part)),
        ];
    }

    /// <summary>The parts of a node; of two with one name the first.</summary>
    private static Dictionary<string, StudyNode> ByName(StudyNode node)
    {
        var named = new Dictionary<string, StudyNode>(StringComparer.Ordinal);
        foreach (var part in node.Parts)
            named.TryAdd(part.Name, part);
        return named;
    }

    /// <summary>The difference in words; to the last digit where the words are the same.</summary>
    private static StudyDifference Difference(string group, string path, StudyNode? from, StudyNode? to) => from?.Text == to?.Text
        ? new StudyDifference(group, path, ExactText(from!), ExactText(to!))
        : new StudyDifference(group, path, Shortened(from?.Text), Shortened(to?.Text));

    private static string? Shortened(string? text) => text is null ? null : TextTruncation.Truncate(text, MaxText);

    private static string ExactText(StudyNode node) =>
        $"{node.Text}, exactly "
            + $"{string.Join(' ', node.Exact.Split((char[])['\n', '\t', ' ', '\r'], StringSplitOptions.RemoveEmptyEntries))}";
}

/// <summary>One thing in which two studies differ.</summary>
/// <param name="Group">The part of the study: mission, machine, wing and so on.</param>
/// <param name="Path">Which of its values; may be empty.</param>
/// <param name="From">In the first study; null when it is not there.</param>
/// <param name="To">In the other; null when it is not there.</param>
public sealed record StudyDifference(string Group, string Path, string? From, string? To)
{
    /// <summary>"mission: climb weight 0.2 -> 0.35".</summary>
    public string Text => $"{Group}: {(Path.Length > 0 ? Path + " " : "")}{(From, To) switch
    {
        (null, _) => $"added ({To})",
        (_, null) => $"removed ({From})",
        _ => $"{From} -> {To}",
    }}";
}

/// <summary>Whether figures of two studies answer the same question.</summary>
internal static class Comparability
{
    private const string Leverage = "yaw leverage";

    /// <summary>Sentences on why the figures of a design are not comparable with those of the first; none when they are.</summary>
    public static IEnumerable<string> Reasons(IReadOnlyList<StudyDifference> differences, ComparedColumn first, ComparedColumn other)
    {
        List<string> changed = [.. ChangedConditions(differences)];
        if (changed.Count > 0)
            yield return $"NOT COMPARABLE: {other.Letter} differs from {first.Letter} in {string.Join(", ", changed)}. A lower value then "
                + "does not mean a better geometry.";
        foreach (var (quantity, because) in RedefinedResponses(differences)
            .Where(item => !double.IsNaN(first.Mission[item.Quantity.Index] + other.Mission[item.Quantity.Index])))
            yield return $"{quantity.Name.Replace('_', ' ')} of {other.Letter} and of "
                + $"{first.Letter} are not defined in the same way: {because}.";
    }

    /// <summary>True when this response of both designs is the same measure under the same conditions.</summary>
    public static bool IsComparable(IReadOnlyList<StudyDifference> differences, MissionQuantity quantity) =>
        !ChangedConditions(differences).Any() && RedefinedResponses(differences).All(item => item.Quantity != quantity);

    /// <summary>The parts of a study that every figure depends on.</summary>
    private static IEnumerable<string> ChangedConditions(IReadOnlyList<StudyDifference> differences) => differences
        .Select(item => item.Group == "wing" && item.Path.StartsWith(Leverage, StringComparison.Ordinal) ? Leverage : item.Group)
        .Where(part => part is "mission" or "machine" or "wing" or Leverage)
        .Distinct();

    /// <summary>Responses whose definition depends on settings of their own.</summary>
    private static IEnumerable<(MissionQuantity Quantity, string Because)> RedefinedResponses(IReadOnlyList<StudyDifference> differences)
    {
        if (differences.Any(item => item.Group == "strength" && item.Path != "overhang"))
            yield return (MissionQuantity.HangPointLoad, "the limit load factor differs");
        if (differences.Any(item => item.Group == "strength"))
            yield return (MissionQuantity.ArmMoment, "the limit load factor or the overhang differs");
        if (differences.Any(item => item.Group is "baseline" or "factors"))
            yield return (MissionQuantity.DistanceFromBaseline, "the baseline or the ranges of the factors differ");
    }
}
