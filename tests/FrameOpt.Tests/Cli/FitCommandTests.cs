using FrameOpt.Cli;
using FrameOpt.StudyFile;

namespace FrameOpt.Tests.Cli;

public sealed class FitCommandTests : IDisposable
{
    private readonly TemporaryFolder folder = new();
    private readonly string study = Repository.Study("custom-match");

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Two_readings_correct_a_study_and_leave_its_comments()
    {
        var corrected = folder["corrected.yaml"];
        var untouched = File.ReadAllBytes(study);
        var (code, output, _) = Fit("--scales", "left 46.1 kgf, right 65.2 kgf", "--set", "lateral_offset=-20 mm", "--out", corrected);
        Assert.Equal(ExitCode.Success, code);
        // By hand: 19.1 kgf x 440 mm / (2 x 111.3 kgf) - 20 mm = 17.8 mm.
        Assert.Contains("is 17.8 mm to the pilot's right", output);
        Assert.Contains("the pilot's seat, sideways", output);
        Assert.Contains("The hole that fits", output);
        Assert.Contains("Riser twist and torque at full power near the ground can injure or kill.", output);
        Assert.NotNull(StudyReader.Read(corrected).Study);
        var (before, after) = (File.ReadAllLines(study), File.ReadAllLines(corrected));
        var comments = before.Where(line => line.TrimStart().StartsWith('#')).ToList();
        Assert.Equal(comments, comments.Intersect(after));
        Assert.Contains(after, line => line.StartsWith("# Corrected by frameopt from a hang check read on ", StringComparison.Ordinal));
        Assert.Equal(untouched, File.ReadAllBytes(study));
    }

    [Fact]
    public void A_corrected_study_expects_the_readings_it_was_corrected_by()
    {
        var corrected = folder["corrected.yaml"];
        Fit("--scales", "left 50.2 kgf, right 58.8 kgf", "--set", "lateral_offset=-20 mm", "--out", corrected);
        var terminal = new TestTerminal();
        terminal.Run("fit", corrected, "--scales", "left 50.2 kgf, right 58.8 kgf", "--set", "lateral_offset=-20 mm");
        var expected = System.Text.RegularExpressions.Regex.Match(terminal.Output.ReplaceLineEndings(" "),
            @"expected left [\d,]+ N \((?<left>[\d.]+) kgf\), right\s+[\d,]+ N \((?<right>[\d.]+) kgf\)");
        Assert.True(expected.Success, terminal.Output);
        Assert.InRange(double.Parse(expected.Groups["left"].Value, System.Globalization.CultureInfo.InvariantCulture), 49.7, 50.7);
        Assert.InRange(double.Parse(expected.Groups["right"].Value, System.Globalization.CultureInfo.InvariantCulture), 58.3, 59.3);
    }

    [Theory]
    [InlineData("46.1 kgf, 65.2 kgf", "Two readings are wanted, one of each side.")]
    [InlineData("left 46.1 kgf, left 65.2 kgf", "Two readings are wanted, one of each side.")]
    [InlineData("left 46,1 kgf, right 65.2 kgf", "46.1")]
    [InlineData("left 46.1, right 65.2 kgf", "has no unit")]
    [InlineData("left -46.1 kgf, right 65.2 kgf", "must be 0 or more")]
    [InlineData("left 46.1 N·m, right 65.2 kgf", "wants a force")]
    public void A_reading_that_is_none_is_refused_with_what_to_write(string scales, string message)
    {
        var (code, output, error) = Fit("--scales", scales);
        Assert.Equal(ExitCode.InvalidInput, code);
        Assert.Equal("", output);
        Assert.Contains(message, error);
    }

    [Fact]
    public void A_file_that_exists_is_never_overwritten()
    {
        File.WriteAllText(folder["mine.yaml"], "mine");
        var (code, _, error) = Fit("--scales", "left 46.1 kgf, right 65.2 kgf", "--out", folder["mine.yaml"]);
        Assert.Equal(ExitCode.InvalidInput, code);
        Assert.Contains("already exists and is not overwritten", error);
        Assert.Equal("mine", File.ReadAllText(folder["mine.yaml"]));
    }

    private (int Code, string Output, string Error) Fit(params string[] args)
    {
        var terminal = new TestTerminal();
        var code = terminal.Run(["fit", study, .. args]);
        return (code, terminal.Output, terminal.Error);
    }
}
