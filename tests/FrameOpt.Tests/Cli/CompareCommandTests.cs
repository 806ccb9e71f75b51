using System.Text.Json;
using FrameOpt.Cli;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Cli;

public sealed class CompareCommandTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Two_variants_of_a_shipped_study_are_compared_and_written()
    {
        var study = Repository.Study("full-and-empty");
        Run("run", study, "--variant", "full tank", "--out", folder["full"]);
        Run("run", study, "--variant", "empty tank", "--out", folder["empty"]);
        var output = Run("compare", folder["full"], folder["empty"], "--out", folder["compared"]);
        // From the study file: 12 l and 0.5 l of 0.74 kg/l; weights 0.4 and 0.6 against 0.2 and 0.8.
        Assert.Contains("machine: fuel mass 8.88 kg -> 0.37 kg", output);
        Assert.Contains("mission: climb weight 0.4 -> 0.2", output);
        Assert.Contains("mission: cruise weight 0.6 -> 0.8", output);
        Assert.Contains("NOT COMPARABLE: B differs from A in machine, mission.", output);
        Assert.Contains("<svg", File.ReadAllText(Path.Combine(folder["compared"], "comparison.html")));
        var chosen = Chosen(folder["full"]).GetProperty("mission").GetProperty("residual_rms").GetProperty("value").GetRawText();
        Assert.Contains($"mission,residual_rms,N·m,{chosen},", File.ReadAllText(Path.Combine(folder["compared"], "comparison.csv")));
        Assert.Contains("--replace", Refused("compare", folder["full"], folder["empty"], "--out", folder["compared"]));
        Run("compare", folder["full"], folder["full"] + ":2", "--out", folder["compared"], "--replace");
        Assert.Contains("is one of the runs compared", Refused("compare", folder["full"] + ":2", folder["empty"], "--out", folder["full"],
            "--replace"));
        Assert.True(File.Exists(Path.Combine(folder["full"], "run.json")));
    }

    [Fact]
    public void Long_differences_end_on_the_screen_and_go_on_in_the_page()
    {
        Run("run", Repository.Study("full-and-empty"), "--out", folder["one"]);
        Run("run", Repository.Study("custom-match"), "--out", folder["other"]);
        var output = Run("compare", folder["one"], folder["other"], folder["one"], "--out", folder["compared"]);
        // Three designs, two of them of one run.
        Assert.Contains("A and C are designs of the same run.", File.ReadAllText(Path.Combine(folder["compared"], "comparison.html")));
        var shown = output.Split('\n').SkipWhile(line => !line.StartsWith("How the studies differ", StringComparison.Ordinal))
            .Skip(1).TakeWhile(line => line.Trim().Length > 0).ToList();
        Assert.InRange(shown.Count, 30, 41);
        Assert.Contains(shown, line => line.Contains("propeller turns counter-clockwise -> clockwise", StringComparison.Ordinal));
    }

    [Fact]
    public void One_design_is_evaluated_under_other_studies()
    {
        var study = Repository.Study("full-and-empty");
        Run("run", study, "--variant", "full tank", "--out", folder["full"]);
        var output = Run("compare", "--same-design", folder["full"] + ":2", study + ":empty tank", study, "--out", folder["compared"]);
        Assert.Contains("one design under 3 studies", output);
        Assert.Contains("machine: fuel mass 8.88 kg -> 0.37 kg", output);
        Assert.DoesNotContain("factors:", output);
        var rows = File.ReadAllLines(Path.Combine(folder["compared"], "comparison.csv")).Select(line => line.Split(',')).ToList();
        string[] Row(string name) => rows.Single(row => row[1] == name);
        foreach (var input in (string[])["hang_point_spacing", "lateral_offset", "suspension_height", "thrust_line_angle"])
            Assert.Single(Row(input)[3..].Distinct());
        // What evaluate says of the same dimensions under the same study.
        var terminal = new TestTerminal();
        terminal.Run("evaluate", study, "--variant", "empty tank", "--json",
            "--set", $"hang_point_spacing={Row("hang_point_spacing")[3]} m",
            "--set", $"lateral_offset={Row("lateral_offset")[3]} m", "--set", $"suspension_height={Row("suspension_height")[3]} m",
            "--set", $"thrust_line_angle={Row("thrust_line_angle")[3]} rad");
        using var json = JsonDocument.Parse(terminal.Output);
        Check.Close(
            json.RootElement.GetProperty("mission").GetProperty("residual_rms").GetProperty("value").GetDouble(),
            double.Parse(Row("residual_rms")[4], System.Globalization.CultureInfo.InvariantCulture), relative: 1e-9,
            because: "the dimensions go through the rounding of their printed digits");
        Assert.Contains("--same-design", File.ReadAllText(Path.Combine(folder["compared"], "comparison.html")));
        Assert.Contains("is a folder; after the run --same-design takes study files",
            Refused("compare", "--same-design", folder["full"], folder["full"]));
        Assert.Contains("Did you mean `empty tank`?", Refused("compare", "--same-design", folder["full"], study + ":emty tank"));
        Assert.Contains("takes the results folder of a run", Refused("compare", "--same-design", folder["full"]));
    }

    [Fact]
    public void A_limit_that_the_design_violates_under_another_study_is_named_first()
    {
        var study = Repository.Study("full-and-empty");
        Run("run", study, "--variant", "full tank", "--out", folder["of-full"]);
        var strict = folder["strict.yaml"];
        File.WriteAllText(strict, File.ReadAllText(study).Replace("at_most: 0.6", "at_most: 0.01", StringComparison.Ordinal));
        var output = Run("compare", "--same-design", folder["of-full"], study + ":full tank", strict + ":full tank");
        Assert.DoesNotContain("B: IT VIOLATES", output);
        Assert.Contains("C: IT VIOLATES largest effort in any settled phase at most 0.01; this design has ", output);
    }

    [Fact]
    public void What_cannot_be_compared_is_refused_with_its_reasons()
    {
        Assert.Contains("two to 6 designs", Refused("compare"));
        var refused = Refused("compare", folder["nowhere"], folder["neither"]);
        Assert.Contains("nowhere: there is no such folder", refused);
        Assert.Contains("neither: there is no such folder", refused);
    }

    private static string Run(params string[] args)
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run(args));
        return terminal.Output;
    }

    private static string Refused(params string[] args)
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run(args));
        Assert.Equal("", terminal.Output);
        return terminal.Error;
    }

    private static JsonElement Chosen(string folder) =>
        JsonDocument.Parse(File.ReadAllText(Path.Combine(folder, "run.json"))).RootElement.GetProperty("chosen");
}
