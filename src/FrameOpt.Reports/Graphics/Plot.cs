using System.Globalization;
using System.Xml.Linq;
using FrameOpt.Numerics;

namespace FrameOpt.Reports.Graphics;

/// <summary>Two axes and the area between them.</summary>
/// <param name="XAxis">From left to right.</param>
/// <param name="YAxis">From bottom to top.</param>
/// <param name="Height">Of the whole picture, in picture units.</param>
internal sealed record Plot(PlotAxis XAxis, PlotAxis YAxis, double Height)
{
    /// <summary>Width of the whole picture in picture units, that of a phone.</summary>
    public const double Width = 340;

    private const double Left = 50;
    private const double Right = Width - 12;
    private const double LineHeight = 12;

    private double Top => 22 + (YAxis.Note.Length > 0 ? LineHeight : 0);

    private double Bottom => Height - 34 - (XAxis.Note.Length > 0 ? LineHeight : 0);

    public double X(double value) => Left + (value - XAxis.From) / (XAxis.To - XAxis.From) * (Right - Left);

    public double Y(double value) => Bottom - (value - YAxis.From) / (YAxis.To - YAxis.From) * (Bottom - Top);

    /// <summary>Frame, grid, ticks and titles. The title of the vertical axis stands above it, horizontally.</summary>
    public IEnumerable<XElement> Frame()
    {
        foreach (var tick in XAxis.Ticks)
        {
            yield return Svg.Line("grid", X(tick), Top, X(tick), Bottom);
            yield return Svg.Text("tick", Math.Min(X(tick), Right - 4), Bottom + 13, "middle", XAxis.Text(tick));
        }

        foreach (var tick in YAxis.Ticks)
        {
            yield return Svg.Line("grid", Left, Y(tick), Right, Y(tick));
            yield return Svg.Text("tick", Left - 5, Y(tick) + 3.5, "end", YAxis.Text(tick));
        }

        yield return Svg.Rectangle("frame", Left, Top, Right - Left, Bottom - Top);
        yield return Svg.Text("axis", 4, 12, "start", YAxis.Title);
        if (YAxis.Note.Length > 0)
            yield return Svg.Text("note", 4, 12 + LineHeight, "start", YAxis.Note);
        yield return Svg.Text("axis", Right, Bottom + 28, "end", XAxis.Title);
        if (XAxis.Note.Length > 0)
            yield return Svg.Text("note", Right, Bottom + 28 + LineHeight, "end", XAxis.Note);
    }

    /// <summary>A line over the whole width at one value.</summary>
    public XElement HorizontalLine(string cssClass, double value) => Svg.Line(cssClass, Left, Y(value), Right, Y(value));

    /// <summary>A line over the whole height at one value.</summary>
    public XElement VerticalLine(string cssClass, double value) => Svg.Line(cssClass, X(value), Top, X(value), Bottom);

    /// <summary>The path of a box between two values of each axis.</summary>
    public string Box(double fromX, double toX, double fromY, double toY) =>
        $"M{Svg.Number(X(fromX))} {Svg.Number(Y(fromY))}H{Svg.Number(X(toX))}V{Svg.Number(Y(toY))}H{Svg.Number(X(fromX))}Z";
}

/// <summary>An axis of a plot with its ends at round numbers.</summary>
/// <param name="Title">With its unit.</param>
/// <param name="Note">A second line under the title; may be empty.</param>
/// <param name="From">Lower end.</param>
/// <param name="To">Upper end, above the lower.</param>
/// <param name="Step">From tick to tick: 1, 2 or 5 times a power of ten.</param>
internal sealed record PlotAxis(string Title, string Note, double From, double To, double Step)
{
    /// <summary>The axis that spans some values.</summary>
    /// <param name="title">With its unit.</param>
    /// <param name="values">Values that are not finite are left out.</param>
    /// <param name="note">A second line.</param>
    /// <param name="steps">About how many steps the axis has.</param>
    public static PlotAxis Spanning(string title, IEnumerable<double> values, string note = "", int steps = 5)
    {
        var finite = values.Where(double.IsFinite).ToList();
        var (low, high) = finite.Count == 0 ? (0.0, 1.0) : (finite.Min(), finite.Max());
        if (high - low <= 1e-9 * Math.Max(1, Math.Abs(high)))
            (low, high) = (low - 0.5, high + 0.5);
        var step = Round((high - low) / steps);
        return new PlotAxis(title, note, step * Math.Floor(low / step), step * Math.Ceiling(high / step), step);
    }

    /// <summary>The values that have a label.</summary>
    public IEnumerable<double> Ticks => Enumerable.Range(0, (int)Math.Round((To - From) / Step) + 1).Select(i => From + i * Step);

    /// <summary>The label of a tick.</summary>
    public string Text(double tick)
    {
        var decimals = Math.Max(0, (int)Math.Ceiling(-Math.Log10(Step) - 1e-9));
        return (Math.Round(tick, Math.Min(decimals, 15)) + 0.0).ToString("N" + decimals, CultureInfo.InvariantCulture);
    }

    private static double Round(double step)
    {
        var power = Elementary.Pow(10, Math.Floor(Math.Log10(step)));
        var digit = step / power;
        return power * (digit <= 1 ? 1 : digit <= 2 ? 2 : digit <= 5 ? 5 : 10);
    }
}
