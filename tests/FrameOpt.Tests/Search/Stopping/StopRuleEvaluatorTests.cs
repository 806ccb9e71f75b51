using FrameOpt.Search;
using FrameOpt.Search.Fronts;
using FrameOpt.Search.Stopping;

namespace FrameOpt.Tests.Search.Stopping;

public class StopRuleEvaluatorTests
{
    [Fact]
    public void As_many_designs_as_allowed_is_a_reason()
    {
        var rules = new StopRuleEvaluator(new StopRules(20), () => Front((0, 0)));
        Assert.Null(rules.ReasonAfter(Batch((1, 2), 10), TimeSpan.Zero));
        Assert.Equal(new StopReason.EvaluationsUsed(20), rules.ReasonAfter(Batch((1, 2), 10), TimeSpan.Zero));
    }

    [Fact]
    public void Time_that_is_over_is_a_reason()
    {
        var rules = new StopRuleEvaluator(new StopRules(1000) { Time = TimeSpan.FromSeconds(2) }, () => Front((0, 0)));
        Assert.Null(rules.ReasonAfter(Batch((1, 2), 10), TimeSpan.FromSeconds(1.9)));
        Assert.Equal(new StopReason.TimeUsed(TimeSpan.FromSeconds(2)), rules.ReasonAfter(Batch((1, 2), 10), TimeSpan.FromSeconds(2)));
    }

    [Fact]
    public void One_design_that_reaches_every_target_is_a_reason()
    {
        var rules = new StopRuleEvaluator(new StopRules(1000) { Target = [3, null] }, () => Front((0, 0)));
        Assert.Null(rules.ReasonAfter(Batch((3.1, 0), 10), TimeSpan.Zero));
        Assert.Equal(new StopReason.TargetReached(), rules.ReasonAfter(Batch((3, 9), 10), TimeSpan.Zero));
    }

    [Fact]
    public void A_front_that_no_longer_grows_is_a_reason_and_one_that_grows_is_none()
    {
        var front = Front((0, 1), (1, 0));
        var rule = new StallRule(50, 0.01);
        var still = new StopRuleEvaluator(new StopRules(1000) { Stall = rule }, () => front);
        Assert.Equal([null, null, null, null, null, new StopReason.Stalled(rule)], Enumerable.Range(0, 6)
            .Select(_ => still.ReasonAfter(Batch((1, 1), 10), TimeSpan.Zero)));

        var at = 1.0;
        var growing = new StopRuleEvaluator(new StopRules(1000) { Stall = new StallRule(50, 0.01) }, () => Front((0, at *= 0.9), (at, 0)));
        Assert.All(Enumerable.Range(0, 30), _ => Assert.Null(growing.ReasonAfter(Batch((1, 1), 10), TimeSpan.Zero)));
    }

    private static FrontPoints Front(params (double, double)[] points) =>
        new([.. points.Select((_, i) => (long)i)], [[.. points.Select(p => p.Item1)], [.. points.Select(p => p.Item2)]]);

    private static EvaluatedBatch Batch((double First, double Second) values, int count)
    {
        var problem = new Problem([new Factor.Continuous("x", 0, 1)], 0, [new Objective("a", false), new Objective("b", false)], [], _ =>
            { });
        var batch = new EvaluatedBatch(problem, DesignBatch.Single(0, count, new double[count]));
        Array.Fill(batch.Objectives[0], values.First);
        Array.Fill(batch.Objectives[1], values.Second);
        batch.CheckConstraints();
        return batch;
    }
}
