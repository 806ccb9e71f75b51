using FrameOpt.Cli;
using FrameOpt.StudyFile.Editing;
using FrameOpt.Tests.Cli;
using FrameOpt.Tests.Reports;
using FrameOpt.Tests.Running;
using static FrameOpt.Tests.StudyFile.WorkedStudyText;

namespace FrameOpt.Tests.StudyFile.Sections;

/// <summary>Why a figure is as it is, and where it is from: of any group and any figure of a study.</summary>
public sealed class ReasonReadingTests
{
    private static string Reasoned(string text) => text
        .Replace("mass: 5 kg, ", "mass: { value: 5 kg, source: own scale }, ")
        .Replace("{ weight: 0.20, power: climb", "{ weight: { value: 0.20, reason: \"a circuit, mostly\" }, power: climb")
        .Replace("{ from: 0 mm, to: 60 mm, ", "{ reason: tube ends there, from: 0 mm, to: 60 mm, ")
        .Replace("- minimise: residual_rms", "- { minimise: residual_rms, reason: what pilots feel }")
        .Replace("at_least: 3 }", "at_least: 3, reason: margin of the old frame, source: flight test }")
        .Replace("residual_rms: 3,", "residual_rms: { value: 3, source: talk with the club },");

    [Fact]
    public void Reasons_and_sources_are_kept_and_no_figure_changes()
    {
        var (plain, study) = (Right(Text), Right(Reasoned(Text)));
        Assert.Equal(
            [
                "machine.masses[clothing].mass 5 kg source: own scale", "mission.climb.weight 0.20 reason: a circuit, mostly",
                "factors.lateral_offset  reason: tube ends there", "objectives[1]  reason: what pilots feel",
                "limits[1]  reason: margin of the old frame; source: flight test",
                "ranking.weights.residual_rms 3 source: talk with the club",
            ],
            study.Reasons.Select(figure => $"{figure.Path} {figure.Value} {figure.Text}"));
        Assert.Equal(plain.Mission, study.Mission);
        Assert.Equal(plain.Machine.Masses, study.Machine.Masses);
        Assert.Equal(plain.Ranking.Weights, study.Ranking.Weights);
        Assert.Equal(plain.Limits, study.Limits);
        Assert.Equal(plain.Factors.Select(factor => factor.LevelsSi.Count), study.Factors.Select(factor => factor.LevelsSi.Count));
    }

    [Theory]
    [InlineData("mass: 5 kg", "mass: { value: 5 kg, saurce: own scale }", "Did you mean `source`?")]
    [InlineData("mass: 5 kg", "mass: { value: 5 m, source: own scale }", "machine.masses[2].mass wants a mass")]
    [InlineData("mass: 5 kg", "mass: { value: 5,5 kg, source: own scale }", "Write 5.5 kg.")]
    [InlineData("mass: 5 kg", "mass: { source: own scale }", "Write under `value`, beside the reason, ")]
    [InlineData("at_least: 3", "at_least: 3, reason: ", "limits[1].reason has no text")]
    [InlineData("at_least: 3", "at_least: 3, reason: [a, b]", "limits[1].reason has no text")]
    [InlineData("at_least: 3", "at_least: 3, raeson: text", "Did you mean `reason`?")]
    [InlineData("format: 1", "format: 1\nsource: all of it", "There is no key `source` at the left edge")]
    public void A_wrong_one_is_an_error_with_its_place(string piece, string other, string message)
    {
        var error = OneDiagnostic(With(piece, other)).Text;
        Assert.Contains(message, error);
        Assert.Contains("line ", error);
    }

    [Fact]
    public void A_variant_that_replaces_a_figure_replaces_its_reason()
    {
        var text = Reasoned(Text)
            + "variants: { other: { mission: { climb: { weight: { value: 0.3, reason: hills } }, cruise: { weight: 0.5 } } } }\n";
        var reading = FrameOpt.StudyFile.StudyReader.Parse(System.Text.Encoding.UTF8.GetBytes(text), "study.yaml", "other");
        Assert.Empty(reading.Diagnostics);
        Assert.Equal(["mission.climb.weight 0.3 reason: hills"], reading.Study!.Reasons.Where(figure => figure.Path.StartsWith("mission"))
            .Select(figure => $"{figure.Path} {figure.Value} {figure.Text}"));
        Assert.Equal(0.3, reading.Study.Mission[1].Weight);
    }

    [Fact]
    public void An_edit_of_such_a_figure_changes_its_value_alone()
    {
        var edit = StudyEdit.Of(Reasoned(Text));
        Assert.Equal("5 kg", edit.Value("machine.masses.1.mass"));
        Assert.Contains("mass: { value: 6 kg, source: own scale }", edit.With("machine.masses.1.mass", "6 kg"));
    }

    [Fact]
    public void Answer_page_workbook_and_json_of_a_run_have_them()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], Reasoned(ProductLineStudy.Grid));
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("run", folder["study.yaml"], "--out", folder["out"]));
        var book = new WorkbookReader(File.ReadAllBytes(folder["out/results.xlsx"]));
        foreach (var text in new[]
        {
            terminal.Output, File.ReadAllText(folder["out/report.html"]),
            string.Join("\n", book.Sheets["Summary"].SelectMany(row => row).OfType<string>()),
            File.ReadAllText(folder["out/run.json"]),
        })
        {
            Assert.Contains("a circuit, mostly", text);
            Assert.Contains("margin of the old frame", text);
            Assert.Contains("talk with the club", text);
        }

        Assert.Contains("mission, climb, weight", terminal.Output);
    }
}
