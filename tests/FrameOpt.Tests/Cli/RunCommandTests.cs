using System.Text.Json;
using System.Text.RegularExpressions;
using FrameOpt.Cli;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Cli;

public class RunCommandTests
{
    private static readonly string custom = Repository.Study("custom-match");

    [Fact]
    public void A_run_prints_the_answer_and_writes_all_its_files()
    {
        using var folder = new TemporaryFolder();
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("run", custom, "--out", folder["a"]));
        Assert.Contains("Best compromise of the ", terminal.Output);
        Assert.Contains("With the engine off the RIGHT scale reads more", terminal.Output);
        Assert.Equal("", terminal.Error);
        Assert.Equal(
            ["designs.csv", "drawing.pdf", "drawing.svg", "holes.dxf", "manifest.json", "report.html", "results.xlsx", "run.json",
                "template-a4.pdf", "template-letter.pdf", "timings.json"],
            Directory.GetFiles(folder["a"]).Select(Path.GetFileName).Order(StringComparer.Ordinal));
        Assert.DoesNotContain('\u001b', terminal.Output);
    }

    [Fact]
    public void Results_are_not_overwritten_unasked()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("run", custom, "--out", folder["a"]));
        var before = File.ReadAllBytes(Path.Combine(folder["a"], "run.json"));
        var again = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, again.Run("run", custom, "--out", folder["a"]));
        Assert.Contains("already exists; choose another folder or use --replace", again.Error);
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("run", custom, "--out", folder["a"], "--replace", "--threads", "3"));
        Assert.Equal(before, File.ReadAllBytes(Path.Combine(folder["a"], "run.json")));
    }

    [Fact]
    public void Every_evaluated_design_is_written_on_request()
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("run", custom, "--out", folder["a"], "--all"));
        var lines = File.ReadAllLines(Path.Combine(folder["a"], "evaluations.csv"));
        Assert.Equal(9 * 61 * 21 * 3 + 1, lines.Length);
        using var run = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder["a"], "run.json")));
        var feasible = run.RootElement.GetProperty("counts").GetProperty("feasible").GetInt64();
        Assert.Equal(feasible, lines.Count(line => line.EndsWith(",feasible")));
        Assert.Single(Directory.GetFileSystemEntries(folder[""]));
    }

    [Fact]
    public void A_stopped_run_writes_what_it_has_and_says_so()
    {
        using var folder = new TemporaryFolder();
        var terminal = new TestTerminal();
        var steps = 0;
        Assert.Equal(ExitCode.Interrupted, terminal.Run(() => ++steps == 60, "run", Repository.Study("fine-grid"), "--out", folder["a"]));
        Assert.Contains("STOPPED EARLY", terminal.Output);
        using var run = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder["a"], "run.json")));
        Assert.False(run.RootElement.GetProperty("complete").GetBoolean());
    }

    [Fact]
    public void Nothing_feasible_is_a_result_with_its_own_exit_code()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], Regex.Replace(
            File.ReadAllText(custom), @"twist_margin_worst, at_least: \d+", "twist_margin_worst, at_least: 5000"));
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.NothingFeasible, terminal.Run("run", folder["study.yaml"], "--out", folder["a"]));
        Assert.Contains("NO DESIGN MEETS EVERY LIMIT", terminal.Output);
        Assert.True(File.Exists(Path.Combine(folder["a"], "results.xlsx")));
    }

    [Fact]
    public void A_place_that_cannot_be_written_is_a_mistake_in_words()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["file"], "");
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("run", custom, "--out", Path.Combine(folder["file"], "inside")));
        Assert.Contains("Nothing was computed, because no results could be written to", terminal.Error);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("5000")]
    public void Threads_out_of_range_are_refused(string threads)
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("run", custom, "--threads", threads));
        Assert.Contains($"--threads must be a number from 1 to 1024, not {threads}.", terminal.Error);
    }
}
