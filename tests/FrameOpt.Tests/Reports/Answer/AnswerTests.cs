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
            "cruise (55 % of the mission): 0.5 N·m, hardly any pull: the wing's own trim decides; lean 1 mm to the right; "
                + "effort 0.01 of the largest lean; left riser carries 2 N (0.2 kgf) more",
            words);
        Assert.Contains("glide (not weighted): 18.5 N·m, steers left; lean 36 mm to the right; effort 0.45 of the largest lean", words);
        Assert.Contains("accelerated (20 % of the mission): 6 N·m, steers right", words);
    }

    // Worked balance: twist 1/4.745608 rad = 12.07 deg; 533.6965 - 456.991 N = 77 N; 16.90297 + 11.44919 = 28.35216 N·m.
    [Fact]
    public void Launch_that_has_not_settled_is_told_by_twist_loads_and_parts_and_not_by_an_effort()
    {
        var lines = Description(ReportFixture.Report().Result, "Residual torque").Split('\n');
        var launch = lines.Single(line => line.StartsWith("launch", StringComparison.Ordinal));
        Assert.StartsWith(
            "launch (5 % of the mission), first seconds: risers twisted 12.1 deg, nose right (twist margin 4.75); "
                + "right riser carries 77 N (7.8 kgf) more; roll part 16.9 N·m right, yaw part 11.4 N·m right, together 28.4 N·m right",
            launch);
        Assert.DoesNotContain("effort", launch);
        Assert.StartsWith("CAUTION: in the first ten seconds of launch nothing is steady", lines[0]);
        Assert.Single(lines, line => line.Contains("nothing is steady", StringComparison.Ordinal));
    }

    [Fact]
    public void Phase_that_no_lean_cures_says_so_in_place_of_an_effort()
    {
        var result = ReportFixture.Report().Result;
        var beyond = result.Chosen!.With(4, PhaseQuantity.PendulumShare, 0.1234)
            .With(4, PhaseQuantity.Lean, double.PositiveInfinity).With(4, PhaseQuantity.Effort, double.PositiveInfinity);
        var words = Description(result with { Chosen = beyond }, "Residual torque");
        Assert.Contains("glide (not weighted): 18.5 N·m, steers left; NO LEAN CURES IT", words);
        Assert.Contains("pendulum share 0.123", words);
        Assert.DoesNotContain("unbounded", words);
    }

    // Worked balance, cruise: M_w -0.44725, Gamma N_w 2.84997 and wing weight -2.83740 N·m, N_w 2.642761, V 10.7333 m/s. Of Gamma,
    // 1.078405 = 0.17 V - 0.746256, the second part is that of a twist share of 0.5. Low leverage: (0.102 V - 1.492512) N_w = -1.05107;
    // high: 0.272 V N_w = 7.71543.
    [Fact]
    public void Residual_with_every_wing_stands_beside_its_three_parts()
    {
        var result = ReportFixture.Report().Result;
        var table = Table(result, "Influence of the wing");
        Assert.Equal(
            [
                "phase", "roll part", "yaw part", "wing weight", "low leverage", "as in the study", "high leverage", "soft coupling",
                "stiff coupling",
            ],
            table.Headers);
        var cruise = table.Rows[2];
        Assert.Equal(
            ["cruise", "0.4 N·m left", "2.8 N·m right", "2.8 N·m left", "4.3 N·m left", "0.4 N·m left", "4.4 N·m right"], cruise.Take(7));
        foreach (var wingCase in new[] { WingCase.SoftCoupling, WingCase.StiffCoupling })
            Assert.Equal(
                SideText.Moment(result.Scenarios[(int)wingCase].Chosen.Phases[2][PhaseQuantity.Residual]), cruise[4 + (int)wingCase]);
        Assert.Equal("not yet", table.Rows[0][3]);
    }

    // Worked balance: leverage from 0.9199517 in the launch to 1.641894 accelerated; coupling 330 mm at 440 mm, soft 0.05 m, stiff 1 m.
    [Fact]
    public void Leverage_coupling_and_best_offset_of_every_wing_stand_below()
    {
        var rows = Table(ReportFixture.Report().Result, "Influence of the wing").Rows;
        string[] Row(string name) => [.. rows.Single(row => row[0] == name).Skip(4)];
        var leverages = Row("yaw leverage");
        Assert.Equal("0.92 to 1.64", leverages[1]);
        Assert.Equal([leverages[1], leverages[1]], leverages[3..]);
        Assert.Equal(["330.0 mm", "330.0 mm", "330.0 mm", "50.0 mm", "1,000.0 mm"], Row("riser coupling"));
        Assert.Equal(
            ["25 mm right", "25 mm right", "21 mm right", "21 mm right", "21 mm right"], Row("offset of the best design there"));
    }

    [Fact]
    public void The_best_design_with_every_wing_stands_in_full()
    {
        var lines = Description(ReportFixture.Report().Result, "The best design if the wing is different").Split('\n');
        Assert.Equal(WingCases.All.Count, lines.Length);
        Assert.StartsWith(
            "Low leverage: hang points 440 mm apart; both moved 25 mm to the pilot's right; "
                + "hang line 150 mm above the datum; thrust line straight ahead.",
            lines[0]);
        Assert.StartsWith("High leverage: hang points 430 mm apart", lines[2]); // the fixture's twelfth design: 420 + 5 x (11 mod 9)
    }

    [Fact]
    public void Wing_with_which_the_pilot_cannot_hold_the_design_is_named_first()
    {
        var result = ReportFixture.Report().Result;
        var scenarios = result.Scenarios.ToArray();
        scenarios[3] = scenarios[3] with
        {
            Chosen = scenarios[3].Chosen.With(0, PhaseQuantity.Effort, 2).With(1, PhaseQuantity.Effort, 1.5)
                .With(4, PhaseQuantity.Effort, double.PositiveInfinity).With(4, PhaseQuantity.Lean, double.PositiveInfinity),
        };
        Assert.Contains(
            "Soft coupling: the pilot cannot hold this design in climb (effort 1.50) and glide (no lean cures it).",
            Description(result with { Scenarios = scenarios }, "Influence of the wing"));
    }

    // Worked balance: body_yaw 9.6 deg at most, body_roll 8.5 deg.
    [Fact]
    public void A_body_turned_too_far_for_the_model_is_a_caution()
    {
        var result = ReportFixture.Report().Result;
        Assert.DoesNotContain("CAUTION: the body's", Description(result, "Residual torque"));
        Assert.Contains(
            "CAUTION: the body's yaw in climb is 16.5 deg to the right: the model assumes small angles",
            Description(result with { Chosen = result.Chosen!.With(1, PhaseQuantity.BodyYaw, 16.5) }, "Residual torque"));
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

    // The engine of the worked machine turns its propeller no faster than its table ends: 8,500/2.9 = 2,931 rpm.
    [Fact]
    public void Band_beyond_full_throttle_is_said_to_be_out_of_reach()
    {
        var result = ReportFixture.Report().Result;
        Assert.DoesNotContain("out of reach", Description(result, "Balanced band"));
        var beyond = result with { Bands = [new BalancedBand(1480, 2932)] };
        Assert.Contains("what lies above is out of reach", Description(beyond, "Balanced band"));
    }

    [Fact]
    public void Limits_that_bind_are_told_from_those_met_with_room()
    {
        var rows = Table(ReportFixture.Report().Result, "Limits").Rows;
        Assert.Equal(["smallest twist margin in any phase at least 3", "4.75", "met with margin"], rows[0].Take(3));
        Assert.Equal("70,000", rows[0][^1]);
        // 36.21829 / 80 = 0.4527: a millimetre more of offset breaks 0.455, as the law below says.
        Assert.Equal(["largest effort in any settled phase at most 0.455", "0.45", "NOT BUILDABLE TO TOLERANCE"], rows[1].Take(3));
        Assert.Equal("45,000", rows[1][^1]);
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
