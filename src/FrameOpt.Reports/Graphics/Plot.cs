using System.Xml.Linq;

namespace FrameOpt.Reports.Graphics;

/// <summary>Two axes and the room between them.</summary>
/// <param name="XAxis">From left to right.</param>
/// <param name="YAxis">From bottom to top.</param>
/// <param name="Height">Of the whole picture, in picture units.</param>
internal sealed record Plot(PlotAxis XAxis, PlotAxis YAxis, double Height)
{
    /// <summary>Of the whole picture: a phone's.</summary>
    public const double Width = 340;

    private const double Left = 50;
    private const double Right = Width - 12;
    private const double LineHeight = 12;

    private double Top => 22 + (YAxis.Note.Length > 0 ? LineHeight : 0);

    private double Bottom => Height - 34 - (XAxis.Note.Length > 0 ? LineHeight : 0);

    public double X(double value) => Left + (value - XAxis.From) / (XAxis.To - XAxis.From) * (Right - Left);

    public double Y(double value) => Bottom - (value - YAxis.From) / (YAxis.To - YAxis.From) * (Bottom - Top);

    /// <summary>Frame, grid, ticks and titles. The upward axis has its title lying above it, where it can be read.</summary>
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
