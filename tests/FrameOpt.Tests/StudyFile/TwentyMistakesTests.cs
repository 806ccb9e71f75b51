using FrameOpt.Studies;

namespace FrameOpt.Tests.StudyFile;

/// <summary>A study with twenty planted mistakes: one run tells them all.</summary>
public class TwentyMistakesTests
{
    private static readonly string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "References", "twenty-mistakes.yaml"));

    [Fact]
    public void All_twenty_are_reported_in_one_run_in_the_order_of_lines()
    {
        var reading = WorkedStudyText.Read(text);
        Assert.Null(reading.Study);
        int[] lines = [3, 6, 7, 8, 9, 11, 12, 13, 15, 17, 19, 22, 24, 25, 25, 27, 28, 33, 34, 36];
        Assert.Equal(lines, reading.Mistakes.Select(mistake => mistake.Line));
    }

    [Fact]
    public void Every_message_says_what_and_how_to_mend_it()
    {
        foreach (var mistake in WorkedStudyText.Read(text).Mistakes)
        {
            Assert.Equal("study.yaml", mistake.File);
            Assert.EndsWith(".", mistake.What);
            Assert.Matches("[.?]$", mistake.Mend);
            Assert.Contains($"`{mistake.Found}`", mistake.Text);
            Assert.True(mistake.Text.Length < 400, mistake.Text);
        }
    }
}
