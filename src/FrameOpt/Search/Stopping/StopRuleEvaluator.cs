using FrameOpt.Search.Fronts;

namespace FrameOpt.Search.Stopping;

/// <summary>Watches a search and tells when and why to stop it.</summary>
public sealed class StopRuleEvaluator
{
    /// <summary>How often the front is looked at within the span of a stall rule.</summary>
    private const int ChecksPerStallWindow = 5;

    /// <summary>Sample points; enough to see a growth of a thousandth, because both fronts are compared on the same points.</summary>
    private const int Samples = 1 << 12;

    private readonly StopRules rules;
    private readonly Func<FrontPoints> front;
    private readonly Queue<FrontPoints> earlier = new();
    private long evaluated;
    private long nextCheck;

    /// <summary>An evaluator that has seen no batch yet.</summary>
    /// <param name="rules">When to stop.</param>
    /// <param name="front">Gives the front of everything seen so far; asked only by a stall rule.</param>
    /// <param name="evaluated">Designs evaluated before, which count towards the most.</param>
    public StopRuleEvaluator(StopRules rules, Func<FrontPoints> front, long evaluated = 0)
    {
        this.evaluated = evaluated;
        this.rules = rules;
        this.front = front;
        nextCheck = rules.Stall is null ? long.MaxValue : evaluated + CheckInterval;
    }

    private long CheckInterval => rules.Stall is { } stall ? Math.Max(1, stall.Evaluations / ChecksPerStallWindow) : long.MaxValue;

    /// <summary>Takes account of a batch of evaluations.</summary>
    /// <param name="batch">Evaluated, its constraints checked.</param>
    /// <param name="elapsed">Time since the search began.</param>
    /// <returns>The reason to stop now, or null to go on.</returns>
    public StopReason? ReasonAfter(EvaluatedBatch batch, TimeSpan elapsed)
    {
        evaluated += batch.Designs.Count;
        if (ReachesTarget(batch))
            return new StopReason.TargetReached();
        if (HasStalled())
            return new StopReason.Stalled(rules.Stall!);
        if (evaluated >= rules.Evaluations)
            return new StopReason.EvaluationsUsed(evaluated);
        return elapsed >= rules.Time ? new StopReason.TimeUsed(rules.Time.Value) : null;
    }

    private bool ReachesTarget(EvaluatedBatch batch)
    {
        if (rules.Target.Count == 0)
            return false;
        for (var i = 0; i < batch.Designs.Count; i++)
        {
            if (batch.Feasible[i] != 0 && rules.Target.Index().All(target =>
                target.Item is not { } enough || batch.Objectives[target.Index][i] <= enough))
                return true;
        }

        return false;
    }

    private bool HasStalled()
    {
        if (evaluated < nextCheck)
            return false;
        nextCheck = evaluated + CheckInterval;
        var now = front();
        earlier.Enqueue(now);
        if (earlier.Count <= ChecksPerStallWindow)
            return false;
        var before = earlier.Dequeue();
        return before.Ids.Length > 0 && HypervolumeRatio.Of(before, now, Samples).Ratio >= 1 / (1 + rules.Stall!.Growth);
    }
}
