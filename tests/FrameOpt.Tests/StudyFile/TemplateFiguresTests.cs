using FrameOpt.Tests.Cli;

namespace FrameOpt.Tests.StudyFile;

/// <summary>Figures that are still those of the template a study began as are counted and listed.</summary>
public class TemplateFiguresTests
{
    private static readonly string template = File.ReadAllText(Repository.Template("custom-match")).ReplaceLineEndings("\n");

    // Counted by hand in the file: masses 4 x 4 and one volume more, hang line 1, propeller 5 and bench 5, engine 2 and 5 x 2, pilot
    // 2 and 3, wing 5 and 2 and 6, baseline 4.
    private const int Figures = 17 + 1 + 10 + 12 + 5 + 13 + 4;

    [Fact]
    public void Nothing_changed_yet_all_are_the_templates() =>
        Assert.StartsWith($"study.yaml line 11: {Figures} of {Figures} figures of machine, wing and baseline are the template's: "
            + "machine.masses.pilot mass, forward, right and up; ", Warning(template));

    [Theory]
    [InlineData("mass: 76 kg", "mass: 81 kg", -1, "machine.masses.pilot forward, right and up;")]
    [InlineData("mass: 76 kg", "mass: 76000 g", 0, "machine.masses.pilot mass, forward, right and up;")]
    [InlineData("name: fuel,", "name: petrol,", 0, "machine.masses.petrol volume, density")]
    [InlineData("[8800 rpm, 14 N·m]", "[8900 rpm, 15 N·m]", -2, "machine.engine reduction, efficiency and torque (8);")]
    [InlineData("span: 11 m ", "span: 10.9 m ", -1, "wing mass, area, lines and line_spread;")]
    [InlineData("weight: 0.55", "weight: 0.54", 0, "wing mass, area, span")]
    public void A_figure_of_ones_own_is_no_longer_counted(string piece, string other, int change, string listed)
    {
        Assert.Contains(piece, template);
        var warning = Warning(template.Replace(piece, other));
        Assert.Contains($": {Figures + change} of {Figures} figures", warning);
        Assert.Contains(listed, warning);
    }

    [Fact]
    public void A_study_that_names_no_template_is_compared_with_none() =>
        Assert.Empty(WorkedStudyText.Right(template.Replace("template: custom-match", "# custom-match")).Warnings);

    [Fact]
    public void A_template_that_does_not_exist_is_told_with_the_ones_that_do() =>
        Assert.Equal("Did you mean `custom-match`?",
            WorkedStudyText.OneDiagnostic(template.Replace("template: custom-match", "template: custom-macth")).Fix);

    [Fact]
    public void A_run_says_it_on_the_screen_on_the_page_and_in_run_json()
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["study.yaml"], template);
        var terminal = new TestTerminal();
        terminal.Run("run", folder["study.yaml"], "--out", folder["results"]);
        foreach (var text in new[] { terminal.Output, terminal.Error, File.ReadAllText(folder["results/report.html"]),
            File.ReadAllText(folder["results/run.json"]) })
            Assert.Matches($"{Figures} of {Figures} figures of machine, wing and baseline are the template('|&#39;|.u0027)s",
                string.Join(' ', text.Split()));
        terminal = new TestTerminal();
        terminal.Run("evaluate", folder["study.yaml"]);
        Assert.Contains($"{Figures} of {Figures} figures", terminal.Error);
    }

    private static string Warning(string text) => Assert.Single(WorkedStudyText.Right(text).Warnings);
}
