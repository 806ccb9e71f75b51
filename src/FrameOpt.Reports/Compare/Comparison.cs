namespace FrameOpt.Reports.Compare;

/// <summary>Two designs or more, side by side; studies are compared with that of the first.</summary>
/// <param name="Columns">Two to six.</param>
public sealed record Comparison(IReadOnlyList<ComparedColumn> Columns)
{
    /// <summary>Of every column, what its study has otherwise than the first; the first has nothing.</summary>
    public IReadOnlyList<IReadOnlyList<StudyDifference>> Differences { get; } =
        [.. Columns.Select(column => StudyDifferences.Of(Columns[0].Run.Study, column.Run.Study))];

    /// <summary>One line for a title.</summary>
    public string Title =>
        $"{(Columns.All(column => column.Run.Title == Columns[0].Run.Title) ? $"{Columns[0].Run.Title}: " : "")}{Columns.Count} designs side by side";

    /// <summary>Why figures are not to be held against each other, and what else to know before reading them.</summary>
    public IReadOnlyList<string> Warnings =>
    [
        .. Columns.Select((column, c) => (column, c)).Skip(1)
            .SelectMany(item => Comparability.Reasons(Differences[item.c], Columns[0], item.column)),
        .. Columns.Where(column => !column.Run.IsComplete)
            .Select(column =>
            $"{column.Letter} comes from a run that was cut short ({column.Run.StopReason}): a better design may be missing from it."),
    ];
}
