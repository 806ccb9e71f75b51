using ClosedXML.Excel;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.LiveRanking;

/// <summary>The designs of the sheet Ranking in the order that its inputs give.</summary>
internal static class RankingTable
{
    /// <summary>A column of the table: header, format, and either a column of the sheet Ranking data or a formula of the row.</summary>
    public static IReadOnlyList<RankingTableColumn> Columns(RankedDesigns ranked, RankingLayout layout)
    {
        var study = LeverageSettings.AsInStudy;
        List<RankingTableColumn> columns =
        [
            new("rank", "0", layout.RankColumn, i => (double)ranked.Ranks[i]),
            new("row of Ranking data", "0", 0, i => (double)(i + 1)),
            new("number", "0", 1, i => (double)ranked.Designs[i].Number),
            .. GeometryFields.Of(ranked.Study).Select((field, f) => new RankingTableColumn(
                field.Header, GeometryField.FormatCode, 3 + f, i => field.Value(ranked.Designs[i].Geometry))),
            new(ranked.IsTopsis ? "closeness" : "distance to the ideal", "0.0000", layout.ScoreColumn, i => ranked.Scores[i]),
            .. ranked.Criteria.Select((criterion, c) => new RankingTableColumn(
                criterion.Header, criterion.FormatCode, layout.SelectedColumn(c), i =>
                    Cached(criterion.ValueOf(ranked.Evaluations[study][i])))),
        ];
        for (var o = 0; o < layout.Objectives; o++)
            columns.Add(Change(ranked, layout, o));
        return columns;
    }

    /// <summary>Adds the header; the rows are given back.</summary>
    public static DataRows Add(IXLWorksheet sheet, IReadOnlyList<RankingTableColumn> columns, RankedDesigns ranked, RankingLayout layout)
    {
        var row = layout.TableHeaderRow;
        SheetStyle.Text(sheet.Cell(row, 1), "place");
        for (var c = 0; c < columns.Count; c++)
            SheetStyle.Text(sheet.Cell(row, c + 2), DataColumn.OfNumbers(columns[c].Header, "").Header);
        var header = sheet.Range(row, 1, row, columns.Count + 1);
        SheetStyle.TableHeader(header);
        header.Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Center);
        sheet.Row(row).Height = 64;
        sheet.Range(row, 1, row + ranked.Designs.Count, columns.Count + 1).SetAutoFilter();
        var byPlace = Enumerable.Range(0, ranked.Designs.Count).OrderBy(i => ranked.Positions[i]).ToList();
        return new DataRows(RankingLayout.Sheet, row + 1, [.. byPlace.Select((design, place) => Row(columns, layout, design, place))]);
    }

    private static RankingTableColumn Change(RankedDesigns ranked, RankingLayout layout, int objective)
    {
        var criterion = ranked.Criteria[objective];
        var baseline = ranked.Baseline.Count == 0 ? ranked.Evaluations[LeverageSettings.AsInStudy][0]
            : ranked.Baseline[LeverageSettings.AsInStudy];
        return new RankingTableColumn($"change from baseline: {criterion.Header}", criterion.FormatCode, layout.SelectedColumn(objective),
            i =>
        {
            var change = criterion.ValueOf(ranked.Evaluations[LeverageSettings.AsInStudy][i]) - criterion.ValueOf(baseline);
            return double.IsFinite(change) ? change : "";
        })
        { SubtractedCell = CellAddress.Absolute(RankingLayout.FirstCriterionRow + objective, RankingLayout.BaselineColumn) };
    }

    private static List<object> Row(IReadOnlyList<RankingTableColumn> columns, RankingLayout layout, int design, int place)
    {
        var row = layout.TableHeaderRow + 1 + place;
        var found = FormattableString.Invariant($"$C{row}");
        List<object> cells = [place + 1.0];
        foreach (var column in columns)
        {
            var text = column.DataColumn == 0
                ? $"IFERROR(MATCH({CellAddress.Relative(row, 1)},{layout.Data(layout.OrderColumn)},0),\"\")"
                : $"INDEX({layout.Data(column.DataColumn)},{found})";
            if (column.SubtractedCell is { } less)
                text = $"IFERROR({text}-{less},\"\")";
            cells.Add(new Formula(column.DataColumn == 0 ? text : $"IF({found}=\"\",\"\",{text})", column.Cached(design)));
        }

        return cells;
    }

    private static object Cached(double value) => double.IsFinite(value) ? value : "no bound";
}

/// <summary>A column of the table on the sheet Ranking.</summary>
/// <param name="Header">With its unit.</param>
/// <param name="FormatCode">How it is shown.</param>
/// <param name="DataColumn">Of the sheet Ranking data, from 1; 0 for the row number there.</param>
/// <param name="Cached">The value for one of the designs held.</param>
internal sealed record RankingTableColumn(string Header, string FormatCode, int DataColumn, Func<int, object> Cached)
{
    /// <summary>A cell to subtract, or null.</summary>
    public string? SubtractedCell { get; init; }
}
