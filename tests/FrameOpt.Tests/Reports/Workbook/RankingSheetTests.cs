using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Search.Fronts;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Reports.Workbook;

public class RankingSheetTests
{
    [Theory]
    [InlineData(RankingMethod.DistanceToIdeal)]
    [InlineData(RankingMethod.Topsis)]
    public void The_values_saved_rank_every_design_as_the_tool_does(RankingMethod method)
    {
        var report = LiveRun.Of(method);
        var (header, rows) = new WorkbookReader(report).Table("Ranking", "position");
        Assert.InRange(report.Result.Front.Count, 20, 500);
        Assert.Equal(report.Result.Front.Select(design => (double)design.Rank), rows.Select(row => (double)row[1]!));
        Assert.Equal(report.Result.Front.Select(design => (double)design.Number), rows.Select(row => (double)row[3]!));
        var score = Array.IndexOf(header, method == RankingMethod.Topsis ? "closeness" : "distance to the ideal");
        for (var i = 0; i < rows.Count; i++)
            Check.Close(report.Result.Front[i].Score, (double)rows[i][score]!, relative: 1e-12,
                because: "the same sum of squares, its factors multiplied in another order");
    }

    [Fact]
    public void The_best_500_of_a_larger_front_are_scaled_by_the_whole_front()
    {
        // Corners far worse than the rest are on the front but not among the best 500: their values must still set the scale.
        var report = ReportFixture.Report(620);
        var book = new WorkbookReader(report);
        var (_, rows) = book.Table("Ranking", "position");
        Assert.Equal(500, rows.Count);
        var criteria = book.Table("Ranking", "response [unit]").Rows;
        for (var o = 0; o < report.Result.Study.Objectives.Count; o++)
        {
            var all = report.Result.Front.Select(design => design.Objectives[o]).ToList();
            var maximise = report.Result.Study.Objectives[o].Maximise;
            Assert.Equal(maximise ? all.Max() : all.Min(), (double)criteria[o][9]!);
            Assert.Equal(maximise ? all.Min() : all.Max(), (double)criteria[o][10]!);
        }
    }

    [Fact]
    public void What_users_type_into_has_names()
    {
        var names = new WorkbookReader(LiveRun.Report).InputNames();
        Assert.Equal(
            [
                "ranking_wing", "ranking_baseline_number", "ranking_weights", "ranking_at_least", "ranking_at_most",
                "what_if_hang_point_spacing", "what_if_lateral_offset", "what_if_suspension_height", "what_if_thrust_line_angle",
            ],
            names);
    }

    [Fact]
    public void No_formula_needs_a_program_newer_than_2010() =>
        Assert.DoesNotContain(new WorkbookReader(LiveRun.Report).Formulas(), formula =>
            formula.Formula.Contains("_xl", StringComparison.Ordinal)
            || formula.Formula.Contains("FILTER(", StringComparison.Ordinal) || formula.Formula.Contains("SORT", StringComparison.Ordinal)
                || formula.Formula.Contains('#'));
}
