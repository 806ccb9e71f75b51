using FrameOpt.Cli;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Cli;

public class CheckCommandTests
{
    public static TheoryData<string> Studies => [.. Repository.Studies];

    [Theory]
    [MemberData(nameof(Studies))]
    public void Every_shipped_study_is_understood_and_says_it_is_invented(string name)
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("check", Repository.Study(name)));
        Assert.Contains("a valid study", terminal.Output);
        Assert.Contains("Invented scenario", File.ReadAllText(Repository.Study(name)), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Invented scenario", File.ReadAllText(Path.Combine(Repository.Root, "studies", name, "README.md")),
            StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Assumptions_and_their_sources_are_told()
    {
        var terminal = new TestTerminal();
        terminal.Run("check", Repository.Study("custom-match"));
        Assert.Matches("speed factor of the yaw leverage +0.17 s/m +assumption, range 0.1 to 0.27 s/m", terminal.Output);
    }

    [Fact]
    public void Overview_says_what_is_varied_what_is_fixed_and_between_which_places_will_be_drilled()
    {
        var terminal = new TestTerminal();
        terminal.Run("check", Repository.Study("fixed-spacing"));
        Assert.Matches("designs +2,397 = 51 x 47 levels, each in 3 phases", terminal.Output);
        Assert.Matches("run time +a second or two", terminal.Output);
        Assert.Matches("varied +lateral_offset 0 mm to 50 mm, suspension_height 120 mm to 350 mm", terminal.Output);
        Assert.Matches("fixed +hang_point_spacing at 430 mm, thrust_line_angle at 0 deg", terminal.Output);
        // By hand: half of 430 mm, moved to the right by 0 to 50 mm.
        Assert.Matches("left hang point +215 mm left to 165 mm left of the plane of symmetry", terminal.Output);
        Assert.Matches("right hang point +215 mm right to 265 mm right of the plane of symmetry", terminal.Output);
        Assert.Matches("phases +climb 25 %, cruise 75 %, glide not counted", terminal.Output);
    }

    [Theory]
    [InlineData(0.1, "a second or two")]
    [InlineData(25, "about 30 seconds")]
    [InlineData(200, "about 4 minutes")]
    [InlineData(9000, "about 2.5 hours")]
    public void Time_of_a_run_is_told_in_words(double seconds, string words) =>
        Assert.Equal(words, RunEstimate.InWords(seconds));

    [Fact]
    public void A_missing_file_is_a_mistake_in_words()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("check", "/nowhere/study.yaml"));
        Assert.Contains("one error to correct", terminal.Error);
        Assert.Equal("", terminal.Output);
    }

    [Fact]
    public void An_unknown_command_is_a_mistake() =>
        Assert.Equal(ExitCode.InvalidInput, new TestTerminal().Run("rum", "study.yaml"));
}
