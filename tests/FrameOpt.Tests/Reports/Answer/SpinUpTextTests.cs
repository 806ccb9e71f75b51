using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Reports.Answer;

/// <summary>How quickly the throttle may be opened, in words.</summary>
public class SpinUpTextTests
{
    private static readonly SpinUp found = new(0, 3, 4.75, 2458, 62.6, 2.4, 12.8, 1.3924);

    [Fact]
    public void Time_is_rounded_up_and_says_what_happens_when_it_is_faster() => Assert.Equal(
        "Open the throttle over 1.4 s or longer: faster, the torque of spinning up the propeller takes the twist margin in launch below 3. "
            + "Held steady it is 4.75.",
        Verdict(found));

    [Fact]
    public void Steady_torque_that_is_too_much_says_that_time_does_not_help() => Assert.Equal(
        "The steady torque of launch alone leaves a twist margin of 2.7, below 3: opening the throttle slowly does not help.",
        Verdict(found with { SteadyMargin = 2.7, ExtraNewtonMetres = 0, ShortestSeconds = double.PositiveInfinity }));

    [Fact]
    public void Engine_that_cannot_give_the_torque_is_named_with_what_it_gives() => Assert.Equal(
        "However quickly the throttle is opened, the torque of spinning up the propeller keeps the twist margin in launch at 3 or above: "
            + "the engine gives 62.6 N·m at the propeller at most, and the margin is then 4.6, 4.75 held steady.",
        Verdict(found with { EngineMargin = 4.6, ExtraNewtonMetres = double.PositiveInfinity, ShortestSeconds = 0 }));

    [Fact]
    public void Unknown_inertia_is_named_with_its_key()
    {
        var unknown = found with { ExtraNewtonMetres = double.NaN, ShortestSeconds = double.NaN };
        Assert.Equal(
            "How quickly the throttle may be opened in launch before the twist margin falls below 3 cannot be told: the study does not "
                + "give the propeller's moment of inertia (`machine.propeller.polar_inertia`), and at the most the engine gives, 62.6 N·m "
                + "at the propeller, it is 2.4.",
            Verdict(unknown));
        Assert.EndsWith("(`machine.propeller.polar_inertia`) or the engine's torque.", Verdict(unknown with { EngineMargin = double.NaN }));
    }

    // The bound is the study's own; without one it is 1, below which the risers twist.
    [Theory]
    [InlineData(null, 1)]
    [InlineData(2.5, 2.5)]
    public void Bound_is_the_limit_of_the_study_and_else_1(double? limit, double least)
    {
        var result = ReportFixture.Report().Result;
        var study = result.Study with
        {
            Limits = limit is { } bound
                ? [new StudyLimit(new Response.OfMission(MissionQuantity.TwistMarginWorst), false, bound, null)] : [],
        };
        Assert.Equal(least, SpinUpSection.Find(result with { Study = study }, result.Chosen!)!.LeastMargin);
        var section = RunAnswer.Of(result with { Study = study }).Sections.Single(own => own.Title == SpinUpSection.Title);
        Assert.Contains("leaves out the engine's own inertia and the overshoot", section.Lines[1]);
    }

    private static string Verdict(SpinUp spin) => SpinUpSection.Verdict(ReportFixture.Study(), spin);
}
