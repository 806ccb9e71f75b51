using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.LiveRanking;

/// <summary>The live ranking: weights, limits, baseline and wing to choose, and the designs in the order that follows.</summary>
internal static class RankingSheet
{
    private const int NameColumns = 4;
    private const int MaxFrozenRows = 18;

    /// <summary>The best ranked are printed, the others are there to scroll.</summary>
    private const int PrintedDesigns = 20;

    private const double NarrowWidth = 8;
    private const double ColumnWidth = 13;

    /// <summary>Adds the sheet, and at the end of the workbook the figures behind it.</summary>
    public static void Add(Spreadsheet book, RunReport report)
    {
        var ranked = new RankedDesigns(report);
        var layout = new RankingLayout(ranked);
        var sheet = book.AddSheet(RankingLayout.Sheet);
        var table = RankingTable.Of(ranked, layout);
        var width = Math.Max(table.Columns.Count, RankingLayout.DivisorColumn);
        for (var c = 1; c <= width; c++)
            sheet.Column(c).Width = c <= NameColumns ? NarrowWidth : ColumnWidth;
        for (var c = 1; c < table.Columns.Count; c++)
            sheet.Column(c + 1).Style.NumberFormat.Format = table.Columns[c].FormatCode;
        Notes(sheet, report, ranked);
        Switches(book, sheet, ranked, layout);
        RankingCriteria.Add(book, sheet, ranked, layout);
        RankingTable.Add(book, sheet, table, layout);
        sheet.SheetView.Freeze(layout.TableHeaderRow <= MaxFrozenRows ? layout.TableHeaderRow : 0, NameColumns);
        sheet.PageSetup.SetRowsToRepeatAtTop(layout.TableHeaderRow, layout.TableHeaderRow);
        book.Print(sheet, pagesTall: 1);
        sheet.PageSetup.PrintAreas.Add(1, 1, layout.TableHeaderRow + Math.Min(PrintedDesigns, ranked.Designs.Count), width);
        book.AddLast(() => RankingDataSheet.Add(book, ranked, layout));
    }

    private static void Notes(IXLWorksheet sheet, RunReport report, RankedDesigns ranked)
    {
        const int across = 16;
        const double characters = NameColumns * NarrowWidth + (across - NameColumns) * ColumnWidth;
        var held = report.Result.Front.Count > ranked.Designs.Count
            ? $"the best {NumberFormat.Count(ranked.Designs.Count)} of the {NumberFormat.Count(report.Result.Front.Count)} "
                + "designs on the front"
            : $"all {NumberFormat.Count(ranked.Designs.Count, "design")} on the front";
        SheetStyle.Paragraph(
            sheet.Range(1, 1, 1, across),
            $"Live ranking of {held}. Change a framed blue cell (wing, baseline, weights, limits) and score, rank and order are "
                + $"recalculated. A design that violates a limit you enter gets no rank. Equal scores share a rank.",
            characters);
        SheetStyle.Paragraph(
            sheet.Range(2, 1, 2, across),
            $"Score: {(ranked.IsTopsis ? "TOPSIS closeness, higher is better" : "distance to the ideal, lower is better")} "
                + $"(docs/ranking.md). "
                + "With the wing of the study, best and worst are those of the whole front, so the ranks are those of the run; with low or "
                + "high yaw leverage, or soft or stiff riser coupling, they are those of the designs listed here, which are not the best "
                + "designs for that wing: it has another front.",
            characters);
    }

    private static void Switches(Spreadsheet book, IXLWorksheet sheet, RankedDesigns ranked, RankingLayout layout)
    {
        var labels = RankedDesigns.WingLabels;
        Label(sheet, RankingLayout.WingRow, "Wing: leverage, coupling");
        var wing = sheet.Range(RankingLayout.WingRow, RankingLayout.InputColumn, RankingLayout.WingRow,
            RankingLayout.InputColumn + 1);
        wing.Merge();
        SheetStyle.Text(wing.FirstCell(), labels[RankedDesigns.AsInStudy]);
        SheetStyle.Input(wing);
        wing.FirstCell().DataValidation.List($"\"{string.Join(',', labels)}\"");
        SheetStyle.UnitText(sheet.Cell(RankingLayout.WingRow, RankingLayout.AtLeastColumn), "setting no.");
        var choice = CellAddress.Absolute(RankingLayout.WingRow, RankingLayout.InputColumn);
        var list = string.Join(',', labels.Select(label => $"\"{label}\""));
        book.AddFormula(sheet.Cell(RankingLayout.WingRow, RankingLayout.WingNumberColumn),
            new Formula($"MATCH({choice},{{{list}}},0)", RankedDesigns.AsInStudy + 1.0), "0");

        Label(sheet, RankingLayout.BaselineRow, "Baseline: number of a design");
        var baseline = sheet.Range(RankingLayout.BaselineRow, RankingLayout.InputColumn, RankingLayout.BaselineRow,
            RankingLayout.InputColumn + 1);
        baseline.Merge();
        if (ranked.Baseline.Count == 0)
            baseline.FirstCell().SetValue(ranked.Designs[0].Number);
        SheetStyle.Input(baseline);
        SheetStyle.UnitText(
            sheet.Cell(RankingLayout.BaselineRow, RankingLayout.AtLeastColumn),
            ranked.Baseline.Count == 0 ? "a design number from the table below" : "a design number from the table below; empty: the "
                + "study's baseline");
        var ranks = layout.Data(layout.RankColumn);
        var all = NumberFormat.Count(ranked.Designs.Count);
        book.AddFormula(sheet.Cell(RankingLayout.MessageRow, 1), new Formula(
            $"IF(SUM({layout.Weights})<=0,\"Give at least one weight above 0: no design has a rank.\","
                + $"COUNT({ranks})&\" of {all} designs meet the limits; the others have no rank.\")",
            $"{ranked.Designs.Count} of {all} designs meet the limits; the others have no rank."));
        sheet.Cell(RankingLayout.MessageRow, 1).Style.Font.SetBold();
        sheet.Workbook.NamedRanges.Add("ranking_wing", wing.FirstCell().AsRange());
        sheet.Workbook.NamedRanges.Add("ranking_baseline_number", baseline.FirstCell().AsRange());
    }

    private static void Label(IXLWorksheet sheet, int row, string text)
    {
        var range = sheet.Range(row, 1, row, NameColumns);
        range.Merge();
        SheetStyle.Text(range.FirstCell(), text);
        range.Style.Font.SetBold();
    }
}
