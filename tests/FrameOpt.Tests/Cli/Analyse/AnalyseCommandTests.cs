using System.Globalization;
using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli.Analyse;

/// <summary>Measured runs through the command, against published analyses.</summary>
public class AnalyseCommandTests
{
    // D. C. Montgomery, Design and Analysis of Experiments, the filtration rate of a pilot plant: an unreplicated 2^4, factors A to D.
    private static readonly string filtration = "A,B,C,D,rate\n" + string.Join('\n',
        "45 71 48 65 68 60 80 65 43 100 45 104 75 86 70 96".Split(' ').Select((rate, i) =>
            $"{Sign(i, 0)},{Sign(i, 1)},{Sign(i, 2)},{Sign(i, 3)},{rate}"));

    // R. V. Lenth, Response-surface methods in R, J. Stat. Softw. 32(7) 2009: yield of a reaction, two blocks.
    private const string Reaction = """
        block,time [min],temperature [°C],yield
        B1,80,170,80.5
        B1,80,180,81.5
        B1,90,170,82
        B1,90,180,83.5
        B1,85,175,83.9
        B1,85,175,84.3
        B1,85,175,84
        B2,85,175,79.7
        B2,85,175,79.8
        B2,85,175,79.5
        B2,92.07,175,78.4
        B2,77.93,175,75.6
        B2,85,182.07,78.5
        B2,85,167.93,77
        """;

    [Fact]
    public void Effects_and_margins_of_a_two_level_plan_are_those_of_the_handbook()
    {
        var output = Right(filtration);
        // The handbook's effects and shares; Lenth's margins recomputed in R.
        AreNear(output, "A", 21.625, 32.6);
        AreNear(output, "A × C", -18.125, 22.9);
        AreNear(output, "A × D", 16.625, 19.3);
        AreNear(output, "D", 14.625, 14.9);
        AreNear(output, "A × B × C × D", 1.375, 0.1);
        Assert.Contains("below 6.74778", output);
        Assert.Contains("below 13.699", output);
        Assert.Contains("pseudo standard error 2.625", output);
        Assert.Equal(4, output.Split('\n').Count(line => line.TrimEnd().EndsWith("REAL", StringComparison.Ordinal)));
        // C alone is only between the two margins.
        Assert.Matches(@"(?m)^ *C .* perhaps real *$", output);
    }

    [Fact]
    public void The_terms_that_earn_their_place_are_those_of_the_handbook()
    {
        // Reduced model 1, A, C, D, AC, AD: coefficient 10.8125, its error 1.10432, s 4.4173, R² 0.965952, adjusted 0.948929, predicted
        // 0.912838.
        var output = Right(filtration, "--select");
        Assert.Matches(@"A +10\.8125 +1\.10432 ", output);
        Assert.Matches(@"A × C +-9\.0625 +1\.10432 ", output);
        Assert.DoesNotMatch(@"(?m)^ *B +1\.5625", output);
        Assert.Contains("R² 0.9660, adjusted 0.9489, predicting each run without it 0.9128", output);
        Assert.Contains("Standard deviation of a run 4.4173, 10 degrees of freedom", output);
    }

    [Fact]
    public void Half_of_a_factorial_names_what_it_cannot_tell_apart()
    {
        // The handbook's half I = ABCD of the same runs: A + BCD 19, AC + BD -18.5, AD + BC 19.
        var runs = filtration.Split('\n').Where((line, i) =>
            i == 0 || line.Split(',')[..4].Count(cell => cell == "-1") % 2 == 0);
        var output = Right(string.Join('\n', runs));
        Assert.Matches(@"A +B × C × D +19 ", output);
        Assert.Matches(@"A × C +B × D +-18\.5 ", output);
        Assert.Matches(@"A × D +B × C +19 ", output);
    }

    [Fact]
    public void An_effect_that_is_the_difference_of_the_blocks_is_named_and_not_judged()
    {
        // A 2^3 in two blocks by A × B × C (any textbook): block 2 reads 10 more. By hand: A 6, the others 0 but for A × B 1.
        var runs = Enumerable.Range(0, 8).Select(i => (A: (i & 1) == 0 ? -1 : 1, B: (i & 2) == 0 ? -1 : 1, C: (i & 4) == 0 ? -1 : 1));
        string Row((int A, int B, int C) run)
        {
            var isSecond = run.A * run.B * run.C > 0;
            var y = 20 + (3 * run.A) + (0.5 * run.A * run.B) + (isSecond ? 10 : 0);
            return FormattableString.Invariant($"{(isSecond ? 2 : 1)},{run.A},{run.B},{run.C},{y}");
        }

        var output = Right("block,A,B,C,y\n" + string.Join('\n', runs.Select(Row)));
        Assert.Contains("Confounded with the blocks: A × B × C.", output);
        Assert.Matches(@"(?m)^ *A +6 ", output);
        Assert.DoesNotMatch(@"(?m)^ *A × B × C +", output);
    }

    [Fact]
    public void A_quadratic_in_two_blocks_is_that_of_the_paper()
    {
        var output = Right(Reaction, "--range", "time 80..90", "--range", "temperature 170..180");
        // The paper codes block 2 as 1: -4.457530; coded to add up to 0 it is half of that, and the constant lies half of it lower.
        Assert.Matches(@"constant +81\.8667 ", output);
        Assert.Matches(@"block B2 +-2\.22876 ", output);
        Assert.Matches(@"time +0\.932541 +0\.05769\d+ ", output);
        Assert.Matches(@"temperature\^2 +-0\.933442 +0\.06006\d+ ", output);
        Assert.Contains("R² 0.9981, adjusted 0.9964", output);
        Assert.Contains("No lack of fit (F 0.53, p 0.6851", output);
        Assert.Contains("It lies at time 86.86 min, temperature 176.7 °C", output);
        Assert.Contains("a maximum", output);
    }

    [Fact]
    public void A_fit_with_repeated_centre_runs_is_that_of_the_source()
    {
        // V. Czitrom and P. D. Spagon, Statistical Case Studies for Industrial Process Improvement, 1997 (NIST handbook 5.4.7.3).
        var output = Right("""
            x1,x2,uniformity
            1,0,4.6
            0,0,6.2
            .71,-.71,3.4
            -.71,.71,6.9
            -1,0,7.3
            0,0,6.4
            -.71,-.71,8.6
            0,-1,6.3
            .71,.71,5.1
            0,1,5.4
            0,0,5
            """.Replace(",.", ",0.").Replace("-.", "-0.").Replace("\n.", "\n0."));
        Assert.Matches(@"x1 +-1\.90967 +0\.361031 ", output);
        Assert.Matches(@"x1 × x2 +1\.68617 +0\.717655 ", output);
        Assert.Contains("No lack of fit (F 0.86, p 0.5788", output);
        Assert.Contains("OUTSIDE THE RUNS", output);
    }

    [Fact]
    public void The_setting_that_meets_four_goals_is_that_of_the_paper()
    {
        // G. Derringer and R. Suich 1980: tyre tread compound, rotatable at 1.633; optimum -0.05, 0.145, -0.868 with desirability 0.583.
        double[][] runs =
        [
            [-1, -1, 1, 102, 900, 470, 67.5], [1, -1, -1, 120, 860, 410, 65], [-1, 1, -1, 117, 800, 570, 77.5],
            [1, 1, 1, 198, 2294, 240, 74.5], [-1, -1, -1, 103, 490, 640, 62.5], [1, -1, 1, 132, 1289, 270, 67],
            [-1, 1, 1, 132, 1270, 410, 78], [1, 1, -1, 139, 1090, 380, 70], [-1.633, 0, 0, 102, 770, 590, 76],
            [1.633, 0, 0, 154, 1690, 260, 70], [0, -1.633, 0, 96, 700, 520, 63], [0, 1.633, 0, 163, 1540, 380, 75],
            [0, 0, -1.633, 116, 2184, 520, 65], [0, 0, 1.633, 153, 1784, 290, 71], [0, 0, 0, 133, 1300, 380, 70],
            [0, 0, 0, 133, 1300, 380, 68.5], [0, 0, 0, 140, 1145, 430, 68], [0, 0, 0, 142, 1090, 430, 68],
            [0, 0, 0, 145, 1260, 390, 69], [0, 0, 0, 142, 1344, 390, 70],
        ];
        var output = Right("silica,silane,sulphur,abrasion,modulus,stretch,hardness\n"
                + string.Join('\n', runs.Select(run => string.Join(',', run.Select(value => FormattableString.Invariant($"{value}"))))),
            "--response", "abrasion", "--response", "modulus", "--response", "stretch", "--response", "hardness",
            "--goal", "abrasion more 120..170", "--goal", "modulus more 1000..1300", "--goal", "stretch near 400..500..600",
            "--goal", "hardness near 60..67.5..75");
        Assert.Matches(@"silica -0\.05\d*, silane 0\.14\d*, sulphur -0\.868\d*\.", output);
        Assert.Contains("met to 0.5833", output);
        Assert.Matches(@"abrasion +129\.4\d* ", output);
        Assert.Matches(@"hardness +68\.02\d* ", output);
    }

    [Fact]
    public void A_response_of_a_phase_without_a_unit_keeps_its_name()
    {
        var output = Right("A,effort[climb],effort[cruise]\n-1,0.2,0.1\n0,0.3,0.3\n1,0.5,0.5\n0,0.3,0.4\n1,0.4,0.6\n",
            "--response", "effort[climb]", "--response", "effort[cruise]");
        Assert.Contains("read: effort[climb], effort[cruise].", output);
    }

    [Fact]
    public void A_plan_written_for_measuring_comes_back_beside_the_model()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("plan", Repository.Study("rationale"), "--csv", folder["runs.csv"]));
        var lines = File.ReadAllLines(folder["runs.csv"]).Select(line => line.Split(',')).ToList();
        var (empty, model) = (Array.FindIndex(lines[0], cell => cell.StartsWith("residual_rms", StringComparison.Ordinal)),
            Array.FindIndex(lines[0], cell => cell.StartsWith("model residual_rms", StringComparison.Ordinal)));
        // All measured 2 N·m above the model.
        foreach (var line in lines.Skip(1))
            line[empty] = FormattableString.Invariant($"{double.Parse(line[model], CultureInfo.InvariantCulture) + 2}");
        File.WriteAllLines(folder["runs.csv"], lines.Select(line => string.Join(',', line)));
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("analyse", folder["runs.csv"], "--response", "residual_rms"));
        Assert.Contains("On average the model says 2 N·m less than was measured", terminal.Output);
    }

    private static string Sign(int run, int factor) => (run >> factor & 1) == 0 ? "-1" : "1";

    private static void AreNear(string output, string effect, double value, double share) => Assert.Matches(
        FormattableString.Invariant($@"(?m)^ *{effect.Replace("^", "\\^")} +{value} +{share:0.0} "), output);

    private static string Right(string runs, params string[] options)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["runs.csv"], runs);
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run(["analyse", folder["runs.csv"], .. options]));
        return terminal.Output;
    }
}
