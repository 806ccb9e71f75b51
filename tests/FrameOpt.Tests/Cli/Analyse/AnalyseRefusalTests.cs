using FrameOpt.Cli;

namespace FrameOpt.Tests.Cli.Analyse;

/// <summary>Tables of measured runs with mistakes in them.</summary>
public class AnalyseRefusalTests
{
    [Theory]
    [InlineData("A,B,y\n-1,-1,1\n1,-1,2,5\n-1,1,\"3,5\"\n1,1,x\n", "line 3, D: `5`: This cell stands under no header", "decimal point")]
    [InlineData("A,B,y\n-1,-1,1\n1,-1,2\n-1,1,\"3,5\"\n1,1,x\n", "line 4, C: `3,5`", "Write 3.5.")]
    [InlineData("A,B,y\n-1,-1,1\n1,-1,2\n-1,,3\n1,1,4\n", "line 4, B: B of this run is empty", "")]
    [InlineData("A,A,y\n-1,-1,1\n1,1,2\n", "Two columns are headed A", "Keep one")]
    [InlineData("A,B,y\n-1,-1,1 kgf\n1,-1,2\n-1,1,3\n", "A unit stands behind this number", "unit of the header")]
    [InlineData("A,B,y\n-1,-1,2\n1,-1,2\n-1,1,2\n", "Every reading of y is the same", "--response")]
    [InlineData("A,B,y [N],model y [kgf]\n-1,-1,1,1\n1,-1,2,2\n-1,1,3,3\n", "have different units", "the same unit")]
    [InlineData("A,B,y\n-1,-1,\n1,-1,2\n-1,1,3\n", "Fewer than three runs", "Fill in")]
    public void What_is_wrong_is_named_with_its_cell(string runs, string what, string fix)
    {
        using var folder = new TemporaryFolder();
        File.WriteAllText(folder["runs.csv"], runs);
        var terminal = new TestTerminal();
        Assert.Equal(ExitCode.InvalidInput, terminal.Run("analyse", folder["runs.csv"]));
        Assert.Contains(what, terminal.Error.ReplaceLineEndings(" "));
        Assert.Contains(fix, terminal.Error.ReplaceLineEndings(" "));
    }
}
