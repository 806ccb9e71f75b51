namespace FrameOpt.Reports.Drafting;

/// <summary>Linear dimensions: extension lines, arrows, and the figure above the line, read from below or from the right.</summary>
/// <remarks>Source: ISO 129-1, from memory: extension lines end 2 mm beyond the dimension line, arrows stand outside where there is no
/// room within.</remarks>
internal static class SheetDimension
{
    private const double Beyond = 2;
    private const double ArrowLength = 3;

    /// <summary>Between two heights, or two places across; the figure stands outside where it is longer than the line.</summary>
    /// <param name="sheet">Drawn on.</param>
    /// <param name="from">One end: across, and where its extension line begins.</param>
    /// <param name="to">The other end.</param>
    /// <param name="line">Height of the dimension line.</param>
    /// <param name="letters">Height of a capital, mm.</param>
    /// <param name="figure">With its unit.</param>
    public static void Across(
        SheetBuilder sheet, (double X, double Y) from, (double X, double Y) to, double line, double letters, string figure)
    {
        if (from.X > to.X)
            (from, to) = (to, from);
        var outside = Arrows(from.X, to.X, (at, angle) => sheet.Arrow(at, line, angle));
        sheet.Line(Pen.Fine, from.X - outside, line, to.X + outside, line);
        foreach (var (x, y) in ((double X, double Y)[])[from, to])
            sheet.Line(Pen.Fine, x, y, x, line + Math.CopySign(Beyond, line - y));
        sheet.Figure(
        [
            .. SheetFont.Width(figure, letters) <= to.X - from.X - 1
                ? [SheetBuilder.At((from.X + to.X) / 2, line + 0.8, letters, figure, 0.5)] : Array.Empty<Mark.Text>(),
            SheetBuilder.At(to.X + outside + 1, line - letters / 2, letters, figure, 0),
            SheetBuilder.At(from.X - outside - 1, line - letters / 2, letters, figure, 1),
        ]);
    }

    /// <summary>The same from below to above, with the dimension line upright at a place across.</summary>
    public static void Upright(
        SheetBuilder sheet, (double X, double Y) from, (double X, double Y) to, double line, double letters, string figure)
    {
        if (from.Y > to.Y)
            (from, to) = (to, from);
        var outside = Arrows(from.Y, to.Y, (at, angle) => sheet.Arrow(line, at, angle + Math.PI / 2));
        sheet.Line(Pen.Fine, line, from.Y - outside, line, to.Y + outside);
        foreach (var (x, y) in ((double X, double Y)[])[from, to])
            sheet.Line(Pen.Fine, x, y, line + Math.CopySign(Beyond, line - x), y);
        sheet.Figure(
        [
            .. SheetFont.Width(figure, letters) <= to.Y - from.Y - 1
                ? [SheetBuilder.At(line - 0.8, (from.Y + to.Y) / 2, letters, figure, 0.5, isUpright: true)] : Array.Empty<Mark.Text>(),
            SheetBuilder.At(line - 0.8, to.Y + outside + 1, letters, figure, 0, isUpright: true),
            SheetBuilder.At(line - 0.8, from.Y - outside - 1, letters, figure, 1, isUpright: true),
        ]);
    }

    /// <summary>Arrowheads at both ends; gives how far the line goes beyond them.</summary>
    private static double Arrows(double from, double to, Action<double, double> arrow)
    {
        var isWide = to - from >= 3 * ArrowLength;
        arrow(from, isWide ? Math.PI : 0);
        arrow(to, isWide ? 0 : Math.PI);
        return isWide ? 0 : 2 * ArrowLength;
    }
}
