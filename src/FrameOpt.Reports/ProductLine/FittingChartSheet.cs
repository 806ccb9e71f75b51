using ClosedXML.Excel;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The fitting chart as a sheet to print and hang up.</summary>
internal static class FittingChartSheet
{
    private const double FirstWidth = 17;
    private const double ColumnWidth = 25;
    private const int MinColumns = 5;
    private const int RowPoints = 40;

    public static void Add(Spreadsheet book, ProductLineResult result)
    {
        var chart = result.Chart;
        var columns = chart.Blocks.SelectMany(block => block.Columns, (block, column) => (block, column)).ToList();
        var sheet = book.AddSheet("Fitting chart");
        sheet.ShowGridLines = false;
        var across = Math.Max(columns.Count + 1, MinColumns);
        var width = FirstWidth + (across - 1) * ColumnWidth;
        sheet.Column(1).Width = FirstWidth;
        sheet.Columns(2, across).Width = ColumnWidth;
        SheetStyle.Paragraph(sheet.Range(1, 1, 1, across), result.Study.FullTitle, width / 1.6);
        SheetStyle.Title(sheet.Cell(1, 1), result.Study.FullTitle);
        sheet.Row(1).Height *= 1.5;
        SheetStyle.Paragraph(sheet.Range(2, 1, 2, across), FittingChartText.HowToRead, width);
        var row = Header(sheet, chart, columns, 4);
        foreach (var (from, to) in chart.Bands)
            Band(sheet, result, columns, row++, from, to);
        row++;
        foreach (var line in FittingChartText.Notes(result))
            SheetStyle.Paragraph(sheet.Range(row, 1, row++, across), line, width);
        book.Print(sheet);
        sheet.PageSetup.FitToPages(1, 1);
        sheet.PageSetup.PageOrientation = columns.Count > 6 ? XLPageOrientation.Landscape : XLPageOrientation.Portrait;
    }

    private static int Header(IXLWorksheet sheet, FittingChart chart, IReadOnlyList<(FittingBlock Block, FittingColumn Column)> columns,
        int row)
    {
        var last = columns.Count + 1;
        if (chart.Blocks.Any(block => block.Title.Length > 0))
        {
            for (var c = 0; c < columns.Count; c++)
                SheetStyle.Text(sheet.Cell(row, c + 2), c > 0 && columns[c - 1].Block == columns[c].Block ? "" : columns[c].Block.Title);
            SheetStyle.TableHeader(sheet.Range(row, 1, row, last));
            row++;
        }

        SheetStyle.Text(sheet.Cell(row, 1), "pilot's own mass");
        for (var c = 0; c < columns.Count; c++)
            SheetStyle.Text(sheet.Cell(row, c + 2), $"{columns[c].Column.Name}\n{StudyText.RotationText(columns[c].Column.Rotation)}");
        SheetStyle.TableHeader(sheet.Range(row, 1, row, last));
        sheet.Row(row).Height = RowPoints;
        return row + 1;
    }

    private static void Band(IXLWorksheet sheet, ProductLineResult result,
        IReadOnlyList<(FittingBlock Block, FittingColumn Column)> columns, int row, int from, int to)
    {
        SheetStyle.Text(sheet.Cell(row, 1), FittingChartText.Band(from, to));
        for (var c = 0; c < columns.Count; c++)
        {
            var spans = FittingSpan.Between(columns[c].Column.Spans, from, to);
            var cell = sheet.Cell(row, c + 2);
            SheetStyle.Text(cell, string.Join("\n", spans.Select(span => FittingChartText.Cell(result, span, spans.Count > 1))));
            if (spans.Count == 1)
                cell.Style.Fill.SetBackgroundColor(XLColor.FromHtml("#" + FittingChartColours.Colour(spans[0].Geometry)));
            cell.Style.Font.SetFontSize(spans is [{ Geometry: >= 0 }] ? 13 : SheetStyle.TextPoints);
        }

        var range = sheet.Range(row, 1, row, columns.Count + 1);
        range.Style.Font.SetBold()
            .Alignment.SetWrapText().Alignment.SetVertical(XLAlignmentVerticalValues.Center)
            .Alignment.SetHorizontal(XLAlignmentHorizontalValues.Center)
            .Border.SetOutsideBorder(XLBorderStyleValues.Thin).Border.SetInsideBorder(XLBorderStyleValues.Thin);
        sheet.Row(row).Height = RowPoints * Math.Max(
            1, columns.Max(column => FittingSpan.Between(column.Column.Spans, from, to).Count) / 2.0);
    }
}
