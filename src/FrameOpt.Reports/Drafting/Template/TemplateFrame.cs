namespace FrameOpt.Reports.Drafting.Template;

/// <summary>What stands on every page of a template: from which side it is seen, how to print it, and where it comes from.</summary>
internal static class TemplateFrame
{
    /// <summary>A sheet with its head.</summary>
    public static SheetBuilder Begin(DrawnDesign design, Paper paper, TemplatePlane plane, PageNumber page)
    {
        var sheet = new SheetBuilder($"FrameOpt template, {page}", paper.Width, paper.Height);
        var (left, right, top) = (paper.Left, paper.Left + Paper.AreaWidth, paper.Bottom + Paper.AreaHeight);
        sheet.Text(left, top - 7, 7, plane.IsMirrored ? "OTHER SIDE: SEEN FROM THE FRONT" : "SEEN FROM BEHIND");
        sheet.Text(right, top - 3.5, 3.5, $"{page}, {paper.Name}", 1);
        sheet.Text(left, top - 14, 3.5, plane.IsMirrored
            ? "Mirrored on purpose, to lay on the front of the bar. The pilot's LEFT is on your right."
            : "Lay it on the bar as seen from behind the frame. The pilot's LEFT is on your left.");
        sheet.Text(left, top - 20, 3.5, "Print at 100 % (actual size). Check both scale bars with a steel rule before drilling.");
        sheet.Text(left, top - 25.5, 2.5, Source(design));
        sheet.Text(left, top - 30, 2.5, $"{design.RotationLine}; {design.PullLine}");
        sheet.Line(Pen.Outline, right - 6, top - 30, right - 6, top - 18);
        sheet.Arrow(right - 6, top - 14, Math.PI / 2, 6);
        sheet.Text(right - 12, top - 26, 5, "UP", 1);
        return sheet;
    }

    /// <summary>From which study the template is.</summary>
    public static string Source(DrawnDesign design) => $"{design.Origin}: {SheetFont.Cut(design.Study.FullTitle, 2.5, 120)}";

    /// <summary>Which way the pilot's left and right are, with the mark of each.</summary>
    public static void Sides(SheetBuilder sheet, TemplatePlane plane, double left, double right, double y)
    {
        var side = plane.IsMirrored ? 1 : -1;
        sheet.Line(Pen.Outline, left + 3, y + 4, left + 10, y + 4);
        sheet.Arrow(left, y + 4, Math.PI, 5);
        DrillMarks.Side(sheet, side, left + 15, y + 1, 6);
        sheet.Text(left + 21, y + 1.5, 5, side < 0 ? "LEFT" : "RIGHT");
        sheet.Line(Pen.Outline, right - 3, y + 4, right - 10, y + 4);
        sheet.Arrow(right, y + 4, 0, 5);
        DrillMarks.Side(sheet, -side, right - 15, y + 1, 6);
        sheet.Text(right - 21, y + 1.5, 5, side < 0 ? "RIGHT" : "LEFT", 1);
    }

    /// <summary>The caution at the foot of the page.</summary>
    public static void Foot(SheetBuilder sheet, Paper paper)
    {
        var y = sheet.Paragraph(paper.Left, paper.Bottom + 15, 2.5, FrameSheetNotes.Caution, Paper.AreaWidth);
        sheet.Text(paper.Left, y, 2.5, "The circle shows the centre; it is not the size of the hole.");
    }
}
