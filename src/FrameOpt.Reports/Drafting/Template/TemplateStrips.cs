namespace FrameOpt.Reports.Drafting.Template;

/// <summary>The template as narrow strips: centre line and holes only, to cut out and lay along a bar.</summary>
internal static class TemplateStrips
{
    /// <summary>Strips on a page.</summary>
    private const int PerPage = 3;

    /// <summary>From one strip to the next, mm.</summary>
    private const double Pitch = 36;

    /// <summary>Half the width of a strip, mm.</summary>
    private const double Half = 12;

    /// <summary>How many pages they take.</summary>
    public static int Count(TemplateTiles tiles) => (tiles.Columns.Count + PerPage - 1) / PerPage;

    /// <summary>One page of them.</summary>
    public static Sheet Of(DrawnDesign design, Paper paper, TemplatePlane plane, TemplateTiles tiles, int index, PageNumber page)
    {
        var sheet = TemplateFrame.Begin(design, paper, plane, page);
        var left = paper.Left + Paper.AreaWidth - TemplateTiles.WindowWidth;
        DrillMarks.ScaleBar(sheet, paper.Left + 8, paper.Bottom + 46, isUpright: true);
        DrillMarks.ScaleBar(sheet, left + 70, paper.Bottom + 28, isUpright: false);
        TemplateFrame.Sides(sheet, plane, left, paper.Left + Paper.AreaWidth, paper.Bottom + 24);
        TemplateFrame.Foot(sheet, paper);
        foreach (var column in Enumerable.Range(index * PerPage, Math.Min(PerPage, tiles.Columns.Count - index * PerPage)))
        {
            var y = paper.Bottom + Paper.AreaHeight - 51 - Pitch * (column - index * PerPage);
            Strip(sheet, plane, tiles, column, new TemplateWindow(tiles.Columns[column], 0, left, y));
        }

        return sheet.Build();
    }

    /// <summary>One strip: sideways places only, the heights of the holes are on the sheets.</summary>
    private static void Strip(SheetBuilder sheet, TemplatePlane plane, TemplateTiles tiles, int column, TemplateWindow window)
    {
        var (y, right) = (window.PaperBottom, window.PaperLeft + TemplateTiles.WindowWidth);
        sheet.Bounds = new SheetBounds(window.PaperLeft + 1, y - Half, right - 1, y + Half);
        sheet.Frame(Pen.Fine, window.PaperLeft, y - Half, right, y + Half);
        sheet.Line(Pen.Centre, window.PaperLeft, y, right, y);
        sheet.Text(window.PaperLeft, y + Half + 1.5, 2.5,
            $"strip {column + 1} of {tiles.Columns.Count}: centre line and holes only"
                + (plane.HalfHeight > 0 ? "; the hang points differ in height, which a strip does not show" : ""));
        if (window.HasAcross(0))
        {
            sheet.Line(Pen.Outline, window.X(0), y - Half, window.X(0), y + Half);
            sheet.Figure(SheetBuilder.At(window.X(0) + 1.5, y + Half - 4, 2.5, "PLANE OF SYMMETRY", 0),
                SheetBuilder.At(window.X(0) - 1.5, y + Half - 4, 2.5, "PLANE OF SYMMETRY", 1));
        }

        foreach (var (joint, x) in ((int, double)[])[(column - 1, window.PaperLeft + TemplateTiles.Overlap / 2),
            (column, right - TemplateTiles.Overlap / 2)])
        {
            if (joint < 0 || joint > tiles.Columns.Count - 2)
                continue;
            sheet.Line(Pen.Dashed, x, y - Half, x, y + Half);
            DrillMarks.Registration(sheet, x, y - Half + 5, $"{(char)('A' + joint)}");
        }

        foreach (var hole in plane.OtherHoles.Where(hole => window.HasAcross(hole.Right - 3) && window.HasAcross(hole.Right + 3)))
            DrillMarks.OtherHole(sheet, window.X(hole.Right), y, hole.IsDrilled);
        foreach (var point in plane.Points.Where(point => window.HasAcross(point.Right - DrillMarks.Reach)
            && window.HasAcross(point.Right + DrillMarks.Reach)))
        {
            var x = window.X(point.Right);
            DrillMarks.Centre(sheet, x, y);
            DrillMarks.Side(sheet, point.Side, x + point.Side * 14, y - Half + 2, 5);
            sheet.Figure([.. ((int[])[1, -1, 2, -2]).Select(way => SheetBuilder.At(x + 12 * way, y + 6, 3.5,
                $"{point.Name} {Sheet.Length(point.Right / 1000)}", way > 0 ? 0 : 1))]);
        }
    }
}
