namespace FrameOpt.Reports.Compare;

/// <summary>What differs between two studies as understood, value by value.</summary>
public static class StudyDifferences
{
    /// <summary>Every value that differs, in the order of the first study; what only the other has comes last in its part.</summary>
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

    /// <summary>Tables of other length are told whole: row by row every figure behind a new row would seem changed.</summary>
    private static bool IsComparedByParts(StudyNode from, StudyNode to) => from.Kind == to.Kind && from.Kind != StudyNodeKind.Value
        && (from.Kind != StudyNodeKind.Table || from.Parts.Count == to.Parts.Count);

    private static IEnumerable<(StudyNode? From, StudyNode? To)> Pairs(StudyNode from, StudyNode to) =>
    [
        .. from.Parts.Select(part => ((StudyNode?)part, to.Parts.FirstOrDefault(other => other.Name == part.Name))),
        .. to.Parts.Where(part => from.Parts.All(other => other.Name != part.Name)).Select(part => ((StudyNode?)null, (StudyNode?)part)),
    ];

    /// <summary>In words; to the last digit where the words are the same.</summary>
    private static StudyDifference Difference(string group, string path, StudyNode? from, StudyNode? to) => from?.Text == to?.Text
        ? new StudyDifference(group, path, ExactText(from!), ExactText(to!))
        : new StudyDifference(group, path, from?.Text, to?.Text);

    private static string ExactText(StudyNode node) =>
        $"{node.Text}, exactly {string.Join(' ', node.Exact.Split((char[])['\n', '\t', ' ', '\r'], StringSplitOptions.RemoveEmptyEntries))}";
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
