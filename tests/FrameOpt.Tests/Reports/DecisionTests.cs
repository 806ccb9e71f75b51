using FrameOpt.Cli;
using FrameOpt.StudyFile;
using FrameOpt.Tests.Cli;
using FrameOpt.Tests.Running;
using FrameOpt.Tests.StudyFile;

namespace FrameOpt.Tests.Reports;

/// <summary>A decision on record, and what a later run says of it.</summary>
public class DecisionTests
{
    private const string Record = "date: 14 March 2026, by: the builder, reason: least torque in cruise, rejected: [20 mm] }\n";

    [Theory]
    // The worked balance needs an offset to the right; 60 mm to the left of the best side cannot be held.
    [InlineData("lateral_offset: 0 mm", "THE DESIGN DECIDED ON IS NOT THE BEST of this run")]
    [InlineData("lateral_offset: 60 mm, suspension_height: 400 mm", "THE DESIGN DECIDED ON VIOLATES A LIMIT of this study")]
    public void A_run_says_that_the_design_decided_on_is_not_the_best_or_violates_a_limit(string design, string said)
    {
        var terminal = Run($"decision: {{ chosen: {{ hang_point_spacing: 440 mm, suspension_height: 250 mm, {design} }}, "
            .Replace("suspension_height: 250 mm, lateral_offset: 60 mm", "lateral_offset: 60 mm") + Record);
        Assert.Contains("Decided on 14 March 2026 by the builder: ", terminal.Output);
        Assert.Contains("Reason: least torque in cruise.", terminal.Output);
        Assert.Contains("Rejected: 20 mm.", terminal.Output);
        Assert.Contains("signature", terminal.Output);
        Assert.Contains(said, terminal.Output);
    }

    [Fact]
    public void A_line_says_what_the_geometries_decided_on_are_worth_alone()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], ProductLineStudy.Text("objective: mean; up_to: 2; geometries: [{ name: old, "
            + "hang_point_spacing: 433 mm, lateral_offset: 21 mm, suspension_height: 150 mm }]").Replace("effort_worst, at_most: 0.6",
                "effort_worst, at_most: 9") + "decision: { chosen: old, " + Record);
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("line", folder["study.yaml"], "--out", folder["out"]));
        Assert.Contains("Decided on 14 March 2026 by the builder: old.", terminal.Output);
        Assert.Contains("The geometries decided on, alone: ", terminal.Output);
        Assert.Contains("Decision on record", File.ReadAllText(Path.Combine(folder["out"], "line.html")));
    }

    [Fact]
    public void A_name_that_no_geometry_has_is_an_error()
    {
        var errors = StudyReader.Parse(System.Text.Encoding.UTF8.GetBytes(
            $"{WorkedStudyText.Text}decision: {{ chosen: [A], {Record}"), "study.yaml").Diagnostics;
        Assert.Contains(errors, error => error.Text.Contains("The decision names no geometry of `line.geometries`."));
    }

    private static TestTerminal Run(string decision)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], $"{ProductLineStudy.Grid.TrimEnd()}\n{decision}");
        var terminal = new TestTerminal();
        var code = terminal.Run("run", folder["study.yaml"], "--out", folder["out"]);
        Assert.True(code == ExitCode.Success, terminal.Error);
        Assert.Contains("Decision on record", File.ReadAllText(Path.Combine(folder["out"], "report.html")));
        return terminal;
    }
}
