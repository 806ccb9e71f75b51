using FrameOpt.Cli;
using FrameOpt.Tests.Running;

namespace FrameOpt.Tests.Cli;

/// <summary>Two lines of the same customers side by side.</summary>
public class LineCompareTests
{
    private const string First = "{ name: A, hang_point_spacing: 440 mm, lateral_offset: 20 mm, suspension_height: 150 mm }";
    private const string Second = "{ name: B, hang_point_spacing: 440 mm, lateral_offset: 35 mm, suspension_height: 150 mm }";

    [Fact]
    public void Lines_are_read_back_with_what_they_make_and_are_worth()
    {
        using var folder = new TemporaryFolder();
        foreach (var (name, geometries) in new[] { ("one", First), ("two", $"{First}, {Second}") })
        {
            File.WriteAllText(folder[$"{name}.yaml"], ProductLineStudy.Text($"objective: mean; up_to: 2; geometries: [{geometries}]")
                .Replace("  variants: 2\n", "").Replace("effort_worst, at_most: 0.6", "effort_worst, at_most: 9"));
            Assert.Equal(ExitCode.Success, new TestTerminal().Run("line", folder[$"{name}.yaml"], "--out", folder[name]));
        }

        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("compare", folder["one"], folder["two"], "--out", folder["both"]));
        Assert.Contains("2 product lines side by side", terminal.Output);
        Assert.Matches(@"geometries +1 +2\n", terminal.Output);
        Assert.Contains("line: geometries 1 -> 2", terminal.Output);
        Assert.Contains("What line 2 makes, and who gets which", File.ReadAllText(Path.Combine(folder["both"], "comparison.html")));
        var missing = new TestTerminal();
        File.Delete(Path.Combine(folder["two"], "line.json"));
        Assert.Equal(ExitCode.InvalidInput, missing.Run("compare", folder["one"], folder["two"]));
        Assert.Contains("contains no line.json, so it is not the results folder of a line.", missing.Error);
    }
}
