using FrameOpt.Model;
using FrameOpt.Numerics;

namespace FrameOpt.Reports.Drafting;

/// <summary>The frame seen from behind: hang points from the plane of symmetry and the datum, hub, propeller, centre of
/// gravity.</summary>
internal static class RearElevation
{
    /// <summary>Room for the rows of dimensions above the higher hang point, mm.</summary>
    public const double RowsAbove = 3 * Row + 8;

    private const double Row = 8;

    public static void Draw(SheetBuilder sheet, DrawnDesign design, SheetView view, FrameExtent extent)
    {
        var geometry = design.Geometry;
        sheet.Line(Pen.Centre, view.X(0), view.Y(extent.Bottom) - 3, view.X(0), view.Y(extent.Top) + 1);
        Propeller(sheet, design, view);
        HangPoints(sheet, design, view);
        Heights(sheet, design, view, extent);
        FrameMarks.Centre(sheet, (view.X(design.Machine.CentreOfGravity.RightMetres), view.Y(design.Machine.CentreOfGravity.UpMetres)),
            (view.X(extent.Centre.Low.RightMetres), view.Y(extent.Centre.Low.UpMetres)),
            (view.X(extent.Centre.High.RightMetres), view.Y(extent.Centre.High.UpMetres)));
        sheet.Label(view.X(0), view.Y(extent.Bottom) - 1, 1.5, 2.5, "plane of symmetry");
        if (geometry.HubRightMetres != 0)
        {
            var hub = view.Y(geometry.HubUpMetres);
            SheetDimension.Across(sheet, (view.X(0), hub), (view.X(geometry.HubRightMetres), hub),
                hub - 0.3 * view.Scale * design.Machine.Propeller.DiameterMetres, 2.5, Sheet.Length(geometry.HubRightMetres));
        }
    }

    /// <summary>Its path, which way it turns, and which side its reaction pushes down.</summary>
    private static void Propeller(SheetBuilder sheet, DrawnDesign design, SheetView view)
    {
        var (geometry, propeller) = (design.Geometry, design.Machine.Propeller);
        var (x, y, radius) = (view.X(geometry.HubRightMetres), view.Y(geometry.HubUpMetres), view.Scale * propeller.DiameterMetres / 2);
        sheet.Circle(Pen.Moving, x, y, radius);
        sheet.Cross(Pen.Centre, x, y, 5);
        sheet.Circle(Pen.Outline, x, y, 1.5);
        sheet.Label(x, y, 3, 2.5, "hub");
        var side = propeller.Rotation == Rotation.Clockwise ? 1 : -1;
        var arc = Enumerable.Range(-8, 17).Select(part => side * part * Math.PI / 48)
            .Select(angle => (x + (radius - 4) * Elementary.Sin(angle), y + (radius - 4) * Elementary.Cos(angle))).ToList();
        sheet.Path(Pen.Outline, arc);
        sheet.Arrow(arc[^1].Item1, arc[^1].Item2, side > 0 ? -Math.PI / 6 : -Math.PI * 5 / 6, 4);
        var down = x - side * (radius + 4);
        sheet.Line(Pen.Outline, down, y + 8, down, y - 4);
        sheet.Arrow(down, y - 8, -Math.PI / 2, 4);
        sheet.Figure(SheetBuilder.At(down - 1.5, y + 1, 2.5, "reaction", 0.5, isUpright: true),
            SheetBuilder.At(down + 4, y + 1, 2.5, "reaction", 0.5, isUpright: true));
    }

    private static void HangPoints(SheetBuilder sheet, DrawnDesign design, SheetView view)
    {
        var (left, right) = (design.HangPoints[0], design.HangPoints[1]);
        var above = Math.Max(view.Y(left.UpMetres), view.Y(right.UpMetres));
        sheet.Line(Pen.Centre, view.X(left.RightMetres), view.Y(left.UpMetres), view.X(right.RightMetres), view.Y(right.UpMetres));
        foreach (var (rightMetres, upMetres, isDrilled) in design.OtherHoles)
            FrameMarks.OtherHole(sheet, view.X(rightMetres), view.Y(upMetres), design.HoleRadius(view.Scale), isDrilled);
        // A row each, so that no figure meets another wherever the hang points are.
        foreach (var (row, point) in design.HangPoints.Index())
        {
            var (x, y) = (view.X(point.RightMetres), view.Y(point.UpMetres));
            sheet.Circle(Pen.Hole, x, y, design.HoleRadius(view.Scale), isFilled: true);
            // Below the rows before it, the extension line of the plane of symmetry is drawn already.
            SheetDimension.Across(sheet, (view.X(0), above + (row == 0 ? 0 : 10)), (x, y), above + 8 + Row * row, 3.5,
                $"{point.Name} {Sheet.Length(point.RightMetres)}");
        }

        SheetDimension.Across(sheet, (view.X(left.RightMetres), view.Y(left.UpMetres)), (view.X(right.RightMetres), view.Y(right.UpMetres)),
            above + 8 + 2 * Row, 3.5, Sheet.Length(right.RightMetres - left.RightMetres));
    }

    /// <summary>The hang points above the datum; one figure where they are level.</summary>
    private static void Heights(SheetBuilder sheet, DrawnDesign design, SheetView view, FrameExtent extent)
    {
        var isLevel = design.Geometry.HangHeightDifferenceMetres == 0;
        sheet.Line(Pen.Fine, view.X(0) - 8, view.Y(0), view.X(extent.Half) + 13, view.Y(0));
        sheet.Label(view.X(0), view.Y(0), 2, 2.5, "datum");
        foreach (var point in design.HangPoints.Where(point => point.Side > 0 || !isLevel))
        {
            var line = view.X(point.Side * extent.Half) + point.Side * 15;
            if (point.Side < 0)
                sheet.Line(Pen.Fine, view.X(0), view.Y(0), line - 2, view.Y(0));
            SheetDimension.Upright(sheet, (view.X(point.RightMetres), view.Y(point.UpMetres)), (view.X(0), view.Y(0)), line, 2.5,
                Sheet.Length(point.UpMetres));
        }
    }
}
