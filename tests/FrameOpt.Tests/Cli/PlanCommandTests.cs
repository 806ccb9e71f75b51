using System.Text.RegularExpressions;
using FrameOpt.Cli;
using FrameOpt.Reports.Answer;
using FrameOpt.Running;
using FrameOpt.Studies;
using FrameOpt.StudyFile;

namespace FrameOpt.Tests.Cli;

public class PlanCommandTests
{
    private static readonly string rationale = Repository.Study("rationale");

    [Fact]
    public void A_plan_is_shown_with_its_runs_its_quality_and_its_surfaces()
    {
        using var folder = new TemporaryFolder();
        Write(folder["study.yaml"], "central composite");
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("plan", folder["study.yaml"]));
        // By hand: 16 corners, 8 axial runs and one at the middle; 15 terms leave 10 runs over.
        Assert.Contains("25 runs on 4 factors", terminal.Output);
        Assert.Contains("10 degrees of freedom for error", terminal.Output);
        Assert.Contains("No p-values and no F tests: the runs are computed", terminal.Output);
        // The balance in pitch has no lateral dimension in it (docs/model.md), so spacing does not move pitch_swing.
        Assert.Contains("How far each input moves a response", terminal.Output);
        Assert.Matches("(?s)pitch_swing \\[deg\\] +suspension_height .*hang_point_spacing +0 +0 +stays", terminal.Output);
        // By hand: the sum of squares of a main effect's column is 16 + 2, so its standard error is 1 / sqrt(18).
        Assert.Matches($@"lateral_offset +{1 / Math.Sqrt(18):0.000} +1\.00 ", terminal.Output);
    }

    [Fact]
    public void An_orthogonal_two_level_plan_has_efficiencies_of_one()
    {
        using var folder = new TemporaryFolder();
        Write(folder["study.yaml"], "full factorial");
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("plan", folder["study.yaml"]));
        Assert.Contains("D efficiency 1.000, A efficiency 1.000, G efficiency 1.000", terminal.Output);
    }

    [Fact]
    public void Runs_are_written_for_measuring_and_never_over_a_file()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("plan", rationale, "--csv", folder["runs.csv"]));
        Assert.Equal(25, File.ReadAllLines(folder["runs.csv"]).Length);
        var again = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, again.Run("plan", rationale, "--csv", folder["runs.csv"]));
        Assert.Contains("already exists", again.Error);
    }

    [Fact]
    public void A_plan_that_fills_the_cube_says_how_unevenly_beside_what_chance_gives()
    {
        using var folder = new TemporaryFolder();
        Write(folder["study.yaml"], "Sobol sequence\n  runs: 16");
        var study = StudyReader.Read(folder["study.yaml"]).Study!;
        var lines = PlanSections.Quality(StudyPlan.Of(study, StudyProblem.Model(study))).Lines;
        // By hand for 16 random runs in 4 factors, centred: ((5/4)^4 - (13/12)^4) / 16 = 0.066503, root 0.2579.
        Assert.Contains(lines, line => Regex.IsMatch(line, @"centred L2 0\.\d{4} \(0\.2579\), wrap-around"));
    }

    [Fact]
    public void A_study_without_a_plan_says_how_to_ask_for_one()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("plan", Repository.Study("custom-match")));
        Assert.Contains("plan: { kind: central composite }", terminal.Error);
    }

    private static void Write(string file, string kind)
    {
        var text = File.ReadAllText(rationale);
        var (from, to) = (text.IndexOf("\nplan:", StringComparison.Ordinal), text.IndexOf("  responses:", StringComparison.Ordinal));
        File.WriteAllText(file, $"{text[..from]}\nplan:\n  kind: {kind}\n{text[to..]}");
    }
}
