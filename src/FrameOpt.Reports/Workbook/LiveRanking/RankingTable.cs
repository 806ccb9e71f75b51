using ClosedXML.Excel;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.LiveRanking;

/// <summary>The designs of the sheet Ranking in the order that its inputs give.</summary>
internal sealed class RankingTable
{
    private const int FirstGeometryColumn = 3;
    private readonly RankedDesigns ranked;
    private readonly RankingLayout layout;

    /// <summary>The index of the design in each row, as the workbook is written.</summary>
    private readonly IReadOnlyList<int> order;

    private RankingTable(RankedDesigns ranked, RankingLayout layout)
    {
        (this.ranked, this.layout) = (ranked, layout);
        order = [.. Enumerable.Range(0, ranked.Designs.Count).OrderBy(i => ranked.Positions[i])];
    }

    /// <summary>Place, then formulas that look the rest up on the sheet Ranking data.</summary>
    public static Table Of(RankedDesigns ranked, RankingLayout layout) =>
        new([.. new RankingTable(ranked, layout).Columns()], ranked.Designs.Count);

    /// <summary>Adds the table with its header.</summary>
    public static void Add(Spreadsheet book, IXLWorksheet sheet, Table table, RankingLayout layout)
    {
        var (row, width) = (layout.TableHeaderRow, table.Columns.Count);
        for (var c = 0; c < width; c++)
            SheetStyle.Text(sheet.Cell(row, c + 1), DataSheet.Header(table.Columns[c]));
        var header = sheet.Range(row, 1, row, width);
        SheetStyle.TableHeader(header);
        header.Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Center);
        sheet.Row(row).Height = 64;
        sheet.Range(row, 1, row + table.RowCount, width).SetAutoFilter();
        book.AddRows(new PlacedTable(table, RankingLayout.Sheet, row + 1));
    }

    private IEnumerable<Column> Columns()
    {
        yield return Column.OfNumbers("position", "0", place => place + 1);
        yield return Looked("rank", "0", layout.RankColumn, i => (double)ranked.Ranks[i]);
        yield return new("row of Ranking data", "", "0", place => new Formula(
            $"IFERROR(MATCH({CellAddress.Relative(SheetRow(place), 1)},{layout.Data(layout.OrderColumn)},0),\"\")", order[place] + 1.0));
        yield return Looked("number", "0", 1, i => (double)ranked.Designs[i].Number);
        foreach (var (c, column) in GeometryColumns.Of(ranked.Study, i => ranked.Designs[i].Geometry).Index())
            yield return Looked(column.Header, column.FormatCode, FirstGeometryColumn + c, column.Value);
        yield return Looked(
            ranked.IsTopsis ? "closeness" : "distance to the ideal", "0.0000", layout.ScoreColumn, i => ranked.Scores[i]);
        foreach (var (c, criterion) in ranked.Criteria.Index())
            yield return Looked(criterion.Header, criterion.FormatCode, layout.SelectedColumn(c), i =>
                FiniteOr("unbounded", ValueOf(c, i)));
        for (var o = 0; o < layout.Objectives; o++)
            yield return ChangeFromBaseline(o);
    }

    private Column ChangeFromBaseline(int objective)
    {
        var criterion = ranked.Criteria[objective];
        var baseline = ranked.Baseline.Count == 0 ? ValueOf(objective, 0) : criterion.ValueOf(ranked.Baseline[RankedDesigns.AsInStudy]);
        return Looked(
            $"change from baseline: {criterion.Header}", criterion.FormatCode, layout.SelectedColumn(objective),
            i => FiniteOr("", ValueOf(objective, i) - baseline),
            CellAddress.Absolute(RankingLayout.FirstCriterionRow + objective, RankingLayout.BaselineColumn));
    }

    /// <summary>A column that looks a column of the sheet Ranking data up.</summary>
    /// <param name="header">With its unit.</param>
    /// <param name="formatCode">How it is shown.</param>
    /// <param name="column">Of the sheet Ranking data, from 1.</param>
    /// <param name="cached">The value for one of the designs.</param>
    /// <param name="subtracted">A cell to subtract, or null.</param>
    private Column Looked(string header, string formatCode, int column, Func<int, object> cached, string? subtracted = null) =>
        new(header, "", formatCode, place =>
        {
            var found = FormattableString.Invariant($"$C{SheetRow(place)}");
            var value = $"INDEX({layout.Data(column)},{found})";
            if (subtracted is not null)
                value = $"IFERROR({value}-{subtracted},\"\")";
            return new Formula($"IF({found}=\"\",\"\",{value})", cached(order[place]));
        });

    private int SheetRow(int place) => layout.TableHeaderRow + 1 + place;

    private double ValueOf(int criterion, int design) =>
        ranked.Criteria[criterion].ValueOf(ranked.Evaluations[RankedDesigns.AsInStudy][design]);

    private static object FiniteOr(string words, double value) => double.IsFinite(value) ? value : words;
}
