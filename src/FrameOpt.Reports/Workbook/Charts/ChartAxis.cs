using FrameOpt.Numerics;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.Charts;

/// <summary>An axis of a chart.</summary>
/// <param name="Title">With its unit.</param>
/// <param name="FormatCode">Of its figures.</param>
/// <param name="Range">Its ends, or null to leave them to the program.</param>
internal sealed record ChartAxis(string Title, string FormatCode, (double From, double To)? Range = null)
{
    /// <summary>An axis whose ends lie a little beyond the values, at round figures.</summary>
    public static ChartAxis Spanning(string title, string formatCode, IEnumerable<double> values)
    {
        var finite = values.Where(double.IsFinite).ToList();
        if (finite.Count == 0 || finite.Max() == finite.Min())
            return new ChartAxis(title, formatCode);
        var step = Elementary.Pow(10, Math.Floor(Math.Log10(finite.Max() - finite.Min())));
        step = (finite.Max() - finite.Min()) / step < 2 ? step / 5 : (finite.Max() - finite.Min()) / step < 5 ? step / 2 : step;
        double Round(double steps) => (double)((decimal)steps * (decimal)step);
        return new ChartAxis(title, formatCode, (Round(Math.Floor(finite.Min() / step)), Round(Math.Ceiling(finite.Max() / step))));
    }
}

/// <summary>One series of a chart.</summary>
/// <param name="Name">In the legend.</param>
/// <param name="X">Across, or the categories of bars.</param>
/// <param name="Y">Up.</param>
/// <param name="Style">How it is drawn.</param>
internal sealed record ChartSeries(string Name, CellRange X, CellRange Y, SeriesStyle Style)
{
    /// <summary>How far a thin line goes beyond each bar and back from its end, or null for none.</summary>
    public (CellRange Beyond, CellRange Back)? Band { get; init; }

    /// <summary>A text beside each point, in order; empty for none.</summary>
    public IReadOnlyList<string> Labels { get; init; } = [];
}

/// <summary>How a series is drawn; never told apart by colour alone.</summary>
/// <param name="Colour">Of <see cref="Palette"/>.</param>
/// <param name="Marker">Shape: circle, square, diamond, triangle, x, or null for none.</param>
/// <param name="MarkerPoints">Its size.</param>
/// <param name="LinePoints">Width of the line between points; 0 for none.</param>
/// <param name="Dash">solid, dash, sysDot.</param>
/// <param name="Pattern">Of a bar: null for plain, else a hatch.</param>
internal sealed record SeriesStyle(string Colour, string? Marker = null, int MarkerPoints = 7, double LinePoints = 0,
    string Dash = "solid", string? Pattern = null);
