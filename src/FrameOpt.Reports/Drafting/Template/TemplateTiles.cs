namespace FrameOpt.Reports.Drafting.Template;

/// <summary>How a plane in true size is cut into windows, one a sheet, that overlap so that they can be joined.</summary>
/// <param name="Columns">Left edge of each column of windows, mm from the plane of symmetry.</param>
/// <param name="Rows">Lower edge of each row, mm from the middle of the hang line.</param>
internal sealed record TemplateTiles(IReadOnlyList<double> Columns, IReadOnlyList<double> Rows)
{
    /// <summary>Width of a window, mm: it fits A4 and Letter with their margins.</summary>
    public const double WindowWidth = 240;

    /// <summary>Height of a window, mm: room for a scale bar of 100 mm beside it.</summary>
    public const double WindowHeight = 104;

    /// <summary>What two neighbours share, mm; a mark to drill by is smaller, so that one of them has all of it.</summary>
    public const double Overlap = 20;

    /// <summary>The windows, row by row from above, each from left to right.</summary>
    public IReadOnlyList<(double Left, double Bottom)> Windows =>
        [.. Rows.Reverse().SelectMany(bottom => Columns.Select(left => (left, bottom)))];

    /// <summary>Windows over a rectangle, in equal steps, the same on both sides of the plane of symmetry. The number of columns is odd, so
    /// that the plane of symmetry is in the middle of a sheet and not where two are joined.</summary>
    /// <param name="half">To either side of the plane of symmetry, mm.</param>
    /// <param name="high">Above and below the middle of the hang line, mm.</param>
    public static TemplateTiles Over(double half, double high) => new(
        Starts(Count(half, WindowWidth) | 1, WindowWidth), Starts(Count(high, WindowHeight), WindowHeight));

    private static int Count(double half, double size) => Math.Max(1, (int)Math.Ceiling((2 * half - Overlap) / (size - Overlap)));

    private static IReadOnlyList<double> Starts(int count, double size)
    {
        var first = -(count * (size - Overlap) + Overlap) / 2;
        return [.. Enumerable.Range(0, count).Select(i => first + i * (size - Overlap))];
    }
}
