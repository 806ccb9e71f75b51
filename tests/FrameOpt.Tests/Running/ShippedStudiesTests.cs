using System.Text.Json;
using FrameOpt.Cli;
using FrameOpt.Studies;
using FrameOpt.Tests.Cli;

namespace FrameOpt.Tests.Running;

/// <summary>Every study in studies/ runs, and its files are read back.</summary>
public class ShippedStudiesTests
{
    public static TheoryData<string> Studies => [.. Repository.Studies];

    [Theory]
    [MemberData(nameof(Studies))]
    public void A_shipped_study_runs_and_its_files_agree(string name)
    {
        using var folder = new TemporaryFolder();
        Assert.Equal(ExitCode.Success, new TestTerminal().Run("run", Repository.Study(name), "--out", folder["a"]));
        using var run = JsonDocument.Parse(File.ReadAllText(Path.Combine(folder["a"], "run.json")));
        var counts = run.RootElement.GetProperty("counts");
        Assert.True(run.RootElement.GetProperty("complete").GetBoolean());
        Assert.Equal(
            counts.GetProperty("evaluated").GetInt64(),
            counts.GetProperty("failed").GetInt64() + counts.GetProperty("outside_limits").GetInt64()
                + counts.GetProperty("feasible").GetInt64());
        var rows = File.ReadAllLines(Path.Combine(folder["a"], "designs.csv")).Length - 1;
        Assert.Equal(run.RootElement.GetProperty("front").GetProperty("rows").GetArrayLength(), rows);
        Assert.True(rows > 1);
    }
}
