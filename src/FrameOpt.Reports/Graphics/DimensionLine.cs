using System.Xml.Linq;

namespace FrameOpt.Reports.Graphics;

/// <summary>Dimension lines with arrows at both ends.</summary>
internal static class DimensionLine
{
    private const string RightArrow = "M0 0L-7-2.6V2.6Z";
    private const string LeftArrow = "M0 0L7-2.6V2.6Z";
    private const string UpArrow = "M0 0L-2.6 7H2.6Z";
    private const string DownArrow = "M0 0L-2.6-7H2.6Z";

    /// <summary>From left to right; a figure too long for its line stands outside of it.</summary>
    /// <param name="from">Left end.</param>
    /// <param name="to">Right end.</param>
    /// <param name="y">Height of the line.</param>
    /// <param name="text">The figure.</param>
    /// <param name="isOutsideLeft">Where it stands when it is too long: left of the line, or right.</param>
    public static IEnumerable<XElement> Across(double from, double to, double y, string text, bool isOutsideLeft)
    {
        var fits = Svg.Width(text) + 10 <= to - from;
        var (x, anchor) = fits ? ((from + to) / 2, "middle") : isOutsideLeft ? (from - 4, "end") : (to + 4, "start");
        yield return Svg.Line("measure", from, y, to, y);
        yield return PlotMarker.At("arrow", LeftArrow, from, y);
        yield return PlotMarker.At("arrow", RightArrow, to, y);
        yield return Svg.Text("figure", x, fits ? y - 4 : y + 4, anchor, text);
    }

    /// <summary>From top to bottom, the figure right of it.</summary>
    public static IEnumerable<XElement> Down(double x, double from, double to, string text)
    {
        yield return Svg.Line("measure", x, from, x, to);
        yield return PlotMarker.At("arrow", UpArrow, x, Math.Min(from, to));
        yield return PlotMarker.At("arrow", DownArrow, x, Math.Max(from, to));
        yield return Svg.Text("figure", x + 5, (from + to) / 2 + 4, "start", text);
    }
}
