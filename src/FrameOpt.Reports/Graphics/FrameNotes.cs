using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Numerics;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Graphics;

/// <summary>What the views of the frame have in common: the marks of weight and thrust, and the two lines that say between which
/// points it is measured.</summary>
internal static class FrameNotes
{
    /// <summary>Room for both lines.</summary>
    public const double Height = 28;

    /// <summary>The mark of the centre of gravity.</summary>
    public static IEnumerable<XElement> Centre(double x, double y) =>
        [Svg.Circle("mass", x, y, 5), PlotMarker.At("mass", "M-8 0H8M0-8V8", x, y)];

    /// <summary>The line along which the thrust pushes, with its head.</summary>
    /// <param name="x">Hub.</param>
    /// <param name="y">Hub.</param>
    /// <param name="length">In picture units.</param>
    /// <param name="radians">From straight up in the picture, clockwise.</param>
    public static IEnumerable<XElement> Thrust(double x, double y, double length, double radians)
    {
        var (tipX, tipY) = (x + length * Elementary.Sin(radians), y - length * Elementary.Cos(radians));
        yield return Svg.Line("thrust", x, y, tipX, tipY);
        yield return new XElement(
            "path",
            new XAttribute("class", "thrust-head"),
            new XAttribute("d", "M0-9L-4.5 2H4.5Z"),
            new XAttribute("transform",
                $"translate({Svg.Number(tipX)} {Svg.Number(tipY)}) rotate({Svg.Number(radians * 180 / Math.PI)})"));
    }

    /// <summary>The lines.</summary>
    /// <param name="machine">Names the points.</param>
    /// <param name="top">Where their room begins.</param>
    public static IEnumerable<XElement> Of(Machine machine, double top) =>
    [
        Svg.Text("small", 6, top + 11, "start", DatumText.Datum(machine)),
        Svg.Text("small", 6, top + 23, "start", DatumText.HangPoint(machine)),
    ];
}
