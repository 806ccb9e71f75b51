using System.Text.RegularExpressions;
using FrameOpt.Cli;
using FrameOpt.Tests.Cli;

namespace FrameOpt.Tests.Fit.Measuring;

public sealed class GuideTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    public void Dispose() => folder.Dispose();

    [Fact]
    public void Every_command_of_the_guide_runs()
    {
        var guide = File.ReadAllText(Path.Combine(Repository.Root, "docs", "measure.md")).ReplaceLineEndings("\n");
        var commands = Regex.Matches(guide, @"^ {8}frameopt (?<words>.+)$", RegexOptions.Multiline)
            .Select(match => match.Groups["words"].Value).ToList();
        Assert.True(commands.Count >= 7);
        Directory.CreateDirectory(folder["results"]);
        foreach (var command in commands)
        {
            // Files of the checkout stay where they are, new ones go to a folder of their own.
            var words = Regex.Matches(command, @"(?<plain>[^\s']+='[^']*'|'[^']*'|\S+)").Select(match => match.Value.Replace("'", ""))
                .Select(word => word.StartsWith("studies/", StringComparison.Ordinal) ? Path.Combine(Repository.Root, word)
                    : word.EndsWith(".yaml", StringComparison.Ordinal) || word.EndsWith(".xlsx", StringComparison.Ordinal)
                        || word.StartsWith("results/", StringComparison.Ordinal) ? folder[word] : word);
            var terminal = new TestTerminal();
            Assert.True(terminal.Run([.. words]) == ExitCode.Success, $"{command}\n{terminal.Error}");
        }
    }
}
