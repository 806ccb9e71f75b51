using FrameOpt.Numerics;

namespace FrameOpt.Reports.Drafting;

/// <summary>The frame seen from the pilot's right: heights and distances from the datum, thrust line with its tilt.</summary>
internal static class SideElevation
{
    public static void Draw(SheetBuilder sheet, DrawnDesign design, SheetView view, FrameExtent extent)
    {
        var geometry = design.Geometry;
        var centre = design.Machine.CentreOfGravity;
        (double X, double Y) hub = (view.X(geometry.HubForwardMetres), view.Y(geometry.HubUpMetres));
        (double X, double Y) hang = (view.X(geometry.HangLineForwardMetres), view.Y(geometry.HeightMetres));
        var radius = view.Scale * design.Machine.Propeller.DiameterMetres / 2;
        FrameMarks.Blade(sheet, hub, geometry.TiltRadians, radius);
        FrameMarks.Thrust(sheet, hub, geometry.TiltRadians, Math.Max(18, 0.4 * radius));
        sheet.Cross(Pen.Fine, view.X(0), view.Y(0), 5);
        foreach (var point in design.HangPoints.DistinctBy(point => point.UpMetres))
            sheet.Circle(Pen.Hole, hang.X, view.Y(point.UpMetres), design.HoleRadius(view.Scale), isFilled: true);
        FrameMarks.Centre(sheet, (view.X(centre.ForwardMetres), view.Y(centre.UpMetres)),
            (view.X(extent.Centre.Low.ForwardMetres), view.Y(extent.Centre.Low.UpMetres)),
            (view.X(extent.Centre.High.ForwardMetres), view.Y(extent.Centre.High.UpMetres)));
        var row = view.Y(extent.HangUp) + 8;
        if (geometry.HangLineForwardMetres != 0)
            SheetDimension.Across(sheet, (view.X(0), view.Y(0)), hang, row, 2.5, Sheet.Length(geometry.HangLineForwardMetres));
        if (geometry.HubForwardMetres != 0)
        {
            // The datum's extension line goes up to the first row already.
            SheetDimension.Across(sheet, (view.X(0), geometry.HangLineForwardMetres == 0 ? view.Y(0) : row + 2), hub, row + 8, 2.5,
                Sheet.Length(geometry.HubForwardMetres));
        }

        if (geometry.HubUpMetres != 0)
            SheetDimension.Upright(sheet, (view.X(0), view.Y(0)), hub, view.X(extent.Rear) - 9, 2.5, Sheet.Length(geometry.HubUpMetres));
        sheet.Label(hub.X, hub.Y, 4, 2.5, geometry.TiltRadians == 0 ? "thrust line, level"
            : $"thrust line, {Sheet.Angle(geometry.TiltRadians)} {(geometry.TiltRadians > 0 ? "upward" : "downward")}");
        sheet.Label(hang.X, hang.Y, 3, 2.5, "hang points");
        sheet.Label(view.X(0), view.Y(0), 3, 2.5, "datum");
        sheet.Label(
            hub.X - radius * Elementary.Sin(geometry.TiltRadians), hub.Y + radius * Elementary.Cos(geometry.TiltRadians), 2, 2.5,
            "propeller");
    }
}
