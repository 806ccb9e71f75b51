namespace FrameOpt.Reports;

/// <summary>One series of a chart.</summary>
/// <param name="Name">In the legend.</param>
/// <param name="X">Across, or the categories of bars.</param>
/// <param name="Y">Up.</param>
/// <param name="Look">How it is drawn.</param>
internal sealed record ChartSeries(string Name, ChartColumn X, ChartColumn Y, SeriesLook Look)
{
    /// <summary>A text beside each point, in order; empty for none.</summary>
    public IReadOnlyList<string> Labels { get; init; } = [];
}
