using System.Xml.Linq;
using FrameOpt.Model;

namespace FrameOpt.Reports.Graphics;

/// <summary>The common scale of both views of the frame, with room for every design that may be shown.</summary>
/// <param name="UnitsPerMetre">Picture units for a metre.</param>
/// <param name="TopMetres">Upper edge of the front view, metres above the datum.</param>
/// <param name="BottomMetres">Lower edge of the front view.</param>
/// <param name="FrontMetres">Upper edge of the top view, metres in front of the datum.</param>
/// <param name="RearMetres">Lower edge of the top view.</param>
internal sealed record FrameScale(double UnitsPerMetre, double TopMetres, double BottomMetres, double FrontMetres, double RearMetres)
{
    /// <summary>Width of both pictures.</summary>
    public const double Width = 340;

    private const double Edge = 14;

    /// <summary>The scale for one machine in several geometries.</summary>
    public static FrameScale Of(Machine machine, IReadOnlyList<FrameGeometry> geometries)
    {
        var radius = machine.Propeller.DiameterMetres / 2;
        var centre = machine.CentreOfGravity;
        var half = geometries.Max(g => Math.Max(radius + Math.Abs(g.HubRightMetres), g.SpacingMetres / 2 + Math.Abs(g.OffsetMetres)));
        var perMetre = (Width / 2 - Edge) / half;
        // Above the hang line stand two dimension lines.
        var highest = geometries.Max(g => Math.Max(g.HubUpMetres + radius, g.HeightMetres + 60 / perMetre));
        var lowest = Math.Min(geometries.Min(g => g.HubUpMetres - radius), Math.Min(0, centre.UpMetres));
        var forward = Math.Max(geometries.Max(g => Math.Max(g.HangLineForwardMetres, g.HubForwardMetres)),
            Math.Max(0, centre.ForwardMetres));
        var back = Math.Min(geometries.Min(g => Math.Min(g.HangLineForwardMetres, g.HubForwardMetres)), Math.Min(0, centre.ForwardMetres));
        return new FrameScale(perMetre, highest, lowest, forward, back);
    }

    /// <summary>Horizontal coordinate in both views: the pilot's right is on the right.</summary>
    public double X(double rightMetres) => Width / 2 + rightMetres * UnitsPerMetre;
}

/// <summary>Dimension lines with arrows at both ends.</summary>
internal static class DimensionLine
{
    private const string RightArrow = "M0 0L-7-2.6V2.6Z";
    private const string LeftArrow = "M0 0L7-2.6V2.6Z";
    private const string UpArrow = "M0 0L-2.6 7H2.6Z";
    private const string DownArrow = "M0 0L-2.6-7H2.6Z";

    /// <summary>From left to right; a figure too long for its line stands beside it.</summary>
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
