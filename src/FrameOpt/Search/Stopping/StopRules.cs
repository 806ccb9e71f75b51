using FrameOpt.Search.Fronts;

namespace FrameOpt.Search.Stopping;

/// <summary>Stop rules of a search; the first rule that applies ends it.</summary>
/// <param name="Evaluations">Largest number of designs to evaluate, at least 1. The batch that reaches it is completed.</param>
public sealed record StopRules(long Evaluations)
{
    /// <summary>Time limit, or null for none. With a time limit the same seed may give different fronts.</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>Stop when the front hardly improves, or null for no such rule.</summary>
    public StallRule? Stall { get; init; }

    /// <summary>For each objective, oriented so that smaller is better, a target value, or null for none; empty for no target. The search
    /// stops once one feasible design reaches all targets.</summary>
    public IReadOnlyList<double?> Target { get; init; } = [];
}

/// <summary>Stop when the hypervolume of the front has hardly grown.</summary>
/// <param name="Evaluations">Length of the window in evaluated designs, at least 1.</param>
/// <param name="Growth">Relative growth of the hypervolume below which the search has stalled, above 0.</param>
public sealed record StallRule(long Evaluations, double Growth);

/// <summary>Evaluates the stop rules of a search and gives the reason it stopped.</summary>
public sealed class StopRuleEvaluator
{
    /// <summary>Number of checks of the front per stall window.</summary>
    private const int ChecksPerStallWindow = 5;

    /// <summary>Enough sample points to resolve a relative growth of 0.001, since both fronts are measured with the same points.</summary>
    private const int Samples = 1 << 12;

    private readonly StopRules rules;
    private readonly Func<FrontPoints> front;
    private readonly Queue<FrontPoints> earlier = new();
    private long evaluated;
    private long nextCheck;

    /// <summary>Creates an evaluator with no evaluations counted.</summary>
    /// <param name="rules">When to stop.</param>
    /// <param name="front">Gives the front of everything seen so far; asked only by a stall rule.</param>
    /// <param name="evaluated">Designs evaluated before, which count towards the limit.</param>
    public StopRuleEvaluator(StopRules rules, Func<FrontPoints> front, long evaluated = 0)
    {
        this.evaluated = evaluated;
        this.rules = rules;
        this.front = front;
        nextCheck = rules.Stall is null ? long.MaxValue : evaluated + CheckInterval;
    }

    private long CheckInterval => rules.Stall is { } stall ? Math.Max(1, stall.Evaluations / ChecksPerStallWindow) : long.MaxValue;

    /// <summary>Takes a batch into account.</summary>
    /// <param name="batch">An evaluated batch.</param>
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
