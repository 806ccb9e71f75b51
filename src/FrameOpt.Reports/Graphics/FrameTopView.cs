using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Numerics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Graphics;

/// <summary>The frame seen from above: hang line, propeller and the line along which it pushes.</summary>
internal static class FrameTopView
{
    private const double Head = 70;
    private const double Foot = 62 + FrameNotes.Height;

    public static XElement Of(Study study, FrameGeometry geometry, FrameScale scale)
    {
        var height = Head + (scale.FrontMetres - scale.RearMetres) * scale.UnitsPerMetre + Foot;
        var foot = height - FrameNotes.Height;
        double Y(double forward) => Head + (scale.FrontMetres - forward) * scale.UnitsPerMetre;
        return Svg.Picture("frame-top", FrameScale.Width, height, "The frame seen from above", AltText(study, geometry),
            LabelLayout.Apart(height,
        [
            Svg.Text("note", 6, 13, "start", "SEEN FROM ABOVE"),
            Svg.Text("note", FrameScale.Width - 6, 13, "end", "▲ forward"),
            Svg.Line("symmetry", scale.X(0), 22, scale.X(0), foot - 34),
            Svg.Text("small", scale.X(0), foot - 22, "middle", "plane of symmetry"),
            .. Thrust(study, geometry, scale, Y),
            .. Masses(study.Machine, scale, Y),
            .. HangLine(study, geometry, scale, Y),
            Svg.Text("name", 6, foot - 6, "start", "◀ pilot's LEFT"),
            Svg.Text("name", FrameScale.Width - 6, foot - 6, "end", "pilot's RIGHT ▶"),
            .. FrameNotes.Of(study.Machine, foot),
        ]));
    }

    private static IEnumerable<XElement> Thrust(Study study, FrameGeometry geometry, FrameScale scale, Func<double, double> y)
    {
        var (x, hub, radius) = (scale.X(geometry.HubRightMetres), y(geometry.HubForwardMetres),
            study.Machine.Propeller.DiameterMetres / 2 * scale.UnitsPerMetre);
        var (right, forward) = Elementary.SinCos(geometry.AngleRadians);
        var length = hub - 34;
        var factor = study.Factor(GeometryInput.ThrustLineAngle);
        yield return Svg.Line("blade", x - radius * forward, hub - radius * right, x + radius * forward, hub + radius * right);
        foreach (var mark in FrameNotes.Thrust(x, hub, length, geometry.AngleRadians))
            yield return mark;
        yield return PlotMarker.At("hub", PlotMarker.Cross, x, hub);
        yield return Svg.Text("small", x - radius + 6, hub + 17, "start", "propeller");
        yield return Svg.Text("figure", FrameScale.Width - 6, 30, "end",
            geometry.AngleRadians == 0 ? "thrust line straight ahead"
            : $"thrust line {factor.Unit.Text(Math.Abs(geometry.AngleRadians))} to the {SideText.Side(geometry.AngleRadians)}");
    }

    private static IEnumerable<XElement> Masses(Machine machine, FrameScale scale, Func<double, double> y)
    {
        var centre = machine.CentreOfGravity;
        foreach (var mark in FrameNotes.Centre(scale.X(centre.RightMetres), y(centre.ForwardMetres)))
            yield return mark;
        yield return Svg.Text("small", scale.X(centre.RightMetres) - 11, y(centre.ForwardMetres) + 15, "end", "centre of gravity");
        yield return Svg.Line("extension", scale.X(-0.06), y(0), scale.X(0.06), y(0));
        yield return Svg.Text("small", scale.X(0.06) + 4, y(0) + 3, "start", "datum");
    }

    private static IEnumerable<XElement> HangLine(Study study, FrameGeometry geometry, FrameScale scale, Func<double, double> y)
    {
        var unit = study.LengthUnit;
        var (xLeft, xRight, line) = (scale.X(-DrillingDimensions.LeftMetres(geometry)), scale.X(DrillingDimensions.RightMetres(geometry)),
            y(geometry.HangLineForwardMetres));
        var dimensionX = Math.Max(xRight + 26, scale.X(0) + 60);
        return
        [
            Svg.Line("hang", xLeft, line, xRight, line),
            Svg.Line("extension", xRight, line, dimensionX + 6, line),
            .. DimensionLine.Down(dimensionX, line, y(geometry.HubForwardMetres),
                unit.Text(Math.Abs(geometry.HangLineForwardMetres - geometry.HubForwardMetres))),
            Svg.Circle("hole", xLeft, line, 4.5),
            Svg.Circle("hole", xRight, line, 4.5),
            Svg.Text("small", xLeft - 8, line - 8, "end", "hang points"),
        ];
    }

    private static string AltText(Study study, FrameGeometry geometry)
    {
        var unit = study.LengthUnit;
        var behind = geometry.HangLineForwardMetres - geometry.HubForwardMetres;
        return $"The hub lies {unit.Text(Math.Abs(behind))} {(behind < 0 ? "in front of" : "behind")} the hang line. "
            + $"{GeometryText.Of(study, geometry)}.";
    }
}
