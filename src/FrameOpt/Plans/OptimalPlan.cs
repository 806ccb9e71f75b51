using FrameOpt.Numerics;

namespace FrameOpt.Plans;

/// <summary>Plans fitted to a model, to limits and to runs already made.</summary>
public static class OptimalPlan
{
    /// <summary>The best plan found by coordinate exchange from random starts: the given runs first, then the chosen ones.</summary>
    /// <exception cref="ArgumentException">Too few runs for the model, levels or limits that leave nothing to choose, or a model that no
    /// such plan estimates.</exception>
    /// <remarks>Source: R. K. Meyer and C. J. Nachtsheim 1995, The coordinate-exchange algorithm for constructing exact optimal
    /// experimental designs, Technometrics 37:60-69 (from memory).</remarks>
    public static Plan Build(OptimalRequest request)
    {
        Refuse(request);
        var random = new Pcg32(request.Seed);
        var plan = Plan.Numbered($"{request.Criterion}-optimal", request.Factors, [.. request.Given, .. Chosen(request, random)]);
        if (PlanQuality.Of(plan, request.Model) is null)
            throw new ArgumentException(
                "no plan was found that estimates every term; give more runs or levels, loosen the limits, or leave out terms");
        return plan;
    }

    private static IReadOnlyList<PlanRun> Chosen(OptimalRequest request, Pcg32 random)
    {
        if (request.HardToChange.Count > 0)
        {
            var plots = new WholePlotExchange(request);
            var found = Enumerable.Range(0, request.Starts).Select(_ => plots.From(random)).MaxBy(outcome => outcome.CriterionValue)!;
            return [.. found.Plots.SelectMany((points, plot) => points.Select(point =>
                new PlanRun(0, PointKind.Optimal, 1, point) { WholePlot = plot + 1 }))];
        }

        var exchange = new CoordinateExchange(request);
        var best = Enumerable.Range(0, request.Starts).Select(_ => exchange.From(random)).MaxBy(outcome => outcome.CriterionValue)!;
        return [.. best.Points.Select(point => new PlanRun(0, PointKind.Optimal, exchange.Block, point))];
    }

    /// <summary>A plan already made, with runs added so that all of them together estimate a model best; the added runs are a new
    /// block.</summary>
    /// <param name="made">The plan already made.</param>
    /// <param name="request">The model, how many runs to add, and their levels and limits.</param>
    /// <exception cref="ArgumentException">As for a new plan, or the factors differ.</exception>
    public static Plan Augment(Plan made, OptimalRequest request)
    {
        if (!made.Factors.SequenceEqual(request.Factors))
            throw new ArgumentException("the added runs must have the factors of the plan already made, in the same order");
        return Build(request with { Given = made.Runs, InNewBlock = true });
    }

    /// <summary>Refuses a request that no plan meets.</summary>
    /// <exception cref="ArgumentException">As for <see cref="Build"/>, as far as it is known before the search.</exception>
    internal static void Refuse(OptimalRequest request)
    {
        PlanArguments.Factors(request.Factors, "optimal plan", 1, 12);
        PlanArguments.AtLeast(1, request.Runs, "number of runs to choose");
        PlanArguments.AtLeast(1, request.Starts, "number of starts");
        var factors = request.Factors.Count;
        if (request.Levels.Count != factors || request.Levels.Any(levels => levels.Distinct().Count() < 2))
            throw new ArgumentException("every factor of an optimal plan needs two or more different levels");
        if (request.Constraints.Any(limit => limit.Weights.Count != factors))
            throw new ArgumentException($"every limit needs {factors} weights, one for each factor");
        if (request.Given.Any(run => run.Coded.Length != factors))
            throw new ArgumentException($"every given run needs {factors} values, one for each factor");
        if (request.Model.Terms.Any(term => term.Powers.Count != factors))
            throw new ArgumentException($"every term of the model needs {factors} powers, one for each factor");
        if (request.HardToChange.Count > 0)
            Refuse(request, request.HardToChange);
        var blocks = request.Given.Select(run => run.Block).Distinct().Count() + (request.InNewBlock && request.Given.Count > 0 ? 1 : 0);
        var unknowns = request.Model.Terms.Count + Math.Max(0, blocks - 1);
        var runs = request.Runs + request.Given.Count;
        if (runs < unknowns)
            throw new ArgumentException(
                $"the model has {unknowns} terms, blocks included, but there are only {runs} runs; give at least one run a term");
    }

    private static void Refuse(OptimalRequest request, IReadOnlyList<int> hard)
    {
        if (request.Given.Count > 0)
            throw new ArgumentException("runs made already cannot be completed when factors are hard to change");
        if (hard.Count == request.Factors.Count)
            throw new ArgumentException("every factor is hard to change; then every run is set up by itself, and none need be named");
        var ofPlots = request.Model.Terms.Count(term => Enumerable.Range(0, request.Factors.Count)
            .All(f => term.Powers[f] == 0 || hard.Contains(f)));
        if (request.WholePlots < ofPlots)
            throw new ArgumentException($"the factors that are hard to change have {ofPlots} terms of their own, so at least {ofPlots} "
                + $"whole plots are needed, not {request.WholePlots}; {ofPlots + 2} or more also show their error");
        if (request.WholePlots > request.Runs)
            throw new ArgumentException($"there are {request.WholePlots} whole plots but only {request.Runs} runs");
    }
}

/// <summary>Settings of an optimal plan.</summary>
public sealed record OptimalRequest
{
    /// <summary>The names, 1 to 12.</summary>
    public required IReadOnlyList<string> Factors { get; init; }

    /// <summary>The terms to estimate.</summary>
    public required PlanModel Model { get; init; }

    /// <summary>Number of runs to choose, besides the given ones.</summary>
    public required int Runs { get; init; }

    /// <summary>The coded levels each factor may take, two or more: those that can be made. A square needs three.</summary>
    public required IReadOnlyList<IReadOnlyList<double>> Levels { get; init; }

    /// <summary>Criterion to optimise.</summary>
    public OptimalCriterion Criterion { get; init; } = OptimalCriterion.D;

    /// <summary>Constraints that every chosen run satisfies.</summary>
    public IReadOnlyList<LinearConstraint> Constraints { get; init; } = [];

    /// <summary>Any further condition on a chosen run.</summary>
    public Func<double[], bool>? Allowed { get; init; }

    /// <summary>Mandatory runs, exempt from the constraints: demanded, or already made. The chosen runs join the block of the first of
    /// them, unless they are a new block.</summary>
    public IReadOnlyList<PlanRun> Given { get; init; } = [];

    /// <summary>Whether the chosen runs are a block of their own, after those of the given runs, whose difference from them is estimated
    /// too.</summary>
    public bool InNewBlock { get; init; }

    /// <summary>Indices of factors that are hard to change: all runs of a whole plot have them alike.</summary>
    public IReadOnlyList<int> HardToChange { get; init; } = [];

    /// <summary>Number of whole plots, of as equal sizes as can be; 0 when no factor is hard to change.</summary>
    public int WholePlots { get; init; }

    /// <summary>Number of random plans to start from, at least 1; the best outcome is kept.</summary>
    public int Starts { get; init; } = 50;

    /// <summary>The same seed gives the same plan.</summary>
    public ulong Seed { get; init; } = 1;
}

/// <summary>Criteria of optimal plans.</summary>
public enum OptimalCriterion
{
    /// <summary>The largest determinant of the information matrix: coefficients known best, together.</summary>
    D,

    /// <summary>The smallest mean variance of prediction over the cube.</summary>
    I,
}

/// <summary>A linear constraint in coded units: the weighted sum of the factors is at most a bound.</summary>
/// <param name="Weights">One per factor.</param>
/// <param name="AtMost">The bound.</param>
public sealed record LinearConstraint(IReadOnlyList<double> Weights, double AtMost)
{
    /// <summary>True when a point satisfies the constraint, up to rounding.</summary>
    public bool IsSatisfiedBy(double[] coded)
    {
        var sum = 0.0;
        for (var f = 0; f < coded.Length; f++)
            sum += Weights[f] * coded[f];
        return sum <= AtMost + 1e-9;
    }
}
