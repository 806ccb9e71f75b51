using System.Text.Json;
using System.Text.RegularExpressions;
using FrameOpt.Cli;
using FrameOpt.Reports.Files;
using FrameOpt.Studies;
using FrameOpt.Tests.Reports;
using FrameOpt.Tests.StudyFile;

namespace FrameOpt.Tests.Cli;

/// <summary>run --remember: a search that was stopped goes on where it was.</summary>
public class RememberTests
{
    private static readonly string text = WorkedStudyText.With(
        "search: { method: exhaustive }",
        "plan: { kind: central composite }\n"
            + "search: { method: NSGA-II, population: 30, start: plan, polish: true, stop: { evaluations: 900 } }")
        .Replace("lateral_offset:     { from: 0 mm, to: 60 mm, step: 1 mm }", "lateral_offset:     { from: 0 mm, to: 60 mm }");

    [Fact]
    public void A_stopped_run_goes_on_and_its_files_are_those_of_a_run_never_stopped()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], text);
        string[] run = ["run", folder["study.yaml"], "--replace", "--remember", folder["evaluations.csv"], "--out"];
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("run", folder["study.yaml"], "--out", folder["whole"]));
        var asked = 0;
        Assert.Equal(ExitCode.Interrupted, new TestTerminal().Run(() => ++asked > 6, [.. run, folder["resumed"]]));
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run([.. run, folder["resumed"]]));
        Assert.Contains("evaluations were loaded from", terminal.Error);
        foreach (var name in new[] { "run.json", "designs.csv", "results.xlsx", "report.html" })
            Assert.Equal(File.ReadAllBytes(Path.Combine(folder["whole"], name)), File.ReadAllBytes(Path.Combine(folder["resumed"], name)));
    }

    [Fact]
    public void Evaluations_of_a_changed_study_are_refused_before_anything_runs()
    {
        using var folder = new TemporaryFolder();
        var small = WorkedStudyText.With(
            "search: { method: exhaustive }", "search: { method: NSGA-II, population: 30, seed: 1, stop: { evaluations: 300 } }");
        File.WriteAllText(folder["study.yaml"], small);
        new TestTerminal().Run("run", folder["study.yaml"], "--out", folder["a"], "--remember", folder["evaluations.csv"]);
        File.WriteAllText(folder["study.yaml"], small.Replace("seed: 1", "seed: 2").Replace("mass: 78 kg", "mass: 79 kg"));
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("run", folder["study.yaml"], "--out", folder["b"], "--remember",
            folder["evaluations.csv"]));
        Assert.Contains("of another study, variant, version or build", terminal.Error);
        Assert.False(Directory.Exists(folder["b"]));
    }

    [Fact]
    public void Evaluations_of_another_build_of_the_model_are_refused_and_the_file_names_version_commit_and_build()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], WorkedStudyText.With(
            "search: { method: exhaustive }", "search: { method: NSGA-II, population: 30, seed: 1, stop: { evaluations: 300 } }"));
        string[] run = ["run", folder["study.yaml"], "--replace", "--out", folder["a"], "--remember", folder["evaluations.csv"]];
        Assert.Equal(ExitCode.Success, new TestTerminal().Run(run));
        var lines = File.ReadAllText(folder["evaluations.csv"]);
        var build = Regex.Match(lines, $"FrameOpt {Regex.Escape(BuildInfo.Version)}, build ([0-9a-f]{{32}})\n");
        Assert.True(build.Success);
        // Another model has another build: the same file with one digit of it changed.
        var digit = build.Groups[1].Value[0] == '0' ? '1' : '0';
        File.WriteAllText(folder["evaluations.csv"], lines.Replace(build.Groups[1].Value, digit + build.Groups[1].Value[1..]));
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run(run));
        Assert.Contains("of another study, variant, version or build", terminal.Error);
    }

    [Fact]
    public void Reports_carry_the_version_with_its_commit()
    {
        using var folder = new TemporaryFolder();
        new TestTerminal().Run("run", Repository.Study("drilled-holes"), "--out", folder["a"]);
        Assert.Matches(@"^[0-9.]+(\+[0-9a-f]{12})?$", BuildInfo.Version);
        Assert.Contains($"FrameOpt {BuildInfo.Version}", File.ReadAllText(folder["a/report.html"]));
        using var json = JsonDocument.Parse(File.ReadAllText(folder["a/run.json"]));
        Assert.Equal(BuildInfo.Version, json.RootElement.GetProperty("version").GetString());
    }

    [Fact]
    public void An_exhaustive_search_has_nothing_to_remember()
    {
        using var folder = new TemporaryFolder();
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("run", Repository.Study("custom-match"), "--out", folder["a"], "--remember",
            folder["evaluations.csv"]));
        Assert.Contains("--remember is for evolutionary searches", terminal.Error);
    }
}
