using FrameOpt.Studies;

namespace FrameOpt.Tests.StudyFile.Sections;

/// <summary>Which phases a study calls settled, and which are taken so.</summary>
public class SettledPhaseTests
{
    private const string Launch = "power: full throttle, ";

    [Fact]
    public void Full_throttle_is_taken_as_not_settled_and_everything_else_as_settled_and_both_are_listed()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.Text);
        Assert.Equal([false, true, true, true, true], study.Mission.Select(phase => phase.IsSettled));
        Assert.StartsWith("no", Listed(study, "settled in launch").Value);
        Assert.StartsWith("yes", Listed(study, "settled in climb, cruise, accelerated, glide").Value);
        Assert.Contains("sway of the wing takes about 7 s", Listed(study, "settled in launch").Source);
    }

    [Fact]
    public void What_a_study_says_of_a_phase_counts_and_is_no_assumption()
    {
        var lasting = WorkedStudyText.Right(WorkedStudyText.With(Launch, Launch + "settled: true, "));
        Assert.All(lasting.Mission, phase => Assert.True(phase.IsSettled));
        Assert.DoesNotContain(lasting.Assumptions, assumption => assumption.What.Contains("launch", StringComparison.Ordinal)
            && assumption.What.StartsWith("settled", StringComparison.Ordinal));

        var sudden = WorkedStudyText.Right(WorkedStudyText.With("climb 1.8 m/s, ", "climb 1.8 m/s, settled: false, "));
        Assert.Equal([false, false, true, true, true], sudden.Mission.Select(phase => phase.IsSettled));
        Listed(sudden, "settled in cruise, accelerated, glide");
    }

    [Fact]
    public void Mission_without_a_settled_phase_has_no_effort_to_judge_by_and_is_refused()
    {
        var text = WorkedStudyText.Text.Replace("altitude: 300 m }", "altitude: 300 m, settled: false }");
        var mistake = WorkedStudyText.OneDiagnostic(text);
        Assert.Contains("No phase of the mission is settled", mistake.Text);
        Assert.Contains("`settled: false` only for the first seconds of a launch", mistake.Fix);
    }

    // The glide that a mission without the engine off is given is settled.
    [Fact]
    public void Mission_of_a_launch_alone_is_judged_by_the_glide_that_is_added()
    {
        var text = WorkedStudyText.Text
            .Replace("  glide:       { weight: 0, power: engine off, altitude: 300 m }\n", "")
            .Replace("altitude: 300 m }", "altitude: 300 m, settled: false }");
        Assert.Equal([false, false, false, false, true], WorkedStudyText.Right(text).Mission.Select(phase => phase.IsSettled));
    }

    // Section 6 of docs/model.md: effort is without bound where no lean cures the turn, and what is without bound cannot be ranked.
    [Fact]
    public void Effort_as_an_objective_gets_a_limit_that_keeps_what_no_lean_cures_out_of_the_ranking()
    {
        const string limit = "\n  - { response: effort_worst, at_most: 0.6 }";
        var minimised = WorkedStudyText.With("- minimise: residual_rms", "- minimise: effort_worst")
            .Replace("weights: { residual_rms: 3", "weights: { effort_worst: 3");
        Assert.Equal(2, WorkedStudyText.Right(minimised).Limits.Count);
        var unlimited = WorkedStudyText.Right(minimised.Replace(limit, ""));
        Assert.Equal("effort_worst", unlimited.Limits[^1].Response.Name);
        Assert.True(double.IsFinite(unlimited.Limits[^1].AtMost!.Value));
        Assert.Contains("no lean cures the turn", Listed(unlimited, "limit on effort_worst").Source);
    }

    private static Assumption Listed(Study study, string what) => Assert.Single(study.Assumptions, assumption => assumption.What == what);
}
