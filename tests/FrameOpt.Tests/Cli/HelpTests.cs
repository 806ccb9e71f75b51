using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli;

public class HelpTests
{
    [Theory]
    [InlineData("run", "frameopt run study.yaml")]
    [InlineData("check", "frameopt check study.yaml")]
    [InlineData("evaluate", "frameopt evaluate study.yaml --set lateral_offset='25 mm'")]
    [InlineData("new", "frameopt new custom-match")]
    [InlineData("compare", "frameopt compare results/monday results/tuesday")]
    [InlineData("line", "frameopt line study.yaml")]
    [InlineData("completion", "eval \"$(frameopt completion bash)\"")]
    [InlineData("", "frameopt new custom-match")]
    public void Help_of_every_command_ends_with_examples(string command, string example)
    {
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run([.. command.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]));
        Assert.Contains($"Examples:{Environment.NewLine}  frameopt".Replace("frameopt", example[..4]), terminal.Output);
        Assert.Contains($"  {example}", terminal.Output);
        Assert.Equal("", terminal.Error);
    }

    [Fact]
    public void Every_command_has_a_description_and_so_has_each_of_its_options()
    {
        var root = new TestTerminal();
        root.Run("--help");
        foreach (var command in new[] { "run", "check", "evaluate", "compare", "line", "new", "completion" })
        {
            Assert.Matches($@"(?m)^  {command}\b.*  \w", root.Output);
            var terminal = new TestTerminal();
            terminal.Run(command, "--help");
            Assert.DoesNotMatch(@"(?m)^  (--?|<)\S+( <[^>]+>)?\s*$", terminal.Output);
        }
    }
}
