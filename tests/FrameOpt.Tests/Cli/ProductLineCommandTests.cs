using System.Text.Json;
using System.Text.RegularExpressions;
using FrameOpt.Cli;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Cli;

public class ProductLineCommandTests
{
    private static readonly string study = Repository.Study("product-line");

    [Fact]
    public void A_line_prints_the_answer_and_writes_its_files()
    {
        using var folder = new TemporaryFolder();
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("line", study, "--out", folder["a"]));
        Assert.Contains("Make A (9 pieces), B (108 pieces) and C (62 pieces): ", terminal.Output);
        Assert.Contains("Gain from one more geometry", terminal.Output);
        Assert.Equal("", terminal.Error);
        Assert.Equal(
            ["customers.csv", "fitting-chart.svg", "line.html", "line.json", "line.xlsx", "manifest.json", "timings.json"],
            Directory.GetFiles(folder["a"]).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.DoesNotContain('\u001b', terminal.Output);
    }

    [Fact]
    public void The_number_of_geometries_may_be_given_on_the_command_line_and_results_are_not_overwritten_unasked()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("line", study, "--variants", "2", "--out", folder["a"]));
        using (var json = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder["a"], "line.json"))))
            Assert.Equal(2, json.RootElement.GetProperty("line").GetProperty("geometries").GetArrayLength());
        var again = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, again.Run("line", study, "--out", folder["a"]));
        Assert.Contains("already exists; choose another folder or use --replace", again.Error);
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("line", study, "--out", folder["a"], "--replace"));
    }

    [Fact]
    public void A_folder_of_another_command_is_not_replaced()
    {
        using var folder = new TemporaryFolder();
        Directory.CreateDirectory(folder["a"]);
        File.WriteAllText(Path.Combine(folder["a"], "run.json"), "{}");
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("line", study, "--out", folder["a"], "--replace"));
        Assert.Contains("contains no manifest.json, so it is not a results folder", terminal.Error);
    }

    [Fact]
    public void A_study_without_a_line_is_told_what_to_add()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("line", Repository.Study("custom-match")));
        Assert.Contains("has no product line. Add a group `line:` with variants and customers", terminal.Error);
    }

    [Fact]
    public void A_stopped_line_writes_the_best_so_far_and_says_so()
    {
        using var folder = new TemporaryFolder();
        var terminal = new TestTerminal();
        // The first steps work out the costs of 35 unlike customers, some at a time; then comes one step for each number of geometries.
        var asked = 0;
        Assert.Equal(ExitCode.Interrupted, terminal.Run(() => ++asked > 3, "line", study, "--out", folder["a"], "--threads", "2"));
        if (!Directory.Exists(folder["a"]))
        {
            Assert.Contains("Stopped before there was anything to choose from", terminal.Error);
            return;
        }

        Assert.Contains("STOPPED EARLY, best selection so far.", terminal.Output);
        using var json = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder["a"], "line.json")));
        Assert.False(json.RootElement.GetProperty("complete").GetBoolean());
    }

    [Fact]
    public void Nobody_served_is_a_result_with_its_own_exit_code()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], Regex.Replace(
            File.ReadAllText(study), @"twist_margin_worst, at_least: \d+", "twist_margin_worst, at_least: 5000"));
        File.Copy(Path.Combine(Path.GetDirectoryName(study)!, "customers.csv"), folder["customers.csv"]);
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.NothingFeasible, terminal.Run("line", folder["study.yaml"], "--out", folder["a"]));
        Assert.Contains("NO CANDIDATE IS ALLOWED FOR ANY CUSTOMER", terminal.Output);
        Assert.True(File.Exists(Path.Combine(folder["a"], "line.xlsx")));
        File.WriteAllText(folder["front.yaml"], File.ReadAllText(folder["study.yaml"]).Replace("candidates: grid", "candidates: front"));
        var front = new TestTerminal();
        Assert.Equal(ExitCode.NothingFeasible, front.Run("line", folder["front.yaml"], "--out", folder["b"]));
        Assert.Contains("there is no front to choose from", front.Error);
    }
}
