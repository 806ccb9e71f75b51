using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Numerics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Graphics;

/// <summary>The frame seen from behind, with the dimensions to drill by.</summary>
internal static class FrameRearView
{
    private const double Head = 34;
    private const double Foot = 40 + FrameNotes.Height;

    public static XElement Of(Study study, FrameGeometry geometry, FrameScale scale) =>
        Of("frame-front", study.Machine, study.Factors, geometry, scale, study.Holes);

    /// <summary>The picture of one of several frames on a page.</summary>
    public static XElement Of(
        string id, Machine machine, IReadOnlyList<StudyFactor> factors, FrameGeometry geometry, FrameScale scale, HolePattern? holes = null)
    {
        var height = Head + (scale.TopMetres - scale.BottomMetres) * scale.UnitsPerMetre + Foot;
        var foot = height - FrameNotes.Height;
        double Y(double up) => Head + (scale.TopMetres - up) * scale.UnitsPerMetre;
        return Svg.Picture(id, FrameScale.Width, height, "The frame seen from behind", AltText(machine, factors, geometry),
            LabelLayout.Apart(height,
        [
            Svg.Text("note", 6, 13, "start", "SEEN FROM BEHIND"),
            Svg.Text("note", FrameScale.Width - 6, 13, "end", $"propeller turns {StudyText.RotationText(machine.Propeller.Rotation)}"),
            .. Propeller(machine.Propeller, geometry, scale, Y),
            Svg.Line("symmetry", scale.X(0), Head - 14, scale.X(0), foot - 34),
            Svg.Text("small", scale.X(0), foot - 22, "middle", "plane of symmetry"),
            .. Reaction(machine.Propeller.Rotation, Y(geometry.HubUpMetres)),
            .. Centre(machine, scale, Y),
            .. HangLine(factors, geometry, scale, Y),
            .. holes is null ? [] : Holes(holes.Left, -1, scale, Y(geometry.LeftHeightMetres)),
            .. holes is null ? [] : Holes(holes.Right, 1, scale, Y(geometry.RightHeightMetres)),
            Svg.Text("name", 6, foot - 6, "start", "◀ pilot's LEFT"),
            Svg.Text("name", FrameScale.Width - 6, foot - 6, "end", "pilot's RIGHT ▶"),
            .. FrameNotes.Of(machine, foot),
            .. UnequalSides(factors, geometry, scale, Y),
        ]));
    }

    private static IEnumerable<XElement> Propeller(Propeller propeller, FrameGeometry geometry, FrameScale scale, Func<double, double> y)
    {
        var (x, middle, radius) = (scale.X(geometry.HubRightMetres), y(geometry.HubUpMetres),
            propeller.DiameterMetres / 2 * scale.UnitsPerMetre);
        yield return Svg.Circle("disc", x, middle, radius);
        yield return PlotMarker.At("hub", PlotMarker.Cross, x, middle);
        yield return Svg.Text("small", x + 8, middle + 13, "start", "hub");
        // An arrow along the upper edge of the disc, 30 degrees to either side of the top.
        var side = propeller.Rotation == Rotation.Clockwise ? 1 : -1;
        var (reach, rise, inner) = (Elementary.Sin(Math.PI / 6), Elementary.Cos(Math.PI / 6), radius - 9);
        string Point(double right, double up) => $"{Svg.Number(x + right)} {Svg.Number(middle - up)}";
        yield return Svg.Path(
            "turn", $"M{Point(-side * inner * reach, inner * rise)}A{Svg.Number(inner)} {Svg.Number(inner)} 0 0 "
                + $"{(side > 0 ? 1 : 0)} {Point(side * inner * reach, inner * rise)}");
        yield return new XElement(
            "path",
            new XAttribute("class", "turn-head"),
            new XAttribute("d", "M7 0L-5-5.5V5.5Z"),
            new XAttribute("transform", $"translate({Point(side * inner * reach, inner * rise)}) rotate({(side > 0 ? 30 : 150)})"));
    }

    private static IEnumerable<XElement> Reaction(Rotation rotation, double y)
    {
        var isLeft = rotation == Rotation.Clockwise;
        var x = isLeft ? 26 : FrameScale.Width - 26;
        yield return Svg.Path("turn", $"M{Svg.Number(x)} {Svg.Number(y - 4)}v26");
        yield return PlotMarker.At("turn-head", "M0 8L-5.5-4H5.5Z", x, y + 26);
        yield return Svg.Text("small", isLeft ? 18 : FrameScale.Width - 18, y + 48, isLeft ? "start" : "end", "reaction:");
        yield return Svg.Text("small", isLeft ? 18 : FrameScale.Width - 18, y + 59, isLeft ? "start" : "end", "this side down");
    }

    private static IEnumerable<XElement> Centre(Machine machine, FrameScale scale, Func<double, double> y)
    {
        var centre = machine.CentreOfGravity;
        foreach (var mark in FrameNotes.Centre(scale.X(centre.RightMetres), y(centre.UpMetres)))
            yield return mark;
        yield return Svg.Text("small", scale.X(centre.RightMetres) - 11, y(centre.UpMetres) + 14, "end", "centre of gravity");
    }

    private static IEnumerable<XElement> HangLine(
        IReadOnlyList<StudyFactor> factors, FrameGeometry geometry, FrameScale scale, Func<double, double> y)
    {
        var spacing = factors.First(factor => factor.Input == GeometryInput.HangPointSpacing).Unit;
        var height = factors.First(factor => factor.Input == GeometryInput.SuspensionHeight).Unit;
        var offset = factors.First(factor => factor.Input == GeometryInput.LateralOffset);
        var (right, left) = (DrillingDimensions.RightMetres(geometry), DrillingDimensions.LeftMetres(geometry));
        var (xLeft, xRight, line) = (scale.X(-left), scale.X(right), y(geometry.HeightMetres));
        var (yLeft, yRight) = (y(geometry.LeftHeightMetres), y(geometry.RightHeightMetres));
        var dimensionX = Math.Max(xRight + 30, scale.X(0) + 98);
        return
        [
            Svg.Line("riser", xLeft, yLeft, xLeft, line - 56),
            Svg.Line("riser", xRight, yRight, xRight, line - 56),
            Svg.Line("hang", xLeft, yLeft, xRight, yRight),
            .. DimensionLine.Across(Math.Min(xLeft, scale.X(0)), Math.Max(xLeft, scale.X(0)), line - 24, spacing.Text(Math.Abs(left)),
                true),
            .. DimensionLine.Across(Math.Min(xRight, scale.X(0)), Math.Max(xRight, scale.X(0)), line - 24, spacing.Text(Math.Abs(right)),
                false),
            .. DimensionLine.Across(xLeft, xRight, line - 48, spacing.Text(geometry.SpacingMetres), false),
            Svg.Line("extension", xRight, line, dimensionX + 6, line),
            Svg.Line("extension", scale.X(0) - 14, y(0), dimensionX + 6, y(0)),
            Svg.Text("small", dimensionX, y(0) + 13, "middle", "datum"),
            .. DimensionLine.Down(dimensionX, line, y(0), height.Text(Math.Abs(geometry.HeightMetres))),
            Svg.Circle("hole", xLeft, yLeft, 4.5),
            Svg.Circle("hole", xRight, yRight, 4.5),
            Svg.Text("small", scale.X(0), line + 15, "middle", GeometryText.Of(offset, geometry.OffsetMetres)),
        ];
    }

    /// <summary>The holes of one side; those that are not there yet have a broken outline.</summary>
    private static IEnumerable<XElement> Holes(HoleRow row, int side, FrameScale scale, double y) => row.Places.Select((place, hole) =>
        Svg.Circle(row.Drilled is null || row.IsDrilled(hole) ? "other-hole" : "other-hole new-hole", scale.X(side * place), y, 2.5));

    /// <summary>The height of each hang point where they differ, and which strap is longer: nothing where both sides are alike.</summary>
    private static IEnumerable<XElement> UnequalSides(
        IReadOnlyList<StudyFactor> factors, FrameGeometry geometry, FrameScale scale, Func<double, double> y)
    {
        var unit = factors.First(factor => factor.Input == GeometryInput.SuspensionHeight).Unit;
        var (xLeft, xRight) = (scale.X(-DrillingDimensions.LeftMetres(geometry)), scale.X(DrillingDimensions.RightMetres(geometry)));
        if (geometry.HangHeightDifferenceMetres != 0)
        {
            yield return Svg.Text("small", xLeft - 8, y(geometry.LeftHeightMetres) + 3, "end", unit.Text(geometry.LeftHeightMetres));
            yield return Svg.Text("small", xRight + 8, y(geometry.RightHeightMetres) - 4, "start", unit.Text(geometry.RightHeightMetres));
        }

        if (geometry.StrapDifferenceMetres != 0)
        {
            var (x, anchor) = geometry.StrapDifferenceMetres < 0 ? (xLeft - 6, "end") : (xRight + 6, "start");
            yield return Svg.Text("small", x, y(geometry.HeightMetres) - 32, anchor,
                $"strap {unit.Text(Math.Abs(geometry.StrapDifferenceMetres))} longer");
        }
    }

    private static string AltText(Machine machine, IReadOnlyList<StudyFactor> factors, FrameGeometry geometry) =>
        DrillingDimensions.Sentence(geometry, factors.First(factor => factor.Input == GeometryInput.HangPointSpacing).Unit)
        + $" The propeller turns {StudyText.RotationText(machine.Propeller.Rotation)}.";
}
