using System.Xml.Linq;

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
        var step = Math.Pow(10, Math.Floor(Math.Log10(finite.Max() - finite.Min())));
        step = (finite.Max() - finite.Min()) / step < 2 ? step / 5 : (finite.Max() - finite.Min()) / step < 5 ? step / 2 : step;
        double Round(double steps) => (double)((decimal)steps * (decimal)step);
        return new ChartAxis(title, formatCode, (Round(Math.Floor(finite.Min() / step)), Round(Math.Ceiling(finite.Max() / step))));
    }
}

/// <summary>Cells of one column that a chart draws, with what they hold.</summary>
/// <param name="Reference">With its sheet.</param>
/// <param name="Values">Numbers and texts in order; a number that is not finite is a blank.</param>
internal sealed record ChartColumn(string Reference, IReadOnlyList<object> Values)
{
    public bool IsText => Values.Any(value => value is string);
}

/// <summary>One series of a chart.</summary>
/// <param name="Name">In the legend.</param>
/// <param name="X">Across, or the categories of bars.</param>
/// <param name="Y">Up.</param>
/// <param name="Style">How it is drawn.</param>
internal sealed record ChartSeries(string Name, ChartColumn X, ChartColumn Y, SeriesStyle Style)
{
    /// <summary>A text beside each point, in order; empty for none.</summary>
    public IReadOnlyList<string> Labels { get; init; } = [];
}

/// <summary>A chart and where it stands.</summary>
/// <param name="SheetName">On this sheet.</param>
/// <param name="Row">Of its upper left corner, from 1.</param>
/// <param name="Column">Of its upper left corner, from 1.</param>
/// <param name="Name">What it shows, for programs that read aloud.</param>
/// <param name="Xml">The chart part.</param>
internal sealed record PlacedChart(string SheetName, int Row, int Column, string Name, XElement Xml);

/// <summary>How a series is drawn; never told apart by colour alone.</summary>
/// <param name="Colour">Of the published set that the colour-blind can tell apart.</param>
/// <param name="Marker">Shape: circle, square, diamond, triangle, x, or null for none.</param>
/// <param name="MarkerPoints">Its size.</param>
/// <param name="LinePoints">Width of the line between points; 0 for none.</param>
/// <param name="Dash">solid, dash, sysDot.</param>
/// <param name="Pattern">Of a bar: null for plain, else a hatch.</param>
/// <remarks>Colours: M. Okabe, K. Ito, Color Universal Design, 2008.</remarks>
internal sealed record SeriesStyle(string Colour, string? Marker = null, int MarkerPoints = 7, double LinePoints = 0,
    string Dash = "solid", string? Pattern = null)
{
    public const string Blue = "0072B2";
    public const string SkyBlue = "56B4E9";
    public const string Orange = "E69F00";
    public const string Vermillion = "D55E00";
    public const string Green = "009E73";
    public const string Purple = "CC79A7";
    public const string Black = "000000";
}
