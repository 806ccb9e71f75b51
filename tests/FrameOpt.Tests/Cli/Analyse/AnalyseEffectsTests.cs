using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli.Analyse;

/// <summary>How effects of measured two-level runs are judged: by repeated runs, and in whole plots.</summary>
public class AnalyseEffectsTests
{
    [Fact]
    public void Repeated_runs_of_a_two_level_plan_say_which_effects_are_real()
    {
        // D. C. Montgomery, Design and Analysis of Experiments, yield of a process, a 2^2 made three times: A 8.33, B -5.00, AB 1.67; F
        // 53.15, 19.13 and 2.13, so t 7.29, -4.37 and 1.46; error 31.33 with 8 degrees of freedom (from memory; the sums close to 323).
        var output = Right("A,B,yield\n" + string.Join('\n', "28 36 18 31 25 32 19 30 27 32 23 29".Split(' ')
            .Select((y, i) => $"{Sign(i, 0)},{Sign(i, 1)},{y}")));
        // sqrt(31.333 / 8 / 3) = 1.14261
        Assert.Contains("Standard error of an effect 1.14261, from what repeated runs differ by (8 degrees of freedom)", output);
        Assert.Matches(@"(?m)^ *A +8\.33333 .* 7\.29 +below 0\.0001 +REAL *$", output);
        Assert.Matches(@"(?m)^ *B +-5 .* -4\.38 +0\.0024 +REAL *$", output);
        Assert.Matches(@"(?m)^ *A × B +1\.66667 .* 1\.46 +0\.1828 *$", output);
    }

    [Fact]
    public void Effects_between_whole_plots_are_judged_among_themselves()
    {
        // Invented: A and B hard to change, C and D not. Between whole plots A 10 and noise of 1 in B and A × B: s0 is 1.5, of which less
        // than 3.75 remain 1 and 1, so the pseudo standard error is 1.5 and with one degree of freedom the margin 12.7062 x 1.5 =
        // 19.0593: A is not real, though errors within whole plots are a hundredth of it. Within, C 1 is.
        string Row(int i)
        {
            var (a, b, c, d) = ((i & 1) == 0 ? -1 : 1, (i & 2) == 0 ? -1 : 1, (i & 4) == 0 ? -1 : 1, (i & 8) == 0 ? -1 : 1);
            double[] small = [0.02, -0.01, 0.015, 0.01, -0.02, 0.005, -0.015, 0.012, 0.018, -0.008, 0.01];
            int[] products = [d, c * d, a * c, a * d, b * c, b * d, a * b * c, a * b * d, a * c * d, b * c * d, a * b * c * d];
            var y = 50 + (5 * a) + (0.5 * b) + (0.5 * a * b) + (0.5 * c) + products.Zip(small, (one, size) => one * size).Sum();
            return FormattableString.Invariant($"{(i & 3) + 1},{a},{b},{c},{d},{y}");
        }

        var output = Right("whole plot,A,B,C,D,y\n" + string.Join('\n', Enumerable.Range(0, 16).Select(Row)));
        Assert.Contains("one effect between whole plots chosen beforehand stays below 19.0593", output);
        Assert.Matches(@"(?m)^ *A +10 .* whole plots *$", output);
        Assert.Matches(@"(?m)^ *C +1 .* runs +REAL *$", output);
    }

    private static string Sign(int run, int factor) => (run >> factor & 1) == 0 ? "-1" : "1";

    private static string Right(string runs, params string[] options)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["runs.csv"], runs);
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run(["analyse", folder["runs.csv"], .. options]));
        return terminal.Output;
    }
}
