using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.Tests.Model;

namespace FrameOpt.Tests.Reports.Answer;

/// <remarks>Figures: the worked balance, design 440 mm, 25 mm, 150 mm, 0 deg (References/README.md), rounded as a reader sees
/// them.</remarks>
public class AnswerTests
{
    private static string Description(StudyResult result, string title) =>
        string.Join("\n", RunAnswer.Of(result).Sections.Single(section => section.Title.StartsWith(title, StringComparison.Ordinal)).Lines);

    private static AnswerTable Table(StudyResult result, string title) =>
        RunAnswer.Of(result).Sections.Single(section => section.Title.StartsWith(title, StringComparison.Ordinal)).Table!;

    [Fact]
    public void Each_phase_stands_in_words_and_numbers()
    {
        var words = Description(ReportFixture.Report().Result, "Residual torque");
        Assert.Contains(
            "cruise (55 % of the mission): 3.7 N·m, steers right; lean 5.6 mm to the left; "
                + "effort 0.07 of the largest lean; left riser carries 2 N (0.2 kgf) more",
            words);
        Assert.Contains("glide (not weighted): 18.8 N·m, steers left; lean 37.0 mm to the right; effort 0.46 of the largest lean", words);
        Assert.Contains("accelerated (20 % of the mission): 15.4 N·m, steers right", words);
    }

    [Fact]
    public void Residuals_at_three_yaw_leverages_stand_beside_their_roll_and_yaw_parts()
    {
        var table = Table(ReportFixture.Report().Result, "Influence of the yaw leverage");
        Assert.Equal(
            [
                "phase", "roll part", "yaw part", "residual, leverage 0.2",
                "residual, leverage 0.97 to 2.66, as in the study (from the wing's coefficients)", "residual, leverage 1.6",
            ],
            table.Headers);
        // Worked balance: M_w -0.44725, N_w 2.64276; R = M_w + 0.2 N_w = 0.0813 and M_w + 1.6 N_w = 3.7812.
        Assert.Equal(["cruise", "0.4 N·m left", "2.6 N·m right", "0.1 N·m right", "3.7 N·m right", "3.8 N·m right"], table.Rows[2]);
        Assert.Equal("offset of the best design at this leverage", table.Rows[^1][0]);
        Assert.Equal("25 mm right", table.Rows[^1][3]);
    }

    [Fact]
    public void The_best_design_at_each_yaw_leverage_stands_in_full()
    {
        var lines = Description(ReportFixture.Report().Result, "The best design at each").Split('\n');
        Assert.Equal(3, lines.Length);
        Assert.StartsWith(
            "At leverage 0.2: hang points 440 mm apart; both moved 25 mm to the pilot's right; "
                + "hang line 150 mm above the datum; thrust line straight ahead.",
            lines[0]);
        Assert.StartsWith("At leverage 1.6: hang points 430 mm apart", lines[2]); // the fixture's twelfth design: 420 + 5 x (11 mod 9)
    }

    // Worked balance: yaw leverage 2 V² 0.05 / (9.80665 x 10.8 x 0.07), from 0.97 at 8.5 m/s to 2.66 at 14.04 m/s.
    [Fact]
    public void A_leverage_outside_the_range_compared_is_told_with_its_values()
    {
        var words = Description(ReportFixture.Report().Result, "Influence of the yaw leverage");
        Assert.Contains("The study's own leverage, 0.97 to 2.66 over the phases, lies outside 0.2 to 1.6 in accelerated", words);
    }

    // Worked balance: body_yaw 16.46711 deg in launch, body_roll 4.43 deg at most.
    [Fact]
    public void A_body_turned_too_far_for_the_model_is_a_caution()
    {
        var result = ReportFixture.Report().Result;
        var words = Description(result, "Residual torque");
        Assert.Contains("CAUTION: the body's yaw in launch is 16.5 deg to the right: the model assumes small angles", words);
        Assert.DoesNotContain("the body's roll", words);
        Assert.Contains(
            "CAUTION: the body's roll in climb is 15.5 deg to the left",
            Description(result with { Chosen = result.Chosen!.With(1, PhaseQuantity.BodyRoll, -15.5) }, "Residual torque"));
    }

    [Fact]
    public void When_nothing_can_fly_no_empty_table_of_limits_is_shown()
    {
        Assert.Single(RunAnswer.Of(ReportFixture.Report().Result).Sections, section => section.Title == "Limits");
        Assert.DoesNotContain(RunAnswer.Of(ReportFixture.NothingFeasible(null)).Sections, section => section.Title == "Limits");
    }

    [Fact]
    public void Limits_that_bind_are_told_from_those_met_with_room()
    {
        var rows = Table(ReportFixture.Report().Result, "Limits").Rows;
        Assert.Equal(["twist_margin_worst at least 3", "3.47", "met with margin", "70,000"], rows[0]);
        // 67.45186 / 80 = 0.8431, within 1 % of 0.85.
        Assert.Equal(["effort_worst at most 0.85", "0.84", "at the limit", "45,000"], rows[1]);
    }

    [Fact]
    public void What_to_check_before_flight_is_in_order()
    {
        var lines = Description(ReportFixture.Report().Result, "Before flight").Split('\n');
        Assert.Equal(["1. Rotation", "2. Hang check, engine off", "3. Tied-down run", "4. Flight"],
            lines.Select(line => line[..line.IndexOf(':')]));
    }

    [Fact]
    public void A_baseline_that_cannot_fly_is_named_with_its_reason()
    {
        var result = ReportFixture.Report().Result;
        var failing = result with { Baseline = ReportFixture.Failing(ReportFixture.Baseline, FailureKind.SlackRiser, 2) };
        Assert.Contains("It cannot fly the mission: cruise: a riser goes slack", Description(failing, "What it costs"));
        Assert.All(Table(failing, "What it costs").Rows, row => Assert.Equal("cannot fly", row[^1]));
    }

    [Fact]
    public void The_cautions_of_every_first_page_are_there()
    {
        var words = Description(ReportFixture.Report().Result, "Cautions");
        Assert.Contains(Cautions.Danger, words);
        Assert.Contains(Cautions.WingUncertainty, words);
        Assert.Contains("line 12", words);
    }
}
