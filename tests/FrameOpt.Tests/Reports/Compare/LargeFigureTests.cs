using System.Text.RegularExpressions;

namespace FrameOpt.Tests.Reports.Compare;

public class LargeFigureTests
{
    // Found by a damaged file: 1e308 m is a number, and 1e311 mm is none.
    [Fact]
    public void A_figure_too_large_for_any_unit_is_refused_with_its_path()
    {
        using var folder = new TemporaryFolder();
        var run = RunJsonFolder.Write(folder, "run", ReportFixture.Report(2));
        var path = Path.Combine(run, "run.json");
        var text = File.ReadAllText(path);
        var value = new Regex("(\"up\":\\s*\\{\\s*\"value\":\\s*)[^,]+").Replace(text, "${1}-1e308", 1);
        Assert.NotEqual(text, value);
        File.WriteAllText(path, value);
        Assert.All(RunJsonFolder.Refused(run, run), error => Assert.Contains("up > value: a number is expected", error));
    }
}
