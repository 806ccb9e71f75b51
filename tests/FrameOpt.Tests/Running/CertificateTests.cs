using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Search.Fronts;
using FrameOpt.Search.Local;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Running;

public class CertificateTests
{
    private static readonly Study grid = WorkedStudy.Over(
        WorkedStudy.Steps(400, 20, 5), WorkedStudy.Steps(0, 2, 31), WorkedStudy.Steps(100, 30, 11), WorkedStudy.Steps(-3, 1.5, 5));

    [Fact]
    public void A_search_that_has_seen_the_whole_grid_is_certified_as_exact()
    {
        var result = Finish(grid with { Search = Search(100_000) });
        Assert.IsType<StopReason.GridComplete>(result.StopReason);
        Assert.Equal(8525, result.Counts.Evaluated);
        var certificate = result.Certificate!;
        Assert.False(certificate.IsEstimate);
        Check.Close(1, certificate.Hypervolume.Ratio, relative: 1e-12, because: "the same points summed in another order");
        Assert.All(certificate.Regrets, regret => Assert.Equal(0, regret));
        Assert.Equal(Finish(grid).Front.Select(design => design.Geometry).ToHashSet(),
            result.Front.Select(design => design.Geometry).ToHashSet());
    }

    [Fact]
    public void A_search_that_has_seen_a_part_falls_short_and_says_by_how_much()
    {
        var certificate = Finish(grid with { Search = Search(300) }).Certificate!;
        Assert.InRange(certificate.Hypervolume.Ratio, 0.5, 1);
        Assert.Contains(certificate.Regrets, regret => regret > 0);
        Assert.Equal(8525, certificate.GridDesigns);
    }

    [Fact]
    public void A_continuous_space_is_held_against_a_coarser_grid_and_called_an_estimate()
    {
        var study = grid with
        {
            Factors = [.. grid.Factors.Select(factor =>
            factor with { IsContinuous = true, LevelsSi = [factor.LevelsSi[0], factor.LevelsSi[^1]] })],
            Search = Search(3000)
        };
        var certificate = Finish(study).Certificate!;
        Assert.True(certificate.IsEstimate);
        Assert.InRange(certificate.GridDesigns, RunLimits.MaxPartialGrid / 2, RunLimits.MaxPartialGrid);
        Assert.Contains("lateral_offset", RunText.Grid(certificate));
    }

    [Fact]
    public void A_coarser_grid_keeps_the_ends_and_only_levels_the_study_has()
    {
        var coarse = SubGrid.Of(grid, 500);
        Assert.True(coarse.GridSize <= 500);
        foreach (var (fine, factor) in grid.Factors.Zip(coarse.Factors))
        {
            Assert.Equal((fine.LevelsSi[0], fine.LevelsSi[^1]), (factor.LevelsSi[0], factor.LevelsSi[^1]));
            Assert.All(factor.LevelsSi, level => Assert.Contains(level, fine.LevelsSi));
        }
    }

    [Theory]
    [InlineData(SearchMethod.NsgaII)]
    [InlineData(SearchMethod.NsgaIII)]
    public void The_answer_of_a_search_does_not_depend_on_threads(SearchMethod method)
    {
        var study = grid with { Search = Search(1000) with { Method = method, LocalSearch = true } };
        StudyResult one = Finish(study), many = Finish(study, threads: 5);
        Assert.Equal(one.Front.Select(design => design.Geometry), many.Front.Select(design => design.Geometry));
        Assert.Equal(one.Counts.Feasible, many.Counts.Feasible);
        Assert.Equal(one.Certificate!.Regrets, many.Certificate!.Regrets);
    }

    private static SearchSetting.Evolutionary Search(long evaluations) => new(SearchMethod.NsgaII, 50, 1, new StopRules(evaluations));

    private static StudyResult Finish(Study study, int threads = 1)
    {
        var runner = new StudyRunner(study, threads);
        foreach (var _ in runner.Steps())
        {
        }

        return runner.Result();
    }
}
