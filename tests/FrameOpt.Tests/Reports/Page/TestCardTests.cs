using System.Globalization;
using System.Text.RegularExpressions;
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

    // 113 kg hang: 113 x 9.80665 = 1108.15 N. The worked propeller turns counter-clockwise, so its reaction pushes the right side down.
    [Fact]
    public void Ground_steps_say_what_to_hang_from_who_stands_where_and_what_to_expect()
    {
        var steps = TestCardSteps.Of(ReportFixture.Study(), design).ToList();
        Assert.Contains("by hand only with the ignition off and the lead pulled off the spark plug", steps[0].Action);
        Assert.Contains("Capacity of each scale at least 113 kg (1,109 N)", steps[1].Rating);
        Assert.Contains("rated for lifting at least 226 kg (2,217 N)", steps[1].Rating);
        Assert.Contains("changes it by 3.5 N, which is 0.29 mm of seat for each newton", steps[1].AbortCriterion);
        Assert.Contains("Nobody sits in it.", steps[2].Action);
        Assert.Contains("Nobody stands in the plane of the propeller", steps[2].Action);
        Assert.Contains("the LEFT tie-down strap, which keeps that side from rising, tightens", steps[2].Expected);
        Assert.Matches(@"Full power standing still: about [\d,]+ rpm \(engine [\d,]+ rpm\), at 300 m altitude", steps[2].Expected);
    }

    // 2.9 crank turns for each of the propeller.
    [Fact]
    public void Speed_of_the_engine_stands_beside_that_of_the_propeller()
    {
        foreach (var step in TestCardSteps.Of(ReportFixture.Study(), design).Where(step => step.Expected.Contains("Propeller at")))
        {
            var rpm = Regex.Match(step.Expected, @"Propeller at ([\d,]+) rpm \(engine ([\d,]+) rpm\)").Groups;
            double Number(int group) => double.Parse(rpm[group].Value, NumberStyles.AllowThousands, CultureInfo.InvariantCulture);
            Check.Close(2.9 * Number(1), Number(2), absolute: 2.9 * 0.5 + 0.5, because: "both are printed to a whole rpm");
        }
    }

    private static TestCardStep Step(string phase, DesignEvaluation of) =>
        TestCardSteps.Of(ReportFixture.Study(), of).Single(step => step.Title == $"Flight: {phase}");
}
