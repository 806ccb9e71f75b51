using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Reports.Answer;

/// <remarks>Figures: the worked balance, design 440 mm, 25 mm, 150 mm, 0 deg (References/README.md).</remarks>
public class AnswerHeadlineTests
{
    [Fact]
    public void The_first_line_names_the_best_compromise_in_the_users_units_with_signs_in_words()
    {
        var result = ReportFixture.Report().Result;
        var answer = RunAnswer.Of(result with { Study = result.Study with { Limits = [] } });
        Assert.False(answer.IsWarning);
        Assert.StartsWith("Best compromise of the 12 designs", answer.Headline);
        Assert.Contains(
            "hang points 440 mm apart; both moved 25 mm to the pilot's right; hang line 150 mm above the datum; thrust line straight ahead",
            answer.Headline);
    }

    [Fact]
    public void A_phase_that_cannot_be_held_comes_first_even_with_the_engine_off()
    {
        var result = ReportFixture.Report().Result;
        var answer = RunAnswer.Of(result with { Chosen = result.Chosen!.With(4, PhaseQuantity.Effort, 1.25) });
        Assert.True(answer.IsWarning);
        Assert.StartsWith("THE PILOT CANNOT HOLD IT in glide (effort 1.25). ", answer.Headline);
    }

    [Fact]
    public void A_phase_that_no_lean_cures_comes_first_in_words()
    {
        var result = ReportFixture.Report().Result;
        var chosen = result.Chosen!.With(1, PhaseQuantity.Effort, double.PositiveInfinity)
            .With(1, PhaseQuantity.Lean, double.PositiveInfinity);
        Assert.StartsWith("THE PILOT CANNOT HOLD IT in climb (no lean cures it). ", RunAnswer.Of(result with { Chosen = chosen }).Headline);
    }

    [Fact]
    public void A_launch_that_has_not_settled_is_not_called_unheld()
    {
        var result = ReportFixture.Report().Result;
        var launch = result with { Chosen = result.Chosen!.With(0, PhaseQuantity.Effort, 1.25), Study = result.Study with { Limits = [] } };
        Assert.False(RunAnswer.Of(launch).IsWarning);
    }

    // Worked balance: effort of the glide 36.21829 / 80 = 0.453, within 0.5.
    [Fact]
    public void A_limit_that_another_wing_breaks_is_in_the_first_line_with_that_wing()
    {
        var result = ReportFixture.Report().Result;
        var limit = new StudyLimit(new Response.OfPhase(PhaseQuantity.Effort, 4, "glide"), false, null, 0.5);
        var scenarios = result.Scenarios.Select(scenario => scenario with
        {
            Chosen = scenario.Chosen.With(4, PhaseQuantity.Effort, scenario.Case == WingCase.LowLeverage ? 0.7 : 0.453),
        });
        var answer = RunAnswer.Of(result with { Study = result.Study with { Limits = [limit] }, Scenarios = [.. scenarios] });
        Assert.True(answer.IsWarning);
        Assert.StartsWith(
            "LIMITS ARE MET FOR THE WING AS GIVEN ONLY, violated with another: effort in glide at most 0.5 (low leverage). Best compromise",
            answer.Headline);
    }

    [Fact]
    public void A_run_cut_short_says_so_first() =>
        Assert.StartsWith("STOPPED EARLY", RunAnswer.Of(ReportFixture.Report().Result with
        {
            StopReason = new StopReason.StoppedEarly(3, 10)
        }).Headline);

    [Fact]
    public void When_nothing_is_feasible_the_nearest_miss_and_its_limit_come_first()
    {
        // Worked balance: effort_worst 36.21829 / 80 = 0.453, twist_margin_worst 4.745608.
        var miss = new NearestMiss(7, ReportFixture.Report(1).FrontEvaluations[0],
        [
            new StudyLimit(new Response.OfMission(MissionQuantity.EffortWorst), false, null, 0.4),
            new StudyLimit(new Response.OfMission(MissionQuantity.TwistMarginWorst), false, 5, null),
        ]);
        var answer = RunAnswer.Of(ReportFixture.NothingFeasible(miss));
        Assert.True(answer.IsWarning);
        Assert.StartsWith("NO DESIGN MEETS EVERY LIMIT. Nearest miss: hang points 440 mm apart", answer.Headline);
        Assert.Contains(
            "It violates: largest effort in any settled phase at most 0.4; this design has 0.453; and smallest twist margin in any phase "
                + "at least 5; this design has 4.746.",
            answer.Headline);
    }

    [Fact]
    public void When_nothing_can_fly_the_most_frequent_reason_comes_first() =>
        Assert.Contains("launch: the risers twist (1,200 designs)", RunAnswer.Of(ReportFixture.NothingFeasible(null)).Headline);
}
