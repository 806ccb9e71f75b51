using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.LiveRanking;

/// <summary>The figures behind the sheet Ranking: every design with the wing of each case, and the formulas that score and rank
/// it.</summary>
internal static class RankingDataSheet
{
    private const string Note =
        "Data of the sheet Ranking. Formulas on the right: the values with the wing selected there, whether the design meets the "
            + "limits, score, rank, position. No input on this sheet.";

    public static void Add(Spreadsheet book, RankedDesigns ranked, RankingLayout layout)
    {
        var (designs, criteria) = (ranked.Designs, ranked.Criteria);
        DataSheet.Add(book, RankingLayout.DataSheetName, Note, new(
            [
                Column.OfNumbers("number", "0", row => designs[row].Number),
                Column.OfNumbers("rank in the run", "0", row => designs[row].Rank),
                .. GeometryColumns.Of(ranked.Study, row => designs[row].Geometry),
                .. criteria.SelectMany(criterion => RankedDesigns.WingLabels.Select((label, l) => new Column(
                    $"{criterion.Header}, {label}", "", criterion.FormatCode,
                    row => RankedDesigns.Cell(criterion.ValueOf(ranked.Evaluations[l][row]))))),
                .. criteria.Select((criterion, c) => new Column(
                    $"{criterion.Header}, chosen wing", "", criterion.FormatCode,
                    row => new Formula(
                        RankingFormulas.Selected(layout, c, SheetRow(row)),
                        RankedDesigns.Cell(criterion.ValueOf(ranked.Evaluations[RankedDesigns.AsInStudy][row]))))),
                Formulas("meets the limits (1 yes)", "0", row => RankingFormulas.IsWithinLimits(layout, row), _ => 1),
                Formulas("score", "0.0000", row => RankingFormulas.Score(ranked, layout, row), row => ranked.Scores[row]),
                Formulas("rank", "0", row => RankingFormulas.Rank(ranked, layout, row), row => ranked.Ranks[row]),
                Formulas("position", "0", row => RankingFormulas.Position(layout, row), row => ranked.Positions[row]),
            ],
            designs.Count));
    }

    private static Column Formulas(string header, string formatCode, Func<int, string> onSheetRow, Func<int, double> cached) =>
        new(header, "", formatCode, row => new Formula(onSheetRow(SheetRow(row)), cached(row)));

    private static int SheetRow(int row) => RankingLayout.FirstDataRow + row;
}

/// <summary>The ranking of docs/ranking.md as formulas of one row of the sheet Ranking data.</summary>
internal static class RankingFormulas
{
    /// <summary>The value of a criterion with the wing chosen.</summary>
    public static string Selected(RankingLayout layout, int criterion, int row)
    {
        var ofEach = string.Join(',', Enumerable.Range(0, RankedDesigns.WingLabels.Count)
            .Select(l => CellAddress.Relative(row, layout.ValueColumn(criterion, l))));
        return $"CHOOSE({RankingLayout.WingNumber},{ofEach})";
    }

    /// <summary>1 when the design flies, keeps every limit typed, and there is a weight to rank by.</summary>
    public static string IsWithinLimits(RankingLayout layout, int row)
    {
        string Selected(int criterion) => CellAddress.Relative(row, layout.SelectedColumn(criterion));
        var objectives = $"{Selected(0)}:{Selected(layout.Objectives - 1)}";
        List<string> conditions = [$"SUM({layout.Weights})>0", FormattableString.Invariant($"COUNT({objectives})={layout.Objectives}")];
        for (var c = 0; c < layout.Criteria; c++)
        {
            var value = Selected(c);
            var least = RankingLayout.Input(RankingLayout.FirstCriterionRow + c, RankingLayout.AtLeastColumn);
            var most = RankingLayout.Input(RankingLayout.FirstCriterionRow + c, RankingLayout.AtMostColumn);
            conditions.Add($"OR({least}=\"\",{value}>={least})");
            conditions.Add($"OR({most}=\"\",{value}<={most})");
        }

        return $"IF(AND({string.Join(',', conditions)}),1,0)";
    }

    /// <summary>Distance to the ideal, or TOPSIS closeness when the study says so; nothing for a design outside the limits.</summary>
    public static string Score(RankedDesigns ranked, RankingLayout layout, int row)
    {
        var toBest = string.Join('+', Enumerable.Range(0, layout.Objectives).Select(o => Part(layout, row, o, RankingLayout.BestColumn)));
        var score = $"SQRT({toBest})";
        if (ranked.IsTopsis)
        {
            var toWorst = string.Join('+', Enumerable.Range(0, layout.Objectives)
                .Select(o => Part(layout, row, o, RankingLayout.WorstColumn)));
            score = $"IF(SQRT({toBest})+SQRT({toWorst})>0,SQRT({toWorst})/(SQRT({toBest})+SQRT({toWorst})),1)";
        }

        return $"IF({CellAddress.Relative(row, layout.WithinColumn)}=1,{score},\"\")";
    }

    /// <summary>Equal scores share a rank.</summary>
    public static string Rank(RankedDesigns ranked, RankingLayout layout, int row)
    {
        var score = CellAddress.Relative(row, layout.ScoreColumn);
        string Score(int dataRow) => CellAddress.Absolute(dataRow, layout.ScoreColumn);
        var scores = $"{Score(RankingLayout.FirstDataRow)}:{Score(layout.LastDataRow)}";
        return $"IF({score}=\"\",\"\",RANK({score},{scores},{(ranked.IsTopsis ? 0 : 1)}))";
    }

    /// <summary>The place in the table: of equal ranks the earlier design first.</summary>
    public static string Position(RankingLayout layout, int row)
    {
        var rank = CellAddress.Relative(row, layout.RankColumn);
        var above = $"{CellAddress.Absolute(DataSheet.HeaderRow, layout.RankColumn)}:{CellAddress.Relative(row - 1, layout.RankColumn)}";
        return $"IF({rank}=\"\",\"\",{rank}+COUNTIF({above},{rank}))";
    }

    private static string Part(RankingLayout layout, int row, int objective, int from)
    {
        string Of(int column) => RankingLayout.Input(RankingLayout.FirstCriterionRow + objective, column);
        var value = CellAddress.Relative(row, layout.SelectedColumn(objective));
        return $"({Of(RankingLayout.ShareColumn)}*(({value}-{Of(from)})/{Of(RankingLayout.DivisorColumn)}))^2";
    }
}
