using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Reports.Workbook.LiveRanking;

namespace FrameOpt.Reports.Workbook.Charts;

/// <summary>The sheet Charts, and the figures it draws on a sheet of their own.</summary>
internal static class ChartSheets
{
    public const string SheetName = "Charts";
    public const string DataSheetName = "Chart data";
    private const int RowsPerChart = 24;
    private const int SecondColumn = 12;
    private const int LastColumn = 21;
    private const double ColumnWidth = 8.43;
    private const string Note = "What the sheet Charts draws, block by block from left to right. Change a figure and its chart follows.";

    public static void Add(XLWorkbook book, RunReport report, DeferredParts deferred)
    {
        var compared = ComparedDesign.Of(report);
        var blocks = SideBySide([
            ChartBlocks.Front(report),
            ChartBlocks.Phases(report.Result.Study, compared),
            ChartBlocks.Curve(report.Result),
            ChartBlocks.Band(report.Result),
            ChartBlocks.Marks(report.Result),
        ]);
        var sheet = book.AddWorksheet(SheetName);
        sheet.ShowGridLines = false;
        sheet.Columns(1, LastColumn + 1).Width = ColumnWidth;
        SheetStyle.Title(sheet.Cell(1, 1), "Charts");
        SheetStyle.Text(
            sheet.Cell(2, 1),
                $"Drawn from the sheet {DataSheetName}, as the run found it; they do not follow the weights typed on the sheet {RankingLayout.Sheet}.");
        var charts = FrontCharts.Of(report, blocks[0]).Append(("Residual torque in each phase", Phases(blocks[1], compared)))
            .Append(("Residual torque against propeller speed", RpmChart.Of(report.Result, blocks[2], blocks[3], blocks[4]))).ToList();
        for (var i = 0; i < charts.Count; i++)
            deferred.Charts.Add(new PlacedChart(SheetName, 4 + i / 2 * RowsPerChart, i % 2 == 0 ? 1 : SecondColumn, charts[i].Item1,
                charts[i].Item2));
        var lastRow = 3 + (charts.Count + 1) / 2 * RowsPerChart;
        SheetStyle.Print(sheet, report, pagesWide: 1);
        sheet.PageSetup.FitToPages(1, 1);
        sheet.PageSetup.PrintAreas.Add(1, 1, lastRow, LastColumn + 1);
        deferred.DataSheets.Add(end => DataSheet.Add(end, report, DataSheetName, Note, [.. blocks.SelectMany(block => block.Columns)],
            Rows(blocks), filter: false));
    }

    private static System.Xml.Linq.XElement Phases(ChartBlock block, IReadOnlyList<ComparedDesign> compared)
    {
        SeriesStyle[] styles =
        [
            new(SeriesStyle.Blue), new(SeriesStyle.Orange, Pattern: "wdUpDiag"), new(SeriesStyle.Green, Pattern: "dkHorz"),
                new(SeriesStyle.Purple, Pattern: "wdDnDiag"),
        ];
        return ChartXml.Bars(
            "Residual torque left to the pilot in each phase",
            "phase",
            new ChartAxis("residual torque [N·m], turns right +", "General"),
            [.. compared.Select((design, d) => new ChartSeries(design.Name, block.Column(0), block.Column(1 + d), styles[d]))]);
    }

    private static List<ChartBlock> SideBySide(IReadOnlyList<ChartBlock> blocks)
    {
        var next = 1;
        var placed = new List<ChartBlock>();
        foreach (var block in blocks)
        {
            placed.Add(block with { FirstColumn = next });
            next += block.Columns.Count;
        }

        return placed;
    }

    private static IReadOnlyList<IReadOnlyList<object>> Rows(IReadOnlyList<ChartBlock> blocks) =>
        [.. Enumerable.Range(0, blocks.Max(block => block.Rows.Count))
            .Select(row => (object[])[.. blocks.SelectMany(block => row < block.Rows.Count
            ? block.Rows[row]
            : Enumerable.Repeat((object)double.NaN, block.Columns.Count))])];
}
