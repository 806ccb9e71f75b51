using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Drafting;

/// <summary>The frame seen from above: hang line, propeller, and the thrust line with its angle.</summary>
internal static class PlanView
{
    public static void Draw(SheetBuilder sheet, DrawnDesign design, SheetView view, FrameExtent extent)
    {
        var geometry = design.Geometry;
        var centre = design.Machine.CentreOfGravity;
        (double X, double Y) hub = (view.X(geometry.HubRightMetres), view.Y(geometry.HubForwardMetres));
        var (line, radius) = (view.Y(geometry.HangLineForwardMetres), view.Scale * design.Machine.Propeller.DiameterMetres / 2);
        sheet.Line(Pen.Centre, view.X(0), view.Y(extent.Rear) - 3, view.X(0), view.Y(extent.Front) + 3);
        sheet.Line(Pen.Fine, view.X(0) - 8, view.Y(0), view.X(0) + 8, view.Y(0));
        var forward = Math.PI / 2 - geometry.AngleRadians;
        FrameMarks.Blade(sheet, hub, forward, radius);
        FrameMarks.Thrust(sheet, hub, forward, Math.Clamp(view.Y(extent.Front) - hub.Y - 8, 12, 40));
        sheet.Line(Pen.Centre, view.X(design.HangPoints[0].RightMetres), line, view.X(design.HangPoints[1].RightMetres), line);
        foreach (var (rightMetres, _, isDrilled) in design.OtherHoles)
            FrameMarks.OtherHole(sheet, view.X(rightMetres), line, design.HoleRadius(view.Scale), isDrilled);
        foreach (var point in design.HangPoints)
            sheet.Circle(Pen.Hole, view.X(point.RightMetres), line, design.HoleRadius(view.Scale), isFilled: true);
        FrameMarks.Centre(sheet, (view.X(centre.RightMetres), view.Y(centre.ForwardMetres)),
            (view.X(extent.Centre.Low.RightMetres), view.Y(extent.Centre.Low.ForwardMetres)),
            (view.X(extent.Centre.High.RightMetres), view.Y(extent.Centre.High.ForwardMetres)));
        SheetDimension.Upright(sheet, (view.X(design.HangPoints[1].RightMetres), line), hub, view.X(extent.Half) + 9, 2.5,
            Sheet.Length(geometry.HangLineForwardMetres - geometry.HubForwardMetres));
        sheet.Arrow(view.X(-extent.Half) - 8, view.Y(extent.Front), Math.PI / 2, 5);
        sheet.Line(Pen.Outline, view.X(-extent.Half) - 8, view.Y(extent.Front) - 5, view.X(-extent.Half) - 8, view.Y(extent.Front) - 12);
        sheet.Label(view.X(-extent.Half) - 8, view.Y(extent.Front) - 6, 3, 2.5, "forward");
        sheet.Label(view.X(design.HangPoints[0].RightMetres), line, 3, 2.5, "LEFT");
        sheet.Label(view.X(design.HangPoints[1].RightMetres), line, 3, 2.5, "RIGHT");
        sheet.Label(hub.X, hub.Y, 4, 2.5, geometry.AngleRadians == 0 ? "thrust line straight ahead"
            : $"thrust line {Sheet.Angle(geometry.AngleRadians)} to the {SideText.Side(geometry.AngleRadians)}");
        sheet.Label(view.X(0), view.Y(0), 3, 2.5, "datum");
    }
}
