using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.StudyFile.Sections;

/// <summary>Responses over cases, as a study file writes them.</summary>
public class CaseResponseReadingTests
{
    public static TheoryData<string> Names =>
    [
        "mean of effort_worst", "standard deviation of residual[cruise]", "worst of twist_margin_worst", "percentile 90 of residual_rms",
        "percentile 97.5 of residual_rms", "mean of worst 10 % of effort_worst", "share of cases with twist_margin_worst at least 3",
        "share of cases with residual[cruise] at most 10 N·m", "share of cases with every limit met",
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void Every_form_is_read_and_named_as_it_was_written(string name)
    {
        var study = WorkedStudyText.Right(WorkedStudyText.Text.Replace("minimise: pitch_swing", $"minimise: {name}")
            .Replace("pitch_swing:", $"\"{name}\":"));
        Assert.Equal(name, study.Objectives[^1].Response.Name);
        Assert.True(study.Objectives[^1].Response.IsOverCases);
    }

    [Theory]
    [InlineData("percentile 100 of residual_rms", "above 0 and below 100 %")]
    [InlineData("median of residual_rms", "There is no response")]
    [InlineData("mean of nothing_known", "There is no response `nothing_known`")]
    [InlineData("worst of body_pitch[cruise]", "no end of it is the worst")]
    [InlineData("mean residual_rms", "not the name of a response over cases")]
    [InlineData("share of cases with residual[cruise] at most 10", "unit")]
    public void What_is_wrong_is_said(string name, string message)
    {
        var read = WorkedStudyText.Read(WorkedStudyText.Text.Replace("minimise: pitch_swing", $"minimise: {name}"));
        Assert.Contains(read.Diagnostics, diagnostic => (diagnostic.Message + diagnostic.Fix).Contains(message, StringComparison.Ordinal));
    }

    [Fact]
    public void Share_is_bounded_in_per_cent_and_a_limit_may_be_over_cases()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.Text.Replace(
            "limits:\n", "limits:\n  - { response: share of cases with every limit met, at_least: 80 % }\n"));
        Assert.Contains(study.Limits, limit => limit.Response is Response.LimitsMet && limit.AtLeast == 0.8);
    }
}
