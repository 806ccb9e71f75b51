using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Search.Fronts;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Running;

public class StudyRunnerTests
{
    private static readonly Study small = WorkedStudy.Over([400, 440, 480], WorkedStudy.Steps(0, 4, 16), [100, 200, 300], [-2, 0, 2]);

    [Fact]
    public void The_front_is_what_a_comparison_of_every_pair_finds()
    {
        var result = Finish(small);
        var all = AllDesigns(small);
        var front = all.Where(a => !all.Any(b => Beats(b.Values, a.Values))).Select(a => a.Geometry).ToHashSet();
        Assert.Equal(432, result.Counts.Evaluated);
        Assert.True(front.Count > 5);
        Assert.Equal(front, result.Front.Select(design => design.Geometry).ToHashSet());
    }

    [Fact]
    public void Objectives_of_the_front_are_what_the_model_says_of_the_design_alone()
    {
        foreach (var design in Finish(small).Front)
            Assert.Equal(Values(small, design.Geometry), design.Objectives);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(5)]
    public void The_answer_does_not_depend_on_the_number_of_threads(int threads)
    {
        var study = WorkedStudy.Over(WorkedStudy.Steps(400, 5, 12), WorkedStudy.Steps(0, 1, 61), WorkedStudy.Steps(100, 20, 11),
            WorkedStudy.Steps(-4, 1, 9));
        StudyResult one = Finish(study), many = Finish(study, threads);
        Assert.Equal(one.Front.Select(Plain), many.Front.Select(Plain));
        Assert.Equal(one.Counts.Feasible, many.Counts.Feasible);
    }

    [Fact]
    public void A_limit_keeps_designs_off_the_front_and_is_counted()
    {
        var effort = new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, null, 0.7);
        var study = small with { Limits = [effort] };
        var result = Finish(study);
        var all = AllDesigns(small).Select(d => StudyProblem.Model(small).Evaluate(d.Geometry)).ToList();
        Assert.Equal(all.Count(d => d[MissionQuantity.EffortWorst] > 0.7), result.Counts.ViolatedBy[0]);
        Assert.All(result.Front, d => Assert.True(result.Mission.Evaluate(d.Geometry)[MissionQuantity.EffortWorst] <= 0.7));
        Assert.NotEmpty(result.Front);
    }

    [Fact]
    public void When_nothing_keeps_the_limits_the_nearest_miss_and_its_limit_are_the_answer()
    {
        var study = small with { Limits = [new StudyLimit(new Response.OfMission(MissionQuantity.TwistMarginWorst), false, 1000, null)] };
        var result = Finish(study);
        Assert.Empty(result.Front);
        Assert.Null(result.Chosen);
        var best = AllDesigns(small).Max(d => StudyProblem.Model(small).Evaluate(d.Geometry)[MissionQuantity.TwistMarginWorst]);
        Check.Close(best, result.NearestMiss!.Evaluation[MissionQuantity.TwistMarginWorst], relative: 1e-12,
            because: "the same design by another route");
        Assert.StartsWith("smallest twist margin in any phase at least 1000; this design has ",
            RunText.BrokenLimit(Assert.Single(result.NearestMiss.BrokenLimits), result.NearestMiss.Evaluation));
    }

    // A canopy this soft lets less than a fifth of a weight shift through the higher suspensions: effort is without bound there.
    [Fact]
    public void A_design_that_no_lean_cures_is_outside_the_limit_and_the_nearest_miss_is_one_that_a_lean_does()
    {
        var effort = new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, null, 0.7);
        var study = small with { Wing = small.Wing with { RiserCoupling = RiserCoupling.Soft }, Limits = [effort] };
        var all = AllDesigns(study).Select(d => StudyProblem.Model(study).Evaluate(d.Geometry)[MissionQuantity.EffortWorst]).ToList();
        Assert.InRange(all.Count(double.IsInfinity), 1, all.Count - 1);
        var result = Finish(study);
        Assert.Equal(all.Count(value => value > 0.7), result.Counts.ViolatedBy[0]);
        Assert.NotEmpty(result.Front);
        Assert.All(result.Front, d => Assert.True(result.Mission.Evaluate(d.Geometry)[MissionQuantity.EffortWorst] <= 0.7));
        var none = Finish(study with { Limits = [effort with { AtMost = 0.001 }] });
        Check.Close(all.Min(), none.NearestMiss!.Evaluation[MissionQuantity.EffortWorst], relative: 1e-12,
            because: "the same design by another route");
    }

    // The launch leaves more than 1 N·m, a hundred times its limit and more; an effort of some 0.8 misses 0.3 by less than twice.
    [Fact]
    public void The_nearest_miss_names_every_limit_it_breaks_the_worst_first()
    {
        var study = small with
        {
            Limits =
            [
                new StudyLimit(new Response.OfMission(MissionQuantity.PitchSwing), false, null, 90),
                new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, null, 0.3),
                new StudyLimit(new Response.OfMission(MissionQuantity.ResidualWorst), false, null, 0.01),
            ],
        };
        Assert.Equal(
            ["residual_worst at most 0.01 N·m", "effort_worst at most 0.3"],
            Finish(study).NearestMiss!.BrokenLimits.Select(StudyText.Limit));
    }

    [Fact]
    public void A_run_stopped_early_gives_the_best_so_far_and_says_so()
    {
        var runner = new StudyRunner(WorkedStudy.Million(), 1);
        foreach (var step in runner.Steps())
        {
            if (step.Done >= 100_000)
                break;
        }

        var result = runner.Result();
        Assert.False(result.IsComplete);
        Assert.IsType<StopReason.StoppedEarly>(result.StopReason);
        Assert.NotNull(result.Chosen);
        Assert.All(result.Scenarios, scenario => Assert.True(scenario.Best is null || scenario.Case == WingCase.AsGiven));
    }

    [Fact]
    public void Other_wings_are_searched_too_and_move_the_best_design()
    {
        var result = Finish(small with { Wing = WorkedMachine.Wing with { YawLeverage = new YawLeverage.Constant(0.6) } });
        Assert.Equal(WingCases.All, result.Scenarios.Select(scenario => scenario.Case));
        Assert.All(result.Scenarios, s => Assert.NotNull(s.BestEvaluation));
        Assert.Equal(result.Front[0], result.Scenarios[(int)WingCase.AsGiven].Best);
        Assert.Equal([0.3, 0.6, 0.9, 0.6, 0.6], result.Scenarios.Select(s => Math.Round(s.Chosen.Phases[2][PhaseQuantity.YawLeverage], 9)));
        Assert.Contains(result.Scenarios, s => s.Best!.Geometry != result.Front[0].Geometry);
    }

    private static (string, double) Plain(FrontDesign design) =>
        ($"{design.Rank} {design.Number} {design.Geometry} {design.IsKnee} "
            + $"{string.Join(' ', design.Objectives.Select(o => o.ToString("R")))}", design.Score);

    internal static StudyResult Finish(Study study, int threads = 1)
    {
        var runner = new StudyRunner(study, threads);
        foreach (var _ in runner.Steps())
        {
        }

        return runner.Result();
    }

    private static List<(FrameGeometry Geometry, double[] Values)> AllDesigns(Study study)
    {
        var designs = new List<(FrameGeometry, double[])>();
        foreach (var s in study.Factors[0].LevelsSi)
            foreach (var e in study.Factors[1].LevelsSi)
                foreach (var h in study.Factors[2].LevelsSi)
                    foreach (var psi in study.Factors[3].LevelsSi)
                    {
                        var geometry = FrameGeometry.On(study.Machine, s, e, h, psi);
                        designs.Add((geometry, Values(study, geometry)));
                    }

        return designs;
    }

    private static double[] Values(Study study, FrameGeometry geometry)
    {
        var evaluation = StudyProblem.Model(study).Evaluate(geometry);
        Assert.Null(evaluation.Failure);
        return [.. study.Objectives.Select(objective => evaluation[objective.Response])];
    }

    // residual_rms and pitch_swing are minimised, the authority in the middle is maximised.
    private static bool Beats(double[] a, double[] b) =>
        a[0] <= b[0] && a[1] >= b[1] && a[2] <= b[2] && (a[0] < b[0] || a[1] > b[1] || a[2] < b[2]);
}
