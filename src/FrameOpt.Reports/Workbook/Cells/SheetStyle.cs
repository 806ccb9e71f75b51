using ClosedXML.Excel;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>How every sheet of the workbook looks, and the one way text gets into a cell. Colour is never the only sign.</summary>
internal static class SheetStyle
{
    /// <summary>Behind a cell to type in: a tint of sky blue.</summary>
    public const string InputBlue = "DDF0FB";

    /// <summary>Size of running text.</summary>
    public const double TextPoints = 11;

    private const int MaxCellTextLength = 32_000;
    /// <summary>Widths count digits; running text has narrower letters among them.</summary>
    private const double CharactersPerDigit = 1.17;
    private const double LineHeightPoints = 15;
    private const double MaxRowHeightPoints = 400;
    private static readonly XLColor blue = Palette.Colour(Palette.Blue);
    private static readonly XLColor yellow = Palette.Colour(Palette.Yellow);
    private static readonly XLColor inputBlue = Palette.Colour(InputBlue);
    private static readonly XLColor hairline = Palette.Colour("BFBFBF");

    /// <summary>Text stays text: no formula, no date, no character that XML forbids.</summary>
    public static void Text(IXLCell cell, string text)
    {
        var clean = TextSanitizer.Clean(text.Length <= MaxCellTextLength ? text : text[..MaxCellTextLength] + "…");
        cell.SetValue(clean);
        if (TextSanitizer.StartsLikeFormula(clean))
            cell.Style.IncludeQuotePrefix = true;
    }

    public static void Title(IXLCell cell, string text)
    {
        Text(cell, text);
        cell.Style.Font.SetBold().Font.SetFontSize(15).Font.SetFontColor(blue);
    }

    public static void Heading(IXLRange row, string text)
    {
        Text(row.FirstCell(), text);
        row.Style.Font.SetBold().Font.SetFontColor(blue).Border.SetBottomBorder(XLBorderStyleValues.Thin).Border.SetBottomBorderColor(blue);
    }

    public static void Warning(IXLRange row) => row.Style.Font.SetBold().Fill.SetBackgroundColor(yellow);

    /// <summary>A cell to type in: framed and tinted.</summary>
    public static void Input(IXLRange range) => range.Style
        .Font.SetBold()
        .Fill.SetBackgroundColor(inputBlue)
        .Border.SetOutsideBorder(XLBorderStyleValues.Medium).Border.SetOutsideBorderColor(blue)
        .Alignment.SetHorizontal(XLAlignmentHorizontalValues.Right);

    /// <summary>A word or a unit to the right of a figure.</summary>
    public static void UnitText(IXLCell cell, string text)
    {
        Text(cell, text);
        cell.Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Left).Alignment.SetIndent(1);
    }

    /// <summary>A cell of a formula.</summary>
    public static void Output(IXLCell cell, string formatCode)
    {
        cell.Style.NumberFormat.Format = formatCode;
        cell.Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Right);
    }

    public static void TableHeader(IXLRange row) => row.Style
        .Font.SetBold().Font.SetFontColor(XLColor.White)
        .Fill.SetBackgroundColor(blue)
        .Alignment.SetWrapText().Alignment.SetVertical(XLAlignmentVerticalValues.Center);

    public static void TableRow(IXLRange row) => row.Style
        .Border.SetBottomBorder(XLBorderStyleValues.Hair).Border.SetBottomBorderColor(hairline)
        .Alignment.SetWrapText().Alignment.SetVertical(XLAlignmentVerticalValues.Top);

    /// <summary>A paragraph over a merged row, as tall as it needs.</summary>
    public static void Paragraph(IXLRange row, string text, double widthCharacters)
    {
        row.Merge();
        Text(row.FirstCell(), text);
        row.Style.Alignment.SetWrapText().Alignment.SetVertical(XLAlignmentVerticalValues.Top);
        row.Worksheet.Row(row.FirstCell().Address.RowNumber).Height = HeightPoints((text, widthCharacters));
    }

    /// <summary>How tall a row must be for its wrapped texts, each in its own width.</summary>
    public static double HeightPoints(params ReadOnlySpan<(string Text, double WidthCharacters)> cells)
    {
        var most = 1.0;
        foreach (var (text, width) in cells)
            most = Math.Max(most, text.Split('\n').Sum(line => Math.Ceiling(
                Math.Max(1, line.Sum(c => c < '\u1100' ? 1.0 : 1.9)) / (width * CharactersPerDigit))));
        return Math.Min(MaxRowHeightPoints, LineHeightPoints * most + 1);
    }
}

/// <summary>Colours that the colour-blind can tell apart.</summary>
/// <remarks>Source: M. Okabe, K. Ito, Color Universal Design, 2008.</remarks>
internal static class Palette
{
    public const string Blue = "0072B2";
    public const string SkyBlue = "56B4E9";
    public const string Orange = "E69F00";
    public const string Vermillion = "D55E00";
    public const string Green = "009E73";
    public const string Purple = "CC79A7";
    public const string Yellow = "F0E442";
    public const string Black = "000000";

    /// <summary>An opaque colour of a sheet. Parsed here: in a browser the library's own parser makes it transparent.</summary>
    /// <param name="hex">Red, green and blue as six hexadecimal digits.</param>
    public static XLColor Colour(string hex) => XLColor.FromArgb(
        0xFF, Convert.ToInt32(hex[..2], 16), Convert.ToInt32(hex[2..4], 16), Convert.ToInt32(hex[4..], 16));
}
