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
    public IReadOnlyList<LinearConstraint> Constraints { get; init; } = [];

    /// <summary>Any further condition on a chosen run.</summary>
    public Func<double[], bool>? Allowed { get; init; }

    /// <summary>Runs that stand whatever the limits say: demanded, or already made. The chosen runs join the block of the first of
    /// them, unless they are a new block.</summary>
    public IReadOnlyList<PlanRun> Given { get; init; } = [];

    /// <summary>Whether the chosen runs are a block of their own, after those of the given runs, whose difference from them is estimated
    /// too.</summary>
    public bool InNewBlock { get; init; }

    /// <summary>How many random plans to start from, 1 or more; the best outcome is kept.</summary>
    public int Starts { get; init; } = 50;

    /// <summary>The same seed gives the same plan.</summary>
    public ulong Seed { get; init; } = 1;
}

/// <summary>What an optimal plan is best at.</summary>
public enum OptimalCriterion
{
    /// <summary>The greatest determinant of the information matrix: coefficients known best, together.</summary>
    D,

    /// <summary>The least mean variance of prediction over the cube.</summary>
    I,
}

/// <summary>A limit in coded units: the weighted sum of the factors is at most a bound.</summary>
/// <param name="Weights">One a factor.</param>
/// <param name="AtMost">The bound.</param>
public sealed record LinearConstraint(IReadOnlyList<double> Weights, double AtMost)
{
    /// <summary>Whether a point keeps the limit, rounding forgiven.</summary>
    public bool IsSatisfiedBy(double[] coded)
    {
        var sum = 0.0;
        for (var f = 0; f < coded.Length; f++)
            sum += Weights[f] * coded[f];
        return sum <= AtMost + 1e-9;
    }
}
