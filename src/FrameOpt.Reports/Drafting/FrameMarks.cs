using FrameOpt.Numerics;

namespace FrameOpt.Reports.Drafting;

/// <summary>Marks that several views share.</summary>
internal static class FrameMarks
{
    /// <summary>The centre of gravity, and the rectangle in which it lies in most cases.</summary>
    public static void Centre(SheetBuilder sheet, (double X, double Y) at, (double X, double Y) low, (double X, double Y) high)
    {
        sheet.Circle(Pen.Fine, at.X, at.Y, 2);
        sheet.Cross(Pen.Fine, at.X, at.Y, 3);
        sheet.Frame(Pen.Moving, low.X, low.Y, high.X, high.Y);
        sheet.Label(at.X, at.Y, 4, 2.5, "centre of gravity, range");
    }

    /// <summary>A hole of the bar that is not used: dashed where it is only planned.</summary>
    public static void OtherHole(SheetBuilder sheet, double x, double y, double radius, bool isDrilled) =>
        sheet.Circle(isDrilled ? Pen.Fine : Pen.Dashed, x, y, radius);

    /// <summary>The line along which the thrust pushes, from the hub.</summary>
    /// <param name="sheet">Drawn on.</param>
    /// <param name="hub">Where it begins.</param>
    /// <param name="radians">From the right, counter-clockwise.</param>
    /// <param name="length">mm.</param>
    public static void Thrust(SheetBuilder sheet, (double X, double Y) hub, double radians, double length)
    {
        var (sin, cos) = Elementary.SinCos(radians);
        sheet.Line(Pen.Centre, hub.X - 8 * cos, hub.Y - 8 * sin, hub.X + (length + 8) * cos, hub.Y + (length + 8) * sin);
        sheet.Line(Pen.Outline, hub.X, hub.Y, hub.X + (length - 4) * cos, hub.Y + (length - 4) * sin);
        sheet.Arrow(hub.X + length * cos, hub.Y + length * sin, radians, 5);
    }

    /// <summary>The propeller seen along its disc, square to the thrust line.</summary>
    public static void Blade(SheetBuilder sheet, (double X, double Y) hub, double radians, double radius)
    {
        var (sin, cos) = Elementary.SinCos(radians);
        sheet.Line(Pen.Moving, hub.X + radius * sin, hub.Y - radius * cos, hub.X - radius * sin, hub.Y + radius * cos);
        sheet.Circle(Pen.Outline, hub.X, hub.Y, 1.5);
    }
}
