using System.Text.RegularExpressions;
using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli.Analyse;

/// <summary>Runs whose factors have words for levels.</summary>
public class AnalyseWordsTests
{
    private const string Batteries = """
        material,temperature,life [h]
        one,15,130|155|74|180
        one,70,34|40|80|75
        one,125,20|70|82|58
        two,15,150|188|159|126
        two,70,136|122|106|115
        two,125,25|70|58|45
        three,15,138|110|168|160
        three,70,174|120|150|139
        three,125,96|104|82|60
        """;

    /// <summary>Source: D. C. Montgomery, Design and Analysis of Experiments, the battery design experiment (8th ed. tables 5.1 and 5.5:
    /// data, sums of squares and F ratios as printed; data from memory, checked by those sums).</summary>
    [Fact]
    public void A_textbook_experiment_of_two_factors_has_its_printed_variances_with_both_as_words()
    {
        var output = Run(ExitCode.Success, Spread(InWords));
        Assert.Matches(@"material +2 +10683\.7 +10683\.7 +13\.8 +7\.91 +0\.0020", output);
        Assert.Matches(@"temperature +2 +39118\.7 +39118\.7 +50\.4 +28\.97 +below 0\.0001", output);
        Assert.Matches(@"material × temperature +4 +9613\.78 +9613\.78 +12\.4 +3\.56 +0\.0186", output);
        Assert.Matches(@"residual +27 +18230\.8", output);
        Assert.Matches(@"total +35 +77647", output);
        Assert.Contains("More than chance (p below 0.05): material, temperature, material × temperature.", output);
        // By hand: 998 / 12, and +-2.052 x sqrt(18230.75 / 27) / sqrt(12) = 15.39.
        Assert.Matches(@"material +one +12 +83\.1667 +67\.77\d+ +98\.55\d+", output);
        // By hand: (130 + 155 + 74 + 180) / 4.
        Assert.Matches(@"material × temperature +one, cold +4 +134\.75 ", output);
        Assert.DoesNotContain(": fit", output);
    }

    [Fact]
    public void A_factor_of_numbers_with_few_values_is_a_level_among_the_words_and_has_its_fit_too()
    {
        var output = Run(ExitCode.Success, Spread(Batteries));
        Assert.Matches(@"material × temperature +4 +9613\.78 +9613\.78 +12\.4 +3\.56", output);
        Assert.Contains("THE FIT BELOW IS OF THE NUMBERS ONLY", output);
        Assert.Contains("life: fit", output);
    }

    [Fact]
    public void A_goal_for_words_alone_is_refused_with_what_to_do()
    {
        var output = Run(ExitCode.InvalidInput, Spread(InWords), "--goal", "life more 50..150");
        Assert.Contains("A goal needs a factor of numbers", output);
    }

    [Fact]
    public void Words_that_name_each_run_are_no_levels()
    {
        var output = Run(ExitCode.Success, "frame,x,y\na,1,2\nb,2,3.1\nc,3,3.9\nd,4,5.2\n");
        Assert.Contains("Columns not used: frame (words, too many or all alike to be levels).", output);
    }

    private static string InWords => Batteries.Replace(",15,", ",cold,").Replace(",70,", ",mild,").Replace(",125,", ",hot,");

    /// <summary>A row for each reading.</summary>
    private static string Spread(string table) => string.Join('\n', table.ReplaceLineEndings("\n").Split('\n').SelectMany((line, row) =>
        row == 0 ? [line] : line[(line.LastIndexOf(',') + 1)..].Split('|').Select(life => line[..(line.LastIndexOf(',') + 1)] + life)));

    private static string Run(int expected, string runs, params string[] options)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["runs.csv"], runs);
        var terminal = new TestTerminal();
        Assert.Equal(expected, terminal.Run(["analyse", folder["runs.csv"], .. options]));
        return Regex.Replace(terminal.Output + terminal.Error, @"\n +", "\n");
    }
}
