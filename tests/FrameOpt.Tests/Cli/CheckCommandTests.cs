using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli;

public class CheckCommandTests
{
    public static TheoryData<string> Studies => [.. Repository.Studies];

    [Theory]
    [MemberData(nameof(Studies))]
    public void Every_shipped_study_is_understood_and_says_it_is_invented(string name)
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Done, terminal.Run("check", Repository.Study(name)));
        Assert.Contains("a valid study of ", terminal.Output);
        Assert.Contains("Invented scenario", File.ReadAllText(Repository.Study(name)), StringComparison.OrdinalIgnoreCase);
        Assert.Contains("Invented scenario", File.ReadAllText(Path.Combine(Repository.Root, "studies", name, "README.md")), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public void Assumptions_and_their_sources_are_told()
    {
        var terminal = new TestTerminal();
        terminal.Run("check", Repository.Study("custom-match"));
        Assert.Matches("yaw leverage +0.6 +assumption, range 0.2 to 1.6", terminal.Output);
    }

    [Fact]
    public void A_missing_file_is_a_mistake_in_words()
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Mistake, terminal.Run("check", "/nowhere/study.yaml"));
        Assert.Contains("one thing to mend", terminal.Error);
        Assert.Equal("", terminal.Output);
    }

    [Fact]
    public void An_unknown_command_is_a_mistake() =>
        Assert.Equal(ExitCode.Mistake, new TestTerminal().Run("rum", "study.yaml"));
}
