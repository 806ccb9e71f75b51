using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Numerics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Graphics;

/// <summary>The frame seen from the pilot's right: heights above the datum, and how far the propeller lies behind the hang line.</summary>
internal static class FrameSideView
{
    private const double Head = 34;
    private const double Foot = 40 + FrameNotes.Height;
    private const double ThrustLength = 70;

    public static XElement Of(Study study, FrameGeometry geometry, FrameScale scale)
    {
        var height = Head + (scale.TopMetres - scale.BottomMetres) * scale.UnitsPerMetre + Foot;
        var foot = height - FrameNotes.Height;
        double Y(double up) => Head + (scale.TopMetres - up) * scale.UnitsPerMetre;
        double X(double forward) => FrameScale.Width / 2 + (forward - (scale.FrontMetres + scale.RearMetres) / 2) * scale.UnitsPerMetre;
        return Svg.Picture("frame-side", FrameScale.Width, height, "The frame seen from the pilot's right", AltText(study, geometry),
            LabelLayout.Apart(height,
        [
            Svg.Text("note", 6, 13, "start", "SEEN FROM THE RIGHT"),
            Svg.Text("note", FrameScale.Width - 6, 13, "end", "forward ▶"),
            .. Propeller(study, geometry, scale, X, Y),
            .. Centre(study.Machine, X, Y),
            .. Heights(study, geometry, X, Y),
            Svg.Text("name", 6, foot - 6, "start", "◀ rear"),
            Svg.Text("name", FrameScale.Width - 6, foot - 6, "end", "front ▶"),
            .. FrameNotes.Of(study.Machine, foot),
        ]));
    }

    private static IEnumerable<XElement> Propeller(
        Study study, FrameGeometry geometry, FrameScale scale, Func<double, double> across, Func<double, double> y)
    {
        var radius = study.Machine.Propeller.DiameterMetres / 2 * scale.UnitsPerMetre;
        var (x, middle) = (across(geometry.HubForwardMetres), y(geometry.HubUpMetres));
        // Tilted up, the thrust pushes forward and up: the disc leans back at the top.
        var (up, forward) = Elementary.SinCos(geometry.TiltRadians);
        yield return Svg.Line("blade", x - radius * up, middle - radius * forward, x + radius * up, middle + radius * forward);
        foreach (var mark in FrameNotes.Thrust(x, middle, ThrustLength, Math.PI / 2 - geometry.TiltRadians))
            yield return mark;
        yield return PlotMarker.At("hub", PlotMarker.Cross, x, middle);
        yield return Svg.Text("small", x + 8, middle + 14, "start", "hub");
        yield return Svg.Text("small", x - radius * up - 8, middle - radius * forward + 12, "end", "propeller");
    }

    private static IEnumerable<XElement> Centre(Machine machine, Func<double, double> across, Func<double, double> y)
    {
        var centre = machine.CentreOfGravity;
        var (x, middle) = (across(centre.ForwardMetres), y(centre.UpMetres));
        foreach (var mark in FrameNotes.Centre(x, middle))
            yield return mark;
        yield return Svg.Text("small", x + 11, middle + 14, "start", "centre of gravity");
    }

    private static IReadOnlyList<XElement> Heights(Study study, FrameGeometry geometry, Func<double, double> across, Func<double, double> y)
    {
        var (height, length) = (study.Factor(GeometryInput.SuspensionHeight).Unit, study.LengthUnit);
        var (xHang, line, xHub) = (across(geometry.HangLineForwardMetres), y(geometry.HeightMetres), across(geometry.HubForwardMetres));
        var (xRight, datum) = (Math.Max(xHang, across(0)) + 46, y(0));
        var behind = geometry.HangLineForwardMetres - geometry.HubForwardMetres;
        return
        [
            Svg.Line("riser", xHang, line, xHang, line - 56),
            Svg.Line("extension", xHang, line, xRight + 6, line),
            Svg.Line("extension", across(0) - 14, datum, xRight + 6, datum),
            Svg.Line("extension", across(0), datum - 14, across(0), datum + 14),
            Svg.Text("small", across(0) + 6, datum + 13, "start", "datum"),
            .. DimensionLine.Down(xRight, line, datum, height.Text(Math.Abs(geometry.HeightMetres))),
            Svg.Line("extension", xHub, y(geometry.HubUpMetres), xHub, line - 30),
            .. DimensionLine.Across(Math.Min(xHub, xHang), Math.Max(xHub, xHang), line - 24, length.Text(Math.Abs(behind)), true),
            Svg.Circle("hole", xHang, line, 4.5),
            Svg.Text("small", xHang + 8, line - 8, "start", "hang points"),
        ];
    }

    private static string AltText(Study study, FrameGeometry geometry)
    {
        var behind = geometry.HangLineForwardMetres - geometry.HubForwardMetres;
        var height = GeometryText.Of(study.Factor(GeometryInput.SuspensionHeight), geometry.HeightMetres);
        return $"{StudyText.Capitalised(height)}. The hub lies {study.LengthUnit.Text(Math.Abs(behind))} "
            + $"{(behind < 0 ? "in front of" : "behind")} the hang line.";
    }
}
