using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Tests.Reports;

namespace FrameOpt.Tests.StudyFile.Sections;

/// <summary>Objectives and limits: which responses, which sign, which unit, and what they need.</summary>
public class ResponseNameTests
{
    public static TheoryData<string> Everything =>
    [
        .. ResponseCatalogue.OfPhases.Select(entry => $"{entry.Name}[accelerated]"),
        .. ResponseCatalogue.OfMissions.Select(entry => entry.Name),
    ];

    [Theory]
    [MemberData(nameof(Everything))]
    public void Every_response_may_be_an_objective_and_a_limit(string name)
    {
        var text = WorkedStudyText.With("minimise: pitch_swing", $"minimise: {name}").Replace(", pitch_swing: 1", $", {name}: 1")
            .Replace("search: {", "strength: { limit_load_factor: 6, overhang: 120 mm }\nsearch: {");
        if (name == "residual_rms")
            text = WorkedStudyText.Text;
        var study = WorkedStudyText.Right(text);
        Assert.Contains(study.Objectives, objective => objective.Response.Name == name);
    }

    [Theory]
    [InlineData("residual[cruise]", true)]
    [InlineData("lean[cruise]", true)]
    [InlineData("load_difference[cruise]", true)]
    [InlineData("turn_rate[cruise]", true)]
    [InlineData("body_yaw[cruise]", true)]
    [InlineData("body_pitch[cruise]", false)]
    [InlineData("torque[cruise]", false)]
    [InlineData("effort[cruise]", false)]
    public void What_goes_to_either_side_is_ranked_by_its_size(string name, bool magnitude)
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("minimise: pitch_swing", $"minimise: {name}").Replace(
            ", pitch_swing: 1", $", {name}: 1"));
        Assert.Equal(magnitude, study.Objectives[2].Magnitude);
    }

    [Theory]
    [InlineData("response: residual[cruise], at_most: 5 N·m", true, null, 5.0)]
    [InlineData("response: residual[cruise], at_least: -5 N·m", false, -5.0, null)]
    [InlineData("response: residual[cruise], at_least: -5 N·m, at_most: 2 N·m", false, -5.0, 2.0)]
    [InlineData("response: lean[cruise], at_most: 4 cm", true, null, 40.0)]
    [InlineData("response: lean[cruise], at_most: 30 mm", true, null, 30.0)]
    [InlineData("response: load_difference_worst, at_most: 10 kgf", false, null, 98.0665)]
    [InlineData("response: body_pitch[climb], at_most: 7 deg", false, null, 7.0)]
    [InlineData("response: airspeed[climb], at_least: 36 km/h", false, 10.0, null)]
    [InlineData("response: turn_rate[climb], at_most: 2 deg/s", true, null, 2.0)]
    [InlineData("response: rpm[climb], at_most: 2400 rpm", false, null, 2400.0)]
    [InlineData("response: effort_worst, at_most: 0.6", false, null, 0.6)]
    public void Bound_is_kept_in_the_unit_of_its_response(string limit, bool magnitude, double? atLeast, double? atMost)
    {
        var read = WorkedStudyText.Right(WorkedStudyText.With("response: effort_worst, at_most: 0.6", limit)).Limits[1];
        Assert.Equal(magnitude, read.Magnitude);
        Same(atLeast, read.AtLeast);
        Same(atMost, read.AtMost);
    }

    [Fact]
    public void Resolution_is_kept_in_the_unit_of_its_response()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.With("minimise: residual_rms", "minimise: residual_rms\n    resolution: 0.5 Nm"));
        Assert.Equal(0.5, study.Objectives[0].Resolution);
    }

    [Theory]
    [InlineData("hang_point_load", "needs strength")]
    [InlineData("arm_moment", "needs strength")]
    public void Loads_for_strength_need_their_setting(string name, string what) =>
        Assert.Contains(what, WorkedStudyText.OneDiagnostic(WorkedStudyText.With("minimise: pitch_swing", $"minimise: {name}").Replace(
            ", pitch_swing: 1", $", {name}: 1")).Message);

    [Fact]
    public void Distance_from_baseline_needs_a_baseline()
    {
        var text = WorkedStudyText.With("minimise: pitch_swing", "minimise: distance_from_baseline").Replace(
            ", pitch_swing: 1", ", distance_from_baseline: 1").Replace("baseline: {", "# {");
        Assert.Contains("needs baseline", WorkedStudyText.OneDiagnostic(text).Message);
    }

    [Fact]
    public void Full_throttle_and_torque_margins_need_an_engine()
    {
        var without = System.Text.RegularExpressions.Regex.Replace(WorkedStudyText.Text, "  engine:\n(    [^\n]*\n)+", "");
        Assert.Contains("phase launch is at full throttle", WorkedStudyText.OneDiagnostic(without).Message);
        var demand = without.Replace("full throttle", "level");
        Assert.Null(WorkedStudyText.Right(demand).Machine.Engine);
        Assert.Contains("needs machine.engine", WorkedStudyText.OneDiagnostic(
            demand.Replace("response: twist_margin_worst", "response: torque_margin_worst")).Message);
        Assert.Contains("needs machine.engine", WorkedStudyText.OneDiagnostic(
            demand.Replace("response: twist_margin_worst", "response: \"torque_margin[cruise]\"")).Message);
    }

    private static void Same(double? expected, double? actual)
    {
        Assert.Equal(expected is null, actual is null);
        if (expected is { } wanted)
            Check.Close(wanted, actual!.Value, relative: 1e-14, because: "rounding of one conversion");
    }
}
