namespace FrameOpt.Plans;

/// <summary>What an optimal plan is asked for.</summary>
public sealed record OptimalRequest
{
    /// <summary>The names, 1 to 12.</summary>
    public required IReadOnlyList<string> Factors { get; init; }

    /// <summary>The terms to estimate.</summary>
    public required PlanModel Model { get; init; }

    /// <summary>How many runs to choose, beside the given ones.</summary>
    public required int Runs { get; init; }

    /// <summary>The coded levels each factor may take, two or more: those that can be made. A square needs three.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> Levels { get; init; }

    /// <summary>What the plan is best at.</summary>
    public OptimalCriterion Criterion { get; init; } = OptimalCriterion.D;

    /// <summary>Limits that every chosen run keeps.</summary>
    public IReadOnlyList<LinearLimit> Limits { get; init; } = [];

    /// <summary>Any further condition on a chosen run.</summary>
    public Func<double[], bool>? Allowed { get; init; }

    /// <summary>Runs that stand whatever the limits say: demanded, or already made. The chosen runs join the block of the first of
    /// them, unless they are a new block.</summary>
    public IReadOnlyList<PlanRun> Given { get; init; } = [];

    /// <summary>Whether the chosen runs are a block of their own, after those of the given runs, whose difference from them is estimated too.</summary>
    public bool InNewBlock { get; init; }

    /// <summary>How many random plans to start from, 1 or more; the best outcome is kept.</summary>
    public int Starts { get; init; } = 50;

    /// <summary>The same seed gives the same plan.</summary>
    public ulong Seed { get; init; } = 1;
}
