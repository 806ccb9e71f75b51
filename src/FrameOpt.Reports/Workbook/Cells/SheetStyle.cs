using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>How every sheet of the workbook looks, and the one way text gets into a cell.</summary>
/// <remarks>Colours: M. Okabe, K. Ito, Color Universal Design, 2008 (blue #0072B2, yellow #F0E442); never colour alone.</remarks>
internal static class SheetStyle
{
    /// <summary>Titles, headings and table headers.</summary>
    public const string Blue = "0072B2";

    /// <summary>Behind a warning.</summary>
    public const string Yellow = "F0E442";

    /// <summary>Behind a cell to type in: a tint of sky blue #56B4E9.</summary>
    public const string InputBlue = "DDF0FB";

    /// <summary>Size of running text.</summary>
    public const double TextPoints = 11;

    private const int MaxCellTextLength = 32_000;
    private const int MaxHeaderTextLength = 80;
    /// <summary>Widths count digits; running text has narrower letters among them.</summary>
    private const double CharactersPerDigit = 1.17;
    private const double LineHeightPoints = 15;
    private const double MaxRowHeightPoints = 400;
    private static readonly XLColor blue = XLColor.FromHtml("#" + Blue);
    private static readonly XLColor yellow = XLColor.FromHtml("#" + Yellow);
    private static readonly XLColor inputBlue = XLColor.FromHtml("#" + InputBlue);
    private static readonly XLColor hairline = XLColor.FromHtml("#BFBFBF");

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

    /// <summary>A cell whose formula follows with its value.</summary>
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

    /// <summary>A4 landscape, as many pages wide as said, numbered, named by study.</summary>
    public static void Print(IXLWorksheet sheet, IReportSource report, int pagesWide)
    {
        var page = sheet.PageSetup;
        page.PaperSize = XLPaperSize.A4Paper;
        page.PageOrientation = XLPageOrientation.Landscape;
        page.FitToPages(pagesWide, 0);
        page.Margins.SetLeft(0.5).SetRight(0.5).SetTop(0.7).SetBottom(0.7).SetHeader(0.3).SetFooter(0.3);
        page.Header.Left.AddText(InHeader(report.Study.FullTitle));
        page.Header.Right.AddText(XLHFPredefinedText.SheetName);
        page.Footer.Left.AddText(InHeader($"FrameOpt {report.Info.ToolVersion}, {report.Info.StudyFileName}, {report.Study.Hash[..8]}"));
        page.Footer.Right.AddText("page ");
        page.Footer.Right.AddText(XLHFPredefinedText.PageNumber);
        page.Footer.Right.AddText(" of ");
        page.Footer.Right.AddText(XLHFPredefinedText.NumberOfPages);
    }

    /// <summary>In a page header an ampersand is a code unless doubled, and all of it must stay under 255 characters.</summary>
    private static string InHeader(string text)
    {
        var line = TextSanitizer.Clean(text).ReplaceLineEndings(" ");
        return TextSanitizer.Clean(line.Length <= MaxHeaderTextLength ? line : line[..MaxHeaderTextLength] + "…").Replace("&", "&&");
    }
}
