namespace FrameOpt.Reports;

/// <summary>Cells of one column that a chart draws, with what they hold.</summary>
/// <param name="Reference">With its sheet.</param>
/// <param name="Values">Numbers and texts in order; a number that is not finite is a blank.</param>
internal sealed record ChartColumn(string Reference, IReadOnlyList<object> Values)
{
    public bool IsText => Values.Any(value => value is string);
}
