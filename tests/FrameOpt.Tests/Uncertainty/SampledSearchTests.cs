using FrameOpt.Model.Mission;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;
using FrameOpt.Tests.Running;
using FrameOpt.Uncertainty;

namespace FrameOpt.Tests.Uncertainty;

/// <summary>Searches with objectives and limits over cases.</summary>
public class SampledSearchTests
{
    private static readonly Response residual = new Response.OfMission(MissionQuantity.ResidualRms);
    private static readonly Response margin = new Response.OfMission(MissionQuantity.TwistMarginWorst);
    private static readonly StudyLimit marginAtLeast = new(margin, false, 5, null);

    private static readonly StudyObjective[] plain =
    [
        WorkedStudy.Minimise(MissionQuantity.ResidualRms),
        WorkedStudy.Minimise(MissionQuantity.PitchSwing),
    ];

    private static readonly StudyObjective[] robust =
    [
        new(new Response.OverCases(residual, new CaseStatistic.Percentile(90)), false, false, 0),
        WorkedStudy.Minimise(MissionQuantity.PitchSwing),
    ];

    [Fact]
    public void Every_value_of_the_front_is_that_of_the_design_in_each_case_by_itself()
    {
        var study = Study(robust, marginAtLeast, new StudyLimit(new Response.LimitsMet(), false, 0.2, null)) with
        {
            Noise = NoiseSetting.Usual with { Cases = 32 },
        };
        var result = Run(study, 2);
        var cases = new NoiseSample(study.Noise, 32, study.Noise.Seed).Cases(result.Mission);
        Assert.NotEmpty(result.Front);
        foreach (var design in result.Front)
        {
            var each = cases.Select(one => one.Model.Evaluate(design.Geometry + one.BuiltOff)).ToList();
            var sorted = each.Select(one => one.Failure is null ? one[MissionQuantity.ResidualRms] : double.PositiveInfinity)
                .Order().ToList();
            Assert.Equal(sorted[28], design.Objectives[0]); // 29 of 32 are 90.6 %, 28 are 87.5 %
            var met = each.Count(one => one.Failure is null && one[MissionQuantity.TwistMarginWorst] >= 5) / 32.0;
            Assert.Equal(met, result.Mission.Evaluate(design.Geometry)[new Response.LimitsMet()]);
            Assert.True(met >= 0.2);
        }
    }

    [Theory]
    [InlineData(0)]
    [InlineData(1)]
    public void Without_noise_the_robust_answer_is_the_plain_one_to_the_last_bit(int kind)
    {
        // Nothing uncertain at all; and every case alike, because every spread is of no width.
        var noise = kind == 0 ? NoiseSetting.None : new NoiseSetting([.. NoiseSource.All.Select(source =>
            (source, (Spread)new Spread.Table([0])))], [])
        { Cases = 16 };
        var usual = Run(Study(plain, marginAtLeast) with { Noise = noise }, 1);
        CaseStatistic[] all = [new CaseStatistic.Mean(), new CaseStatistic.Worst(), new CaseStatistic.MeanOfWorst(10),
            new CaseStatistic.Percentile(50)];
        foreach (var statistic in all)
        {
            StudyObjective[] objectives = [robust[0] with { Response = new Response.OverCases(residual, statistic) }, plain[1]];
            var over = Run(Study(objectives, marginAtLeast) with { Noise = noise }, 1);
            Assert.Equal(usual.Front.Select(design => (design.Geometry, design.Objectives[0], design.Score)),
                over.Front.Select(design => (design.Geometry, design.Objectives[0], design.Score)));
        }
    }

    [Fact]
    public void Number_of_threads_changes_nothing()
    {
        var study = Study(robust, marginAtLeast) with { Noise = NoiseSetting.Usual with { Cases = 16 } };
        StudyResult one = Run(study, 1), two = Run(study, 2);
        Assert.Equal(one.Front.Select(design => (design.Geometry, design.Objectives[0])),
            two.Front.Select(design => (design.Geometry, design.Objectives[0])));
        Assert.Equal(one.Uncertainty!.Choice!.Standings.Select(standing => standing.Best),
            two.Uncertainty!.Choice!.Standings.Select(standing => standing.Best));
    }

    [Fact]
    public void Rows_longer_than_the_workspace_are_computed_in_parts()
    {
        var study = Study(robust) with { Noise = NoiseSetting.Usual with { Cases = 16 } };
        var longer = study with
        {
            Factors = [.. study.Factors.Select(factor => factor.Name == "lateral_offset"
                ? factor with { LevelsSi = [.. Enumerable.Range(0, 2 * SampledRow.LongestRow + 3).Select(i => i * 0.0005)] } : factor)],
        };
        var result = Run(longer, 1);
        Assert.All(result.Front, design => Assert.Equal(
            result.Mission.Evaluate(design.Geometry)[longer.Objectives[0].Response], design.Objectives[0]));
    }

    private static Study Study(StudyObjective[] objectives, params StudyLimit[] limits) => WorkedStudy.Over(
        [400, 440], WorkedStudy.Steps(0, 4, 12), [150, 200], [-2, 0], objectives, limits);

    private static StudyResult Run(Study study, int threads)
    {
        var runner = new StudyRunner(study, threads);
        foreach (var _ in runner.Steps())
        {
        }

        return runner.Result();
    }
}
