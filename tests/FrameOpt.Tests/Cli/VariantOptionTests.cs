using System.Text.Json;
using ClosedXML.Excel;
using FrameOpt.Cli;
using FrameOpt.Reports.Files;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Cli;

public class VariantOptionTests
{
    private static readonly string study = Repository.Study("full-and-empty");

    [Fact]
    public void A_run_names_its_variant_in_the_answer_the_workbook_and_run_json()
    {
        using var folder = new TemporaryFolder();
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("run", study, "--variant", "full tank", "--out", folder["a"]));
        Assert.Contains("A tank beside the engine - full tank", terminal.Output);
        using var run = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder["a"], "run.json")));
        Assert.Equal("full tank", run.RootElement.GetProperty("study").GetProperty("variant").GetString());
        using var book = new XLWorkbook(Path.Combine(folder["a"], "results.xlsx"));
        Assert.Equal("A tank beside the engine - full tank", book.Properties.Title);
        Assert.Equal("A tank beside the engine - full tank", book.Worksheet("Summary").Cell(1, 1).GetString());
    }

    [Fact]
    public void Evaluate_takes_the_masses_of_the_variant()
    {
        string Load(params string[] variant)
        {
            var terminal = new TestTerminal();
            Assert.Equal(ExitCode.Success, terminal.Run(["evaluate", study, "--json", "--set", "lateral_offset=10 mm", "--set",
                "suspension_height=200 mm", .. variant]));
            return terminal.Output;
        }

        double Glide(string text)
        {
            using var json = JsonDocument.Parse(text);
            var glide = json.RootElement.GetProperty("phases").GetProperty("glide");
            return glide.GetProperty("load_right").GetProperty("value").GetDouble()
                + glide.GetProperty("load_left").GetProperty("value").GetDouble();
        }

        // 6 and 12 litres of 0.74 kg/l: 4.44 kg more hang from the risers; g of ISO 2533:1975, lift and drag of a glide lean them a little.
        Check.Close(4.44 * 9.80665, Glide(Load("--variant", "full tank")) - Glide(Load()), relative: 0.03,
            because: "drag and the lean of the lines take a few per cent");
    }

    [Fact]
    public void Check_lists_the_variants_and_says_which_one_is_meant()
    {
        var plain = new TestTerminal();
        plain.Run("check", study);
        Assert.Matches("variants +full tank, empty tank; this is the base study", plain.Output);
        var full = new TestTerminal();
        full.Run("check", study, "--variant", "full tank");
        Assert.Matches("variants +full tank, empty tank; this is full tank", full.Output);
    }

    [Fact]
    public void An_unknown_variant_is_a_mistake_in_words()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("run", study, "--variant", "ful tank"));
        Assert.Contains("Did you mean `full tank`?", terminal.Error);
    }

    [Fact]
    public void Folders_of_variants_differ() =>
        Assert.EndsWith("-01234567-full-tank", RunFolder.DefaultPath(
            "study.yaml", "0123456789abcdef", new DateTime(2030, 1, 2, 3, 4, 5, DateTimeKind.Utc), "full/tank"));
}
