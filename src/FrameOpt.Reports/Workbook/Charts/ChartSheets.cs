using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Reports.Workbook.LiveRanking;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.Charts;

/// <summary>The sheet Charts, and the figures it draws on a sheet of their own.</summary>
internal static class ChartSheets
{
    public const string SheetName = "Charts";
    public const string DataSheetName = "Chart data";
    private const int RowsPerChart = 24;
    private const int SecondColumn = 12;
    private const int LastColumn = 21;
    private const int MaxNameLength = 40;
    private const double ColumnWidth = 8.43;
    private const string Note = "Data of the sheet Charts, block by block from left to right. Change a value and its chart is updated.";

    public static void Add(Spreadsheet book, RunReport report)
    {
        var (result, compared) = (report.Result, ComparedDesign.Of(report));
        var isOneFrame = result.Study.IsOneFrame;
        Table[] tables =
        [
            .. isOneFrame ? Array.Empty<Table>() : [FrontCharts.Table(report)],
            Phases(result, compared),
            RpmChart.Curve(result),
            RpmChart.Band(result),
            RpmChart.Marks(result),
        ];
        var placed = SideBySide(tables);
        var sheet = book.AddSheet(SheetName);
        sheet.ShowGridLines = false;
        sheet.Columns(1, LastColumn + 1).Width = ColumnWidth;
        SheetStyle.Title(sheet.Cell(1, 1), "Charts");
        SheetStyle.Text(
            sheet.Cell(2, 1),
            $"Drawn from the sheet {DataSheetName}, with the results of the run"
                + (isOneFrame ? "." : $"; they do not change with the weights entered on the sheet {RankingLayout.Sheet}."));
        (string Name, XElement Xml)[] charts =
        [
            .. isOneFrame ? Array.Empty<(string, XElement)>() : FrontCharts.Of(report, placed[0]),
            ("Residual torque in each phase", Phases(placed[^4], compared, result.Uncertainty is { Bars.Count: > 0 })),
            ("Residual torque against propeller speed", RpmChart.Of(result, placed[^3], placed[^2], placed[^1])),
        ];
        foreach (var (i, (name, xml)) in charts.Index())
            book.AddChart(new PlacedChart(SheetName, 4 + i / 2 * RowsPerChart, i % 2 == 0 ? 1 : SecondColumn, name, xml));
        book.Print(sheet, pagesTall: 1);
        sheet.PageSetup.PrintAreas.Add(1, 1, 3 + (charts.Length + 1) / 2 * RowsPerChart, LastColumn + 1);
        book.AddLast(() => DataSheet.Add(book, DataSheetName, Note, Table.SideBySide(tables), filter: false));
    }

    /// <summary>The residual of each phase for designs to compare, and from the first one to the ends between which 8 of 10 cases
    /// lie.</summary>
    private static Table Phases(StudyResult result, IReadOnlyList<ComparedDesign> designs)
    {
        var mission = result.Study.Mission;
        double Residual(ComparedDesign design, int row) => design.Evaluation.Phases[row][PhaseQuantity.Residual];
        return new Table(
            [
                Column.OfTexts("phase", row => TextTruncation.Truncate(mission[row].Name, MaxNameLength)) with { WidthCharacters = 18 },
                .. designs.Select(design => Column.OfNumbers($"residual, {design.Name} [N·m], right +", "0.00",
                    row => Residual(design, row))),
                .. result.Uncertainty is not { Bars.Count: > 0, Sample.Phases: var spread } ? [] : new[]
                {
                    Column.OfNumbers("from there to the 90 % point [N·m]", "0.00",
                        row => Math.Max(0, spread[row].Residual.NineTenths - Residual(designs[0], row))),
                    Column.OfNumbers("from there to the 10 % point [N·m]", "0.00",
                        row => Math.Max(0, Residual(designs[0], row) - spread[row].Residual.Tenth)),
                },
            ],
            mission.Count);
    }

    private static XElement Phases(PlacedTable table, IReadOnlyList<ComparedDesign> compared, bool hasBand)
    {
        var (beyond, back) = (1 + compared.Count, 2 + compared.Count);
        SeriesStyle[] styles =
        [
            new(Palette.Blue), new(Palette.Orange, Pattern: "wdUpDiag"), new(Palette.Green, Pattern: "dkHorz"),
            new(Palette.Purple, Pattern: "wdDnDiag"),
        ];
        return ChartXml.Bars(
            $"Residual torque left to the pilot in each phase{(hasBand ? "; 8 of 10 cases lie within the thin line" : "")}",
            "phase",
            new ChartAxis("residual torque [N·m], turns right +", "General"),
            [.. compared.Select((design, d) => new ChartSeries(design.Name, table.Column(0), table.Column(1 + d), styles[d])
            {
                Band = d == 0 && hasBand ? (table.Column(beyond), table.Column(back)) : null,
            })]);
    }

    private static List<PlacedTable> SideBySide(IReadOnlyList<Table> tables)
    {
        var placed = new List<PlacedTable>();
        var next = 1;
        foreach (var table in tables)
        {
            placed.Add(new(table, DataSheetName, DataSheet.HeaderRow + 1, next));
            next += table.Columns.Count;
        }

        return placed;
    }
}
