using FrameOpt.Studies;

namespace FrameOpt.Tests.StudyFile;

/// <summary>A study with twenty planted mistakes: one run tells them all.</summary>
public class TwentyDiagnosticsTests
{
    private static readonly string text = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "References", "twenty-mistakes.yaml"));

    [Fact]
    public void All_twenty_are_reported_in_one_run_in_the_order_of_lines()
    {
        var reading = WorkedStudyText.Read(text);
        Assert.Null(reading.Study);
        int[] lines = [3, 6, 7, 8, 9, 11, 12, 13, 15, 17, 19, 22, 24, 25, 25, 27, 28, 33, 34, 36];
        Assert.Equal(lines, reading.Diagnostics.Select(diagnostic => diagnostic.Line));
    }

    [Fact]
    public void Every_message_says_what_and_how_to_mend_it()
    {
        foreach (var diagnostic in WorkedStudyText.Read(text).Diagnostics)
        {
            Assert.Equal("study.yaml", diagnostic.File);
            Assert.EndsWith(".", diagnostic.Message);
            Assert.Matches("[.?]$", diagnostic.Fix);
            Assert.Contains($"`{diagnostic.Excerpt}`", diagnostic.Text);
            Assert.True(diagnostic.Text.Length < 400, diagnostic.Text);
        }
    }
}
