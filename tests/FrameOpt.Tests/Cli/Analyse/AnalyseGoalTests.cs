using System.Globalization;
using System.Text.RegularExpressions;
using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli.Analyse;

/// <summary>The setting that meets goals: rounded to what can be built, and which goal stands in the way where there is none.</summary>
public class AnalyseGoalTests
{
    // Invented: y rises with x, z falls with it, both from end to end by 2.
    private const string Opposed = "x,y,z\n-1,-1,1\n-0.5,-0.5,0.5\n0,0.01,0.01\n0.5,0.5,-0.5\n1,1,-1\n";

    [Fact]
    public void A_goal_beyond_the_fit_is_named_with_what_the_fit_reaches()
    {
        var output = Both("y more 5..6", "z more 0..1");
        Assert.Matches(@"The goal for y fails alone: by its fit it is between -\d.* and (0\.9|1)", output);
        Assert.DoesNotContain("The goal for z fails", output);
    }

    [Fact]
    public void Goals_that_do_not_go_together_are_told_from_goals_that_fail()
    {
        var output = Both("y more 0.5..1", "z more 0.5..1");
        Assert.Contains("Each goal can be met alone, but no setting meets all of them", output);
        Assert.DoesNotContain("fails alone", output);
    }

    [Theory]
    [InlineData("w more 1..2", "No response has this name; they are z")]
    [InlineData("z over 1..2", "More, less or near, and numbers after it, are missing")]
    [InlineData("z more 2..1", "Its numbers do not rise")]
    [InlineData("z near 1..2", "with near takes three numbers, not 2")]
    public void A_goal_that_cannot_be_read_says_why(string goal, string why) =>
        Assert.Contains(why, Run(ExitCode.InvalidInput, Opposed, "--goal", goal).Error);

    // By hand: y = -(x + 17)² is largest at -17 mm; of the study's steps of 5 mm the next is -15 mm, where it is -4.
    [Fact]
    public void With_a_study_the_best_step_stands_beside_the_exact_setting()
    {
        var runs = "lateral_offset [mm],y\n"
            + string.Join('\n', new[] { -50, -35, -20, -5, 10 }.Select(x => $"{x},{-(x + 17) * (x + 17)}"));
        var output = Run(ExitCode.Success, runs, "--goal", "y more -100..0", "--study", Repository.Study("rationale")).Output;
        Assert.Contains("lateral_offset -17 mm. Together", output);
        Assert.Contains("That can be built, beside it: lateral_offset -15 mm; the goals are met to 0.9600.", output);
        Assert.Equal(ExitCode.InvalidInput, Run(ExitCode.InvalidInput, runs, "--goal", "y more -100..0", "--study", "none.yaml").Code);
    }

    // Whatever the setting, what is built is a hole on each side.
    [Fact]
    public void Holes_are_kept_together()
    {
        var study = FrameOpt.StudyFile.StudyReader.Read(Repository.Study("drilled-holes")).Study!;
        var factors = new[] { "hang_point_spacing", "lateral_offset" }
            .Select(name => study.Factors.Single(factor => factor.Name == name)).ToList();
        double[][] x = [[15.5, -0.5], [19, -0.5], [15.5, 1.25], [19, 1.25], [17, 0.4], [16, 0.1]];
        var runs = $"hang_point_spacing [{factors[0].Unit.Symbol}],lateral_offset [{factors[1].Unit.Symbol}],y\n" + string.Join('\n',
            x.Select(at => FormattableString.Invariant($"{at[0]},{at[1]},{at[0] + (2 * at[1])}")));
        var output = Run(ExitCode.Success, runs, "--model", "linear", "--goal", "y near 15..16.7..18", "--study",
            Repository.Study("drilled-holes")).Output;
        var built = Regex.Match(output, @"beside it: hang_point_spacing ([\d.]+) in, lateral_offset (-?[\d.]+) in");
        Assert.True(built.Success, output);
        var (spacing, offset) = (Number(built.Groups[1].Value), Number(built.Groups[2].Value));
        Assert.Contains((spacing / 2) - offset, study.Holes!.Left.Places.Select(hole => Math.Round(hole / 0.0254, 6)));
        Assert.Contains((spacing / 2) + offset, study.Holes.Right.Places.Select(hole => Math.Round(hole / 0.0254, 6)));
    }

    private static string Both(string first, string second) =>
        Run(ExitCode.Success, Opposed, "--response", "y", "--response", "z", "--goal", first, "--goal", second).Output;

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static (int Code, string Output, string Error) Run(int expected, string runs, params string[] options)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["runs.csv"], runs);
        var terminal = new TestTerminal();
        var code = terminal.Run(["analyse", folder["runs.csv"], .. options]);
        Assert.Equal(expected, code);
        return (code, terminal.Output, terminal.Error);
    }
}
