using FrameOpt.Model.Mission;
using FrameOpt.Reports.Page;

namespace FrameOpt.Tests.Reports.Page;

/// <summary>What the test card expects of each phase. Figures: the worked balance, design 440 mm, 25 mm, 150 mm, 0 deg
/// (References/README.md).</summary>
public class TestCardTests
{
    private static readonly DesignEvaluation design = ReportFixture.Report(1).FrontEvaluations[0];

    // 1/4.745608 rad = 12.07 deg; 533.6965 - 456.991 N = 77 N.
    [Fact]
    public void Launch_that_has_not_settled_is_expected_by_twist_and_load_difference()
    {
        var launch = Step("launch", design);
        Assert.Contains(
            "Hands up: 28.5 N·m, steers right. Risers twisted 12.1 deg, nose right (twist margin 4.75); right riser carries 77 N (7.8 kgf) "
                + "more. Nothing is steady for the first ten seconds.",
            launch.Expected);
        Assert.DoesNotContain("effort", launch.Expected);
        Assert.DoesNotContain("DO NOT FLY", Step("launch", design.With(0, PhaseQuantity.Effort, 2)).Action);
    }

    [Fact]
    public void Settled_phase_is_expected_by_its_lean()
    {
        Assert.Contains("Hands up: 18.5 N·m, steers left. Held straight by: lean 36 mm to the right (effort 0.45 of 80.0 mm).",
            Step("glide", design).Expected);
        Assert.StartsWith("DO NOT FLY THIS PHASE", Step("glide", design.With(4, PhaseQuantity.Effort, 1.01)).Action);
    }

    [Fact]
    public void Phase_that_no_lean_cures_is_not_to_be_flown()
    {
        var beyond = Step("climb", design.With(1, PhaseQuantity.Lean, double.PositiveInfinity)
            .With(1, PhaseQuantity.Effort, double.PositiveInfinity));
        Assert.StartsWith("DO NOT FLY THIS PHASE", beyond.Action);
        Assert.Contains("No lean cures it: hold it with the brake, and land.", beyond.Expected);
    }

    private static TestCardStep Step(string phase, DesignEvaluation of) =>
        TestCardSteps.Of(ReportFixture.Study(), of).Single(step => step.Title == $"Flight: {phase}");
}
