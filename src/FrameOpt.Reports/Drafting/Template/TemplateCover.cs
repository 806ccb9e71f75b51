using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Drafting.Template;

/// <summary>The first page of a template: what to do, step by step, the figures to check the joined sheets by, and a map of them.</summary>
internal static class TemplateCover
{
    public static Sheet Of(DrawnDesign design, Paper paper, TemplatePlane plane, TemplateTiles tiles, int pages)
    {
        var sheet = new SheetBuilder($"FrameOpt template, {new PageNumber(1, pages)}", paper.Width, paper.Height);
        var (left, right, top) = (paper.Left, paper.Left + Paper.AreaWidth, paper.Bottom + Paper.AreaHeight);
        sheet.Text(left, top - 7, 7, "TEMPLATE FOR THE HANG POINTS, 1:1");
        sheet.Text(right, top - 3.5, 3.5, $"{new PageNumber(1, pages)}, {paper.Name}", 1);
        sheet.Text(left, top - 13, 2.5, TemplateFrame.Source(design));
        var y = top - 21;
        foreach (var line in Steps(design, plane, tiles, paper))
            y = sheet.Paragraph(left, y, 2.5, line, 166) - 1.2;
        DrillMarks.ScaleBar(sheet, right - 12, top - 140, isUpright: true);
        DrillMarks.ScaleBar(sheet, left, paper.Bottom + 28, isUpright: false);
        TemplateFrame.Foot(sheet, paper);
        Map(sheet, plane, tiles, right - 52, top - 50);
        return sheet.Build();
    }

    private static IEnumerable<string> Steps(DrawnDesign design, TemplatePlane plane, TemplateTiles tiles, Paper paper)
    {
        var apart = design.HangPoints[1].RightMetres - design.HangPoints[0].RightMetres;
        var sheets = tiles.Windows.Count;
        var strips = TemplateStrips.Count(tiles);
        yield return $"1. Print on {paper.Name} at 100 % (\"actual size\", not \"fit to page\").";
        yield return "2. Measure both scale bars on every sheet with a steel rule: 100 mm each way. If one is off by more than 0.3 mm, do "
            + "not drill: print again or mark out by the figures below.";
        yield return $"3. Sheets 2 to {1 + sheets} are seen from behind the frame. Sheet{(strips > 1 ? "s" : "")} {2 + sheets}"
            + $"{(strips > 1 ? $" to {1 + sheets + strips}" : "")} has strips for a narrow bar. Sheets {2 + sheets + strips} to "
            + $"{1 + 2 * sheets + strips} are for the OTHER SIDE, the front of the bar, and are mirrored on purpose. Use one set; put the "
            + "others away.";
        if (tiles.Columns.Count > 1 || tiles.Rows.Count > 1)
        {
            yield return "4. Join the sheets: cut one along its dashed line and lay it on its neighbour so that the dashed lines and the "
                + "marks of the same name meet.";
        }

        yield return "5. Measure the joined template:";
        foreach (var point in design.HangPoints)
            yield return "- " + FrameSheetNotes.HangPointLine(design, point);
        yield return $"- from LEFT to RIGHT, centre to centre across: {Sheet.Length(apart)}";
        yield return "6. Lay the plane of symmetry on that of the frame and the hang line on that of the bar, UP upward. Check the side "
            + $"twice: {design.RotationLine}; {design.PullLine}. A filled square marks the pilot's LEFT, an empty triangle the RIGHT.";
        yield return "7. Punch the centres, take the template off, measure both centres from the plane of symmetry with a rule, then drill "
            + "a small hole first.";
        yield return $"8. {TextTruncation.Truncate(DatumText.Sentence(design.Machine), 300)}";
        if (plane.OtherHoles.Count > 0)
            yield return "Small circles are holes of the bar that this design does not use: dashed ones are not drilled.";
    }

    /// <summary>The sheets side by side with the holes on them, small and not to scale for drilling.</summary>
    private static void Map(SheetBuilder sheet, TemplatePlane plane, TemplateTiles tiles, double x, double y)
    {
        var scale = 26 / Math.Max(Math.Abs(tiles.Columns[0]), 2 * Math.Abs(tiles.Rows[0]));
        foreach (var (index, (windowLeft, windowBottom)) in tiles.Windows.Index())
        {
            var (left, bottom) = (x + scale * windowLeft, y + scale * windowBottom);
            sheet.Frame(Pen.Fine, left, bottom, left + scale * TemplateTiles.WindowWidth, bottom + scale * TemplateTiles.WindowHeight);
            sheet.Label(left + scale * TemplateTiles.WindowWidth / 2, bottom + 2, 0, 1.8, $"{2 + index}");
        }

        sheet.Line(Pen.Centre, x, y - 14, x, y + 14);
        foreach (var point in plane.Points)
            sheet.Circle(Pen.Outline, x + scale * point.Right, y + scale * point.Up, 0.8, isFilled: true);
        sheet.Text(x, y + 17, 2.5, "map of the sheets, seen from behind", 0.5);
    }
}
