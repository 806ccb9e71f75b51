using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Tests.StudyFile.Sections;

/// <summary>The ways a study gives the wing's answer to a yaw moment and the hang points of the machine, and what it says of a study
/// written for an earlier version.</summary>
public class WingReadingTests
{
    private const string Given = "  yaw_leverage: { speed_factor: 0.17 s/m, twist_share: 0.5 }";
    private const string SpeedFactor = "speed factor of the yaw leverage";
    private const string TwistShare = "twist share of the yaw leverage";

    [Fact]
    public void Yaw_leverage_may_be_one_number_for_every_phase()
    {
        var study = Wing("  yaw_leverage: 1.5");
        Assert.Equal(1.5, Assert.IsType<YawLeverage.Constant>(study.Wing.YawLeverage).Value);
        Assert.Empty(Listed(study));
    }

    [Theory]
    [InlineData("  yaw_leverage: { speed_factor: 0.2 s/m, twist_share: 80 % }", 0.2, 0.8)]
    [InlineData("  yaw_leverage: { speed_factor: 0.2 s/m }", 0.2, 0.5, TwistShare)]
    [InlineData("  yaw_leverage: { twist_share: 1 }", 0.17, 1.0, SpeedFactor)]
    [InlineData("  yaw_leverage: {}", 0.17, 0.5, SpeedFactor, TwistShare)]
    [InlineData("  #", 0.17, 0.5, SpeedFactor, TwistShare)]
    public void What_the_yaw_leverage_leaves_out_is_assumed_and_listed(string line, double factor, double share, params string[] assumed)
    {
        var study = Wing(line);
        var read = Assert.IsType<YawLeverage.FromSpeed>(study.Wing.YawLeverage);
        Assert.Equal((factor, share), (read.SpeedFactor, read.TwistShare));
        Assert.Equal(assumed, Listed(study).Select(assumption => assumption.What));
    }

    [Fact]
    public void Assumed_leverage_names_its_ranges_and_the_source_of_the_speed_factor()
    {
        var assumed = Listed(Wing("  #"));
        Assert.Equal(["0.17 s/m", "0.5"], assumed.Select(assumption => assumption.Value));
        Assert.Contains("assumption, range 0.1 to 0.27 s/m; Belloc 2015", assumed[0].Source);
        Assert.Contains("assumption, range 0 (wing rigid in torsion) to 1 (each half follows its riser)", assumed[1].Source);
    }

    [Theory]
    [InlineData("  sideslip: { roll: -0.667, yaw: 0.32, twist_share: 0 }", 0.0)]
    [InlineData("  sideslip: { roll: -0.667, yaw: 0.32 }", 0.5, TwistShare)]
    public void Slopes_of_a_sideslip_take_the_place_of_the_speed_factor(string line, double share, params string[] assumed)
    {
        var study = Wing(line);
        var read = Assert.IsType<YawLeverage.FromSideslip>(study.Wing.YawLeverage);
        Assert.Equal((-0.667, 0.32, share), (read.Roll, read.Yaw, read.TwistShare));
        Assert.Equal(assumed, Listed(study).Select(assumption => assumption.What));
    }

    [Theory]
    [InlineData("  sideslip: { roll: -0.667, yaw: 0 }")]
    [InlineData("  sideslip: { roll: -0.667, yaw: -0.1 }")]
    public void Wing_that_does_not_turn_into_a_sideslip_is_refused_with_the_reason(string line)
    {
        var mistake = WorkedStudyText.OneDiagnostic(WorkedStudyText.With(Given, line));
        Assert.Equal(44, mistake.Line);
        Assert.Contains("wing.sideslip.yaw must be above 0: a wing that does not turn its nose into a sideslip", mistake.Text);
        Assert.Contains("or leave sideslip out", mistake.Fix);
    }

    [Fact]
    public void Yaw_leverage_beside_a_sideslip_is_refused()
    {
        var mistake = WorkedStudyText.OneDiagnostic(
            WorkedStudyText.With(Given, Given + "\n  sideslip: { roll: -0.667, yaw: 0.32 }"));
        Assert.Contains("wing gives both yaw_leverage and sideslip.", mistake.Text);
        Assert.Equal("Keep one of the two.", mistake.Fix);
    }

    // The study of an earlier version: its one old key, and a second mistake far below.
    [Fact]
    public void Old_key_is_answered_by_what_replaced_it_and_the_rest_is_still_read()
    {
        var old = WorkedStudyText.With(Given, "  yaw_damping: 0.07");
        var mistake = WorkedStudyText.OneDiagnostic(old);
        Assert.Equal(44, mistake.Line);
        Assert.Contains("The key `yaw_damping` under wing is gone.", mistake.Text);
        Assert.Contains("remove the key", mistake.Fix);

        var both = WorkedStudyText.Read(old.Replace("method: exhaustive", "method: genetic"));
        Assert.Equal([44, 68], both.Diagnostics.Select(diagnostic => diagnostic.Line));
    }

    [Fact]
    public void Riser_coupling_left_out_comes_from_the_lines_and_names_its_range()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("  riser_coupling: {", "  # {"));
        Assert.IsType<RiserCoupling.FromLines>(study.Wing.RiserCoupling);
        var listed = Assert.Single(study.Assumptions, assumption => assumption.What == "riser coupling length");
        Assert.Contains("range 0.05 to 1 m, even in its logarithm", listed.Source);
    }

    [Fact]
    public void Roll_restoring_left_out_serves_the_turn_rate_only()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("  roll_restoring: 0.05", "  #"));
        Assert.Equal(0.05, study.Wing.RollRestoring);
        var listed = Assert.Single(
            study.Assumptions, assumption => assumption.What == "roll restoring coefficient, for the indicative turn rate only");
        Assert.Contains("Toglia and Vendittelli 2010, Table 2", listed.Source);
    }

    [Fact]
    public void Arms_are_rigid_unless_a_study_says_that_they_move()
    {
        const string hangLine = "  hang_line: {";
        Assert.Equal(RiserArms.Rigid, Machine("").Arms);
        Assert.Equal(RiserArms.Rigid, Machine("  arms: rigid\n").Arms);
        Assert.Equal(RiserArms.Moving, Machine("  arms: moving\n").Arms);
        var assumed = Assert.Single(WorkedStudyText.Right(WorkedStudyText.Text).Assumptions,
            listed => listed.What == "arms that the risers hang from");
        Assert.Equal("rigid, or none", assumed.Value);
        Assert.Contains("write `arms: moving`", assumed.Source);
        Assert.DoesNotContain(
            WorkedStudyText.Right(WorkedStudyText.With(hangLine, $"  arms: rigid\n{hangLine}")).Assumptions,
            listed => listed.What == "arms that the risers hang from");

        static Machine Machine(string line) =>
            WorkedStudyText.Right(WorkedStudyText.With(hangLine, line + hangLine)).Machine;
    }

    private static Study Wing(string line) => WorkedStudyText.Right(WorkedStudyText.With(Given, line));

    private static IReadOnlyList<Assumption> Listed(Study study) =>
        [.. study.Assumptions.Where(assumption => assumption.What.Contains("yaw leverage", StringComparison.Ordinal))];
}
