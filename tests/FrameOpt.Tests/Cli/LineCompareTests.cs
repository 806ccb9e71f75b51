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
        // Every customer has A; where B is better it is served better, and never worse.
        Assert.Matches(@"Of 19 pieces in both, line 2 serves \d+ better than line 1 and 0 worse",
            terminal.Output.ReplaceLineEndings(" "));
        var table = File.ReadAllLines(Path.Combine(folder["both"], "comparison.csv"));
        Assert.Equal("part,what,unit,line 1,line 2", table[0]);
        Assert.Contains("difference of the studies,line: geometries,,1,2", table);
        Assert.Contains(table, row => row.StartsWith("geometry,B: dimensions,,,"));
        Assert.Equal(5, table.Count(row => row.StartsWith("customer,") && row.Contains(": geometry")));
        var missing = new TestTerminal();
        File.Delete(Path.Combine(folder["two"], "line.json"));
        Assert.Equal(ExitCode.InvalidInput, missing.Run("compare", folder["one"], folder["two"]));
        Assert.Contains("contains no line.json, so it is not the results folder of a line.", missing.Error);
    }

    // Another engine in an option: no figure of the study itself differs, the lines are not comparable, and the value is named once.
    [Fact]
    public void What_a_configuration_flies_is_compared_too()
    {
        using var folder = new TemporaryFolder();
        var text = ProductLineStudy.Text($"objective: mean; up_to: 2; geometries: [{First}]").Replace("  variants: 2\n", "")
            .Replace("effort_worst, at_most: 0.6", "effort_worst, at_most: 9")
            .Replace("{ from: 420 mm, to: 460 mm, step: 20 mm }", "440 mm")
            .Replace("{ from: 0 mm, to: 60 mm, step: 5 mm }", "20 mm").Replace("{ from: 100 mm, to: 400 mm, step: 50 mm }", "150 mm");
        foreach (var (name, diameter) in new[] { ("one", "1.35 m"), ("two", "1.40 m") })
        {
            File.WriteAllText(folder[$"{name}.yaml"], text.Replace("1.35 m", diameter));
            Assert.Equal(ExitCode.Success, new TestTerminal().Run("line", folder[$"{name}.yaml"], "--out", folder[name]));
        }

        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.Success, terminal.Run("compare", folder["one"], folder["two"]));
        var said = string.Join(' ', terminal.Output.Split());
        Assert.Contains("NOT COMPARABLE: line 2 differs from line 1 in what a configuration flies.", said);
        Assert.Contains("big, small: machine propeller diameter 1.35 m -> 1.4 m", said);
        Assert.DoesNotContain("light, small: machine", said);
    }
}
