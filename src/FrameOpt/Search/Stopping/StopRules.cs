namespace FrameOpt.Search.Stopping;

/// <summary>When a search that could go on is stopped; whichever rule holds first ends it.</summary>
/// <param name="Evaluations">The most designs to evaluate, 1 or more. The batch that reaches it is finished.</param>
public sealed record StopRules(long Evaluations)
{
    /// <summary>The most time, or null for no bound. With it the same seed need not give the same front.</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>Stop when the front hardly grows, or null to go on.</summary>
    public StallRule? Stall { get; init; }

    /// <summary>For each objective, turned so that less is better, a value that is good enough, or null where any will do; empty for no
    /// target.
    /// The search stops once one usable design reaches all of them.</summary>
    public IReadOnlyList<double?> Target { get; init; } = [];
}

/// <summary>Stop when the share of the objectives' box that the front dominates has hardly grown.</summary>
/// <param name="Evaluations">Over so many designs, 1 or more.</param>
/// <param name="Growth">Relative growth of the hypervolume below which the search has stalled, above 0.</param>
public sealed record StallRule(long Evaluations, double Growth);
