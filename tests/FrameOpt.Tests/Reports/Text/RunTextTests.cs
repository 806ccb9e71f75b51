using FrameOpt.Reports.Text;
using FrameOpt.Search.Stopping;

namespace FrameOpt.Tests.Reports.Text;

public class RunTextTests
{
    private static readonly StopReason[] reasons =
    [
        new StopReason.GridComplete(),
        new StopReason.EvaluationsUsed(20_000),
        new StopReason.TimeUsed(TimeSpan.FromSeconds(2)),
        new StopReason.Stalled(new StallRule(5_000, 0.001)),
        new StopReason.TargetReached(),
        new StopReason.NoImprovingStep(),
        new StopReason.LocalSearchEnded(18_000, new StopReason.EvaluationsUsed(18_000), 1_234, new StopReason.NoImprovingStep()),
        new StopReason.StoppedEarly(3, 10),
    ];

    [Fact]
    public void Every_reason_to_stop_has_words_of_its_own_with_its_figures()
    {
        Assert.Equal(reasons.Length, typeof(StopReason).GetNestedTypes().Length);
        Assert.Equal(reasons.Length, reasons.Select(RunText.Of).Distinct().Count());
        Assert.Contains("20,000 designs", RunText.Of(reasons[1]));
        Assert.Contains("2 s", RunText.Of(reasons[2]));
        Assert.Contains("0.1 %", RunText.Of(reasons[3]));
        Assert.Contains($"({RunText.Of(reasons[5])})", RunText.Of(reasons[6]));
        Assert.Equal("stopped after 3 of 10 designs", RunText.Of(reasons[7]));
    }
}
