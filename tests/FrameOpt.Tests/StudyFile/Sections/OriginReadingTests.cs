using FrameOpt.Cli;
using FrameOpt.Tests.Cli;

namespace FrameOpt.Tests.StudyFile.Sections;

public sealed class OriginReadingTests
{
    [Fact]
    public void A_figure_and_a_group_carry_their_origin()
    {
        var study = WorkedStudyText.Right(WorkedStudyText.Text
            + "origins: { machine: { masses: { 0: { right: measured } }, pilot: { drag_area: guess } }, wing: { polar: maker } }\n");
        Assert.Equal(["machine.masses.0.right measured", "machine.pilot.drag_area guess", "wing.polar maker"],
            study.Origins.Select(origin => $"{origin.Path} {origin.Word}"));
    }

    [Theory]
    [InlineData("origins: { machine: { pilot: { drag_area: invented } } }", "is none of measured, maker, guess, unknown")]
    [InlineData("origins: { machine: { pilot: { drag: guess } } }", "no figure of this study")]
    [InlineData("origins: { mission: { cruising: guess } }", "no figure of this study")]
    [InlineData("origins: { machine: { masses: { 9: { right: guess } } } }", "no figure of this study")]
    public void A_word_or_a_place_that_is_none_is_refused(string line, string message)
    {
        var reading = WorkedStudyText.Read($"{WorkedStudyText.Text}{line}\n");
        Assert.Null(reading.Study);
        Assert.Contains(message, Assert.Single(reading.Diagnostics).Text);
    }

    [Fact]
    public void The_answer_names_the_guesses_that_matter_and_no_number_changes()
    {
        using var folder = new TemporaryFolder();
        string Lines(string origins)
        {
            File.WriteAllText(folder["study.yaml"], File.ReadAllText(Repository.Study("custom-match")) + origins);
            var terminal = new TestTerminal();
            Assert.Equal(ExitCode.Success, terminal.Run("evaluate", folder["study.yaml"]));
            return terminal.Output;
        }

        var (plain, marked) = (Lines(""), Lines("\norigins: { machine: { masses: { 0: { right: guess } } } }\n"));
        Assert.Contains("GUESSES THAT MATTER, by what they move in cruise: the pilot's seat, sideways (", marked);
        Assert.Equal(plain.Split('\n'), marked.Split('\n').Where(line => !line.Contains("GUESSES", StringComparison.Ordinal)));
    }
}
