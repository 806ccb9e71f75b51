namespace FrameOpt.Reports.Drafting.Template;

/// <summary>The template in true size: what to do, the sheets seen from behind, strips for a narrow bar, and the sheets for the other
/// side of the bar.</summary>
internal static class TemplateSheets
{
    /// <summary>Kept free around the outermost holes, mm.</summary>
    private const double Around = 28;

    private const double WindowLeft = Paper.AreaWidth - TemplateTiles.WindowWidth;
    private const double WindowBottom = 40;

    /// <summary>Every page.</summary>
    public static IReadOnlyList<Sheet> Of(DrawnDesign design, Paper paper)
    {
        var plane = TemplatePlane.Of(design);
        var tiles = TemplateTiles.Over(plane.HalfWidth + Around, plane.HalfHeight + Around - 4);
        var strips = TemplateStrips.Count(tiles);
        var last = 1 + 2 * tiles.Windows.Count + strips;
        return
        [
            TemplateCover.Of(design, paper, plane, tiles, last),
            .. tiles.Windows.Select((_, i) => Tile(design, paper, plane, tiles, i, new PageNumber(2 + i, last))),
            .. Enumerable.Range(0, strips).Select(i => TemplateStrips.Of(
                design, paper, plane, tiles, i, new PageNumber(2 + tiles.Windows.Count + i, last))),
            .. tiles.Windows.Select((_, i) => Tile(
                design, paper, plane.Mirrored, tiles, i, new PageNumber(2 + tiles.Windows.Count + strips + i, last))),
        ];
    }

    private static Sheet Tile(DrawnDesign design, Paper paper, TemplatePlane plane, TemplateTiles tiles, int index, PageNumber page)
    {
        var sheet = TemplateFrame.Begin(design, paper, plane, page);
        var (left, bottom) = (paper.Left + WindowLeft, paper.Bottom + WindowBottom);
        var window = new TemplateWindow(tiles.Windows[index].Left, tiles.Windows[index].Bottom, left, bottom);
        DrillMarks.ScaleBar(sheet, paper.Left + 8, bottom + 2, isUpright: true);
        DrillMarks.ScaleBar(sheet, left + 70, paper.Bottom + 28, isUpright: false);
        TemplateFrame.Sides(sheet, plane, left, paper.Left + Paper.AreaWidth, paper.Bottom + 24);
        TemplateFrame.Foot(sheet, paper);
        sheet.Frame(Pen.Fine, left, bottom, left + TemplateTiles.WindowWidth, bottom + TemplateTiles.WindowHeight);
        sheet.Bounds = new SheetBounds(
            left + 1, bottom + 1, left + TemplateTiles.WindowWidth - 1, bottom + TemplateTiles.WindowHeight - 1);
        Lines(sheet, plane, window);
        Joints(sheet, tiles, window, index, plane.IsMirrored ? "front " : "");
        foreach (var (right, up, isDrilled) in plane.OtherHoles.Where(hole => window.Holds(hole.Right, hole.Up, 3)))
        {
            DrillMarks.OtherHole(sheet, window.X(right), window.Y(up), isDrilled);
            sheet.Label(window.X(right), window.Y(up), 4, 1.8, Sheet.Length(right / 1000));
        }

        foreach (var point in plane.Points.Where(point => window.Holds(point.Right, point.Up, DrillMarks.Reach)))
        {
            var (x, y) = (window.X(point.Right), window.Y(point.Up));
            DrillMarks.Centre(sheet, x, y);
            DrillMarks.Side(sheet, point.Side, x, y + 12, 8);
            foreach (var (below, letters, words) in ((double, double, string)[])[(21, 7, point.Name), (27, 2.5, point.Distance),
                (32, 2.5, point.Task)])
                sheet.Figure(((double[])[0.5, 0, 1]).Select(anchor => SheetBuilder.At(x, y - below, letters, words, anchor)).ToArray());
        }

        return sheet.Build();
    }

    /// <summary>The plane of symmetry, and the line through each hang point, as far as the window shows them.</summary>
    private static void Lines(SheetBuilder sheet, TemplatePlane plane, TemplateWindow window)
    {
        if (window.HasAcross(0))
        {
            sheet.Line(Pen.Centre, window.X(0), window.PaperBottom, window.X(0), window.PaperBottom + TemplateTiles.WindowHeight);
            sheet.Figure(SheetBuilder.At(window.X(0) - 1.5, window.PaperBottom + 16, 2.5, "PLANE OF SYMMETRY", 0, isUpright: true),
                SheetBuilder.At(window.X(0) + 4.5, window.PaperBottom + 16, 2.5, "PLANE OF SYMMETRY", 0, isUpright: true));
        }

        foreach (var level in plane.Points.GroupBy(point => point.Up).Where(level => window.HasUp(level.Key)))
        {
            var (up, name) = (level.Key, level.Count() == 1 ? $"hang line of {level.First().Name}" : "hang line");
            var (from, to) = (window.PaperLeft, window.PaperLeft + TemplateTiles.WindowWidth);
            sheet.Line(Pen.Centre, from, window.Y(up), to, window.Y(up));
            sheet.Figure(SheetBuilder.At(from + 26, window.Y(up) + 1.5, 2.5, name, 0),
                SheetBuilder.At(to - 26, window.Y(up) + 1.5, 2.5, name, 1));
        }
    }

    /// <summary>Where to cut and what to lay on what: a dashed line in the middle of each overlap with two marks on it.</summary>
    private static void Joints(SheetBuilder sheet, TemplateTiles tiles, TemplateWindow window, int index, string set)
    {
        var (column, row) = (index % tiles.Columns.Count, index / tiles.Columns.Count);
        var (width, height, half) = (TemplateTiles.WindowWidth, TemplateTiles.WindowHeight, TemplateTiles.Overlap / 2);
        foreach (var side in (int[])[0, 1])
        {
            if (column - 1 + side >= 0 && column + side < tiles.Columns.Count)
            {
                var x = window.PaperLeft + (side == 0 ? half : width - half);
                sheet.Line(Pen.Dashed, x, window.PaperBottom, x, window.PaperBottom + height);
                foreach (var end in (int[])[0, 1])
                {
                    DrillMarks.Registration(sheet, x, window.PaperBottom + (end == 0 ? 6 : height - 6),
                        $"{set}{(char)('A' + column + side - 1)}{row + 1}{(end == 0 ? " low" : " top")}");
                }
            }

            if (row - 1 + side >= 0 && row + side < tiles.Rows.Count)
            {
                var y = window.PaperBottom + (side == 1 ? half : height - half);
                sheet.Line(Pen.Dashed, window.PaperLeft, y, window.PaperLeft + width, y);
                foreach (var end in (int[])[0, 1])
                {
                    DrillMarks.Registration(sheet, window.PaperLeft + (end == 0 ? 40 : width - 40), y,
                        $"{set}{row + side}{(char)('A' + column)}{(end == 0 ? " first" : " second")}");
                }
            }
        }
    }
}

/// <summary>The number of a page among all.</summary>
/// <param name="Page">From 1.</param>
/// <param name="Last">Of the file.</param>
internal readonly record struct PageNumber(int Page, int Last)
{
    /// <inheritdoc/>
    public override string ToString() => $"sheet {Page} of {Last}";
}

/// <summary>A window on the plane, and where it stands on its sheet; everything in mm and in true size.</summary>
/// <param name="Left">On the plane.</param>
/// <param name="Bottom">On the plane.</param>
/// <param name="PaperLeft">On the sheet.</param>
/// <param name="PaperBottom">On the sheet.</param>
internal readonly record struct TemplateWindow(double Left, double Bottom, double PaperLeft, double PaperBottom)
{
    /// <summary>A place across the plane, on the sheet.</summary>
    public double X(double right) => PaperLeft + right - Left;

    /// <summary>A height on the plane, on the sheet.</summary>
    public double Y(double up) => PaperBottom + up - Bottom;

    /// <summary>True when the window has that place across.</summary>
    public bool HasAcross(double right) => right >= Left && right <= Left + TemplateTiles.WindowWidth;

    /// <summary>True when the window has that height.</summary>
    public bool HasUp(double up) => up >= Bottom && up <= Bottom + TemplateTiles.WindowHeight;

    /// <summary>True when it has all of a mark.</summary>
    public bool Holds(double right, double up, double reach) =>
        HasAcross(right - reach) && HasAcross(right + reach) && HasUp(up - reach) && HasUp(up + reach);
}
