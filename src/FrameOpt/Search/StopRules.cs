namespace FrameOpt.Search;

/// <summary>When a search that could go on is stopped; whichever rule holds first ends it.</summary>
/// <param name="Evaluations">The most designs to evaluate, 1 or more. The batch that reaches it is finished.</param>
public sealed record StopRules(long Evaluations)
{
    /// <summary>The most time, or null for no bound. With it the same seed need not give the same front.</summary>
    public TimeSpan? Time { get; init; }

    /// <summary>Stop when the front hardly grows, or null to go on.</summary>
    public StallRule? Stall { get; init; }

    /// <summary>For each objective, turned so that less is better, a value that is good enough, or null where any will do; empty for no target.
    /// The search stops once one usable design reaches all of them.</summary>
    public IReadOnlyList<double?> Target { get; init; } = [];
}
