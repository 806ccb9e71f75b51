using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.LiveRanking;

/// <summary>The figures behind the sheet Ranking: every design at each yaw leverage, and the formulas that score and rank it.</summary>
internal static class RankingDataSheet
{
    private const string Note =
        "What the sheet Ranking is reckoned from. Formulas on the right: the values at the leverage chosen there, whether the design keeps its limits, score, rank, place. Nothing to type here.";

    public static DataRows Add(XLWorkbook book, RunReport report, RankedDesigns ranked, RankingLayout layout)
    {
        List<DataColumn> columns = [DataColumn.OfNumbers("number", "0"), DataColumn.OfNumbers("rank in the run", "0"),
            .. GeometryColumns(ranked)];
        foreach (var criterion in ranked.Criteria)
            columns.AddRange(LeverageSettings.Labels.Select(label => DataColumn.OfNumbers(
                $"{criterion.Header}, {label}", criterion.FormatCode)));
        columns.AddRange(ranked.Criteria.Select(criterion => DataColumn.OfNumbers(
            $"{criterion.Header}, chosen leverage", criterion.FormatCode)));
        columns.AddRange([
            DataColumn.OfNumbers("keeps the limits (1 yes)", "0"),
            DataColumn.OfNumbers("score", "0.0000"),
            DataColumn.OfNumbers("rank", "0"),
            DataColumn.OfNumbers("place", "0"),
        ]);
        return DataSheet.Add(book, report, RankingLayout.DataSheetName, Note, columns,
            [.. ranked.Designs.Select((_, i) => Row(ranked, layout, i))]);
    }

    private static IEnumerable<DataColumn> GeometryColumns(RankedDesigns ranked) =>
        GeometryFields.Of(ranked.Study).Select(field => DataColumn.OfNumbers(field.Header, GeometryField.FormatCode));

    private static List<object> Row(RankedDesigns ranked, RankingLayout layout, int index)
    {
        var design = ranked.Designs[index];
        var row = RankingLayout.FirstDataRow + index;
        List<object> cells = [(double)design.Number, (double)design.Rank,
            .. GeometryFields.Of(ranked.Study).Select(field => (object)field.Value(design.Geometry))];
        foreach (var criterion in ranked.Criteria)
            cells.AddRange(ranked.Evaluations.Select(evaluations => Value(criterion.ValueOf(evaluations[index]))));
        for (var c = 0; c < ranked.Criteria.Count; c++)
        {
            var ofEach = string.Join(',', Enumerable.Range(0, LeverageSettings.Labels.Count)
                .Select(l => CellAddress.Relative(row, layout.ValueColumn(c, l))));
            cells.Add(new Formula($"CHOOSE({RankingLayout.LeverageNumber},{ofEach})",
                Value(ranked.Criteria[c].ValueOf(ranked.Evaluations[LeverageSettings.AsInStudy][index]))));
        }

        cells.Add(new Formula(RankingFormulas.IsWithinLimits(layout, row), 1.0));
        cells.Add(new Formula(RankingFormulas.Score(ranked, layout, row), ranked.Scores[index]));
        cells.Add(new Formula(RankingFormulas.Rank(ranked, layout, row), (double)ranked.Ranks[index]));
        cells.Add(new Formula(RankingFormulas.Position(layout, row), (double)ranked.Positions[index]));
        return cells;
    }

    /// <summary>A number, or a word that no formula takes for one.</summary>
    private static object Value(double value) => double.IsFinite(value) ? value : double.IsNaN(value) ? "cannot fly" : "no bound";
}
