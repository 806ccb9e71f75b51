using System.Text.Json;
using ClosedXML.Excel;
using FrameOpt.Cli;
using FrameOpt.Tests.StudyFile;

namespace FrameOpt.Tests.Cli;

/// <summary>Page, card, workbook and figures of one frame that is given, not searched for.</summary>
public sealed class OneFrameTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    private static readonly string fixedStudy = WorkedStudyText.Text
        .Replace("{ from: 380 mm, to: 480 mm, step: 5 mm }", "440 mm").Replace("{ from: 0 mm, to: 60 mm, step: 1 mm }", "25 mm")
        .Replace("{ from: 100 mm, to: 400 mm, step: 10 mm }", "150 mm")
        .Replace("{ values: [-3 deg, -1.5 deg, 0 deg, 1.5 deg, 3 deg] }", "0 deg");

    public void Dispose() => folder.Dispose();

    // Worked balance, 440 mm, 25 mm, 150 mm, 0 deg: residual of the launch 28.3522 N·m (References/README.md).
    [Theory]
    [InlineData("evaluate")]
    [InlineData("run")]
    public void The_folder_of_one_frame_has_its_figures_and_its_card_and_nothing_of_a_search(string command)
    {
        File.WriteAllText(folder["study.yaml"], fixedStudy);
        string[] args = command == "run" ? ["run", folder["study.yaml"]]
            : ["evaluate", WorkedStudyText.Path, "--set", "lateral_offset=25 mm"];
        Assert.Equal(ExitCode.Success, new TestTerminal().Run([.. args, "--out", folder["a"]]));
        using var json = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder["a"], "run.json")));
        Check.Close(28.3522, Residual(json.RootElement.GetProperty("chosen"), "launch"), absolute: 5e-5,
            because: "half of the last printed digit");
        var page = File.ReadAllText(Path.Combine(folder["a"], "report.html"));
        Assert.Contains("id=\"card\"", page);
        Assert.Contains("id=\"hang-check\"", page);
        Assert.DoesNotContain("id=\"front\"", page);
        Assert.DoesNotContain("best compromise", page);
        using var book = new XLWorkbook(Path.Combine(folder["a"], "results.xlsx"));
        Assert.Equal(["Read me", "Summary", "How sure", "What if", "Charts", "Phases", "Machine and mission", "Assumptions", "Cautions",
            "What if data", "Chart data"], book.Worksheets.Select(sheet => sheet.Name));
    }

    // Worked balance: the distance of 25 mm from the baseline of 0 mm, in units of the range of 60 mm.
    [Fact]
    public void Distance_from_the_baseline_is_measured_in_the_ranges_of_the_study()
    {
        new TestTerminal().Run("evaluate", WorkedStudyText.Path, "--set", "lateral_offset=25 mm", "--out", folder["a"]);
        using var json = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder["a"], "run.json")));
        Check.Close(25.0 / 60, json.RootElement.GetProperty("chosen").GetProperty("mission").GetProperty("distance_from_baseline")
            .GetProperty("value").GetDouble(), relative: 1e-9, because: "one division");
    }

    [Fact]
    public void A_frame_that_breaks_a_limit_says_so_first_and_has_its_card_all_the_same()
    {
        File.WriteAllText(folder["study.yaml"], fixedStudy.Replace("lateral_offset:     25 mm", "lateral_offset:     60 mm"));
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.NothingFeasible, terminal.Run("run", folder["study.yaml"], "--out", folder["a"]));
        Assert.Contains("IT VIOLATES largest effort in any settled phase at most 0.6; this design has ", terminal.Output);
        Assert.Contains("id=\"card\"", File.ReadAllText(Path.Combine(folder["a"], "report.html")));
    }

    [Fact]
    public void A_study_of_one_frame_means_that_frame_whatever_its_baseline()
    {
        File.WriteAllText(folder["study.yaml"], fixedStudy);
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("evaluate", folder["study.yaml"]));
        Assert.Matches("lateral_offset +25 mm +fixed in the study", terminal.Output);
        var check = new TestTerminal();
        check.Run("check", folder["study.yaml"]);
        Assert.Contains("a valid study of one frame.", check.Output);
    }

    // Phases do not depend on each other: with an easier launch the others have the same figures.
    [Fact]
    public void Phases_that_fly_are_shown_though_another_cannot()
    {
        var study = Repository.Study("custom-match");
        string[] design = ["--set", "suspension_height=50 mm", "--set", "lateral_offset=-45 mm"];
        var (table, failed, easier) = (new TestTerminal(), new TestTerminal(), new TestTerminal());
        Assert.Equal(ExitCode.NothingFeasible, table.Run(["evaluate", study, .. design]));
        Assert.Contains("This design cannot fly. launch: ", table.Output);
        Assert.Matches(@"quantity \[unit\] +climb +cruise +accelerated +glide", table.Output);
        failed.Run(["evaluate", study, "--json", .. design]);
        var text = File.ReadAllText(study) + "\nvariants: { easy: { mission: { launch: { power: engine off } } } }\n";
        File.WriteAllText(folder["study.yaml"], text);
        Assert.Equal(ExitCode.Success, easier.Run(["evaluate", folder["study.yaml"], "--variant", "easy", "--json", .. design]));
        using var some = JsonDocument.Parse(failed.Output);
        using var all = JsonDocument.Parse(easier.Output);
        Assert.Equal(["launch"], some.RootElement.GetProperty("failures").EnumerateObject().Select(phase => phase.Name));
        foreach (var phase in (string[])["climb", "cruise", "accelerated", "glide"])
            Assert.Equal(Residual(all.RootElement, phase), Residual(some.RootElement, phase));
    }

    private static double Residual(JsonElement design, string phase) =>
        design.GetProperty("phases").GetProperty(phase).GetProperty("residual").GetProperty("value").GetDouble();
}
