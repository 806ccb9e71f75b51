using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Reports.Workbook.Charts;

namespace FrameOpt.Reports.ProductLine;

/// <summary>Colours of the geometries on the fitting chart; a letter stands in every one, so that colour alone tells nothing.</summary>
/// <remarks>Colours: M. Okabe, K. Ito, Color Universal Design, 2008; black text is readable on all.</remarks>
internal static class FittingChartStyle
{
    /// <summary>Where no geometry is allowed.</summary>
    public const string Grey = "D9D9D9";

    private static readonly string[] colours = [
        SeriesStyle.SkyBlue, SeriesStyle.Orange, SeriesStyle.Green, SheetStyle.Yellow, SeriesStyle.Purple, SeriesStyle.Vermillion];

    /// <summary>Of a geometry by its index; grey for -1.</summary>
    public static string Colour(int geometry) => geometry < 0 ? Grey : colours[geometry % colours.Length];

    /// <summary>The class of a drawn cell.</summary>
    public static string Class(int geometry) => geometry < 0 ? "fit-none" : FormattableString.Invariant($"fit-{geometry % colours.Length}");

    /// <summary>The rules of those classes.</summary>
    public static string Rules => string.Concat(Enumerable.Range(-1, colours.Length + 1)
        .Select(geometry => $".{Class(geometry)} {{ fill: #{Colour(geometry)}; }}\n"));
}
