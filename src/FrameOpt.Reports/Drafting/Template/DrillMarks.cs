namespace FrameOpt.Reports.Drafting.Template;

/// <summary>The marks of a template: where to drill, which side it is, and how to join and check the sheets.</summary>
internal static class DrillMarks
{
    /// <summary>Radius of the circle around a drill centre, mm: it helps to see the centre and is not the size of the hole.</summary>
    public const double Radius = 5;

    /// <summary>Half of the cross at a drill centre, mm.</summary>
    public const double Reach = 9;

    /// <summary>Length of a scale bar, mm.</summary>
    public const double BarLength = 100;

    /// <summary>Radius of the circle of a registration mark, mm.</summary>
    public const double RegistrationRadius = 2.5;

    /// <summary>A drill centre: cross and circle.</summary>
    public static void Centre(SheetBuilder sheet, double x, double y)
    {
        sheet.Cross(Pen.Fine, x, y, Reach);
        sheet.Circle(Pen.Hole, x, y, Radius);
    }

    /// <summary>A hole of the bar that is not to be drilled.</summary>
    public static void OtherHole(SheetBuilder sheet, double x, double y, bool isDrilled)
    {
        sheet.Circle(isDrilled ? Pen.Fine : Pen.Dashed, x, y, 3);
        sheet.Cross(Pen.Fine, x, y, 1);
    }

    /// <summary>Which side of the pilot: a filled square for the left and an empty triangle for the right, so that the sheet reads
    /// differently from behind and upside down.</summary>
    /// <param name="sheet">Drawn on.</param>
    /// <param name="side">-1 for the pilot's left, +1 for the right.</param>
    /// <param name="x">Middle.</param>
    /// <param name="y">Lower edge.</param>
    /// <param name="size">mm.</param>
    public static void Side(SheetBuilder sheet, int side, double x, double y, double size)
    {
        var half = size / 2;
        if (side < 0)
            sheet.Path(Pen.Fine, [(x - half, y), (x + half, y), (x + half, y + size), (x - half, y + size)], isFilled: true);
        else
            sheet.Path(Pen.Outline, [(x - half, y), (x + half, y), (x, y + size), (x - half, y)]);
    }

    /// <summary>A mark that stands at the same place on two neighbours.</summary>
    public static void Registration(SheetBuilder sheet, double x, double y, string name)
    {
        sheet.Circle(Pen.Fine, x, y, RegistrationRadius);
        sheet.Cross(Pen.Fine, x, y, 4);
        sheet.Figure(SheetBuilder.At(x + 3.5, y + 1.2, 2.5, name, 0), SheetBuilder.At(x - 3.5, y + 1.2, 2.5, name, 1));
    }

    /// <summary>A bar to measure the print by, with a stroke every 10 mm.</summary>
    public static void ScaleBar(SheetBuilder sheet, double x, double y, bool isUpright)
    {
        for (var at = 0; at <= BarLength; at += 10)
        {
            var stroke = at % 50 == 0 ? 4 : 2;
            if (isUpright)
                sheet.Line(Pen.Fine, x, y + at, x + stroke, y + at);
            else
                sheet.Line(Pen.Fine, x + at, y, x + at, y + stroke);
        }

        if (isUpright)
        {
            sheet.Line(Pen.Outline, x, y, x, y + BarLength);
            sheet.Text(x - 1.5, y + BarLength / 2, 2.5, "100 mm: measure before drilling", 0.5, isUpright: true);
        }
        else
        {
            sheet.Line(Pen.Outline, x, y, x + BarLength, y);
            sheet.Text(x + BarLength / 2, y - 4, 2.5, "100 mm: measure before drilling", 0.5);
        }
    }
}
