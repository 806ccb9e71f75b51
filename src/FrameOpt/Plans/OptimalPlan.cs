using FrameOpt.Numerics;

namespace FrameOpt.Plans;

/// <summary>Plans fitted to a model, to limits and to runs already made.</summary>
public static class OptimalPlan
{
    /// <summary>The best plan found by coordinate exchange from random starts: the given runs first, then the chosen ones.</summary>
    /// <exception cref="ArgumentException">Too few runs for the model, levels or limits that leave nothing to choose, or a model that no
    /// such plan estimates.</exception>
    /// <remarks>Source: R. K. Meyer and C. J. Nachtsheim 1995, The coordinate-exchange algorithm for constructing exact optimal
    /// experimental designs,
    /// Technometrics 37:60-69 (from memory).</remarks>
    public static Plan Build(OptimalRequest request)
    {
        Refuse(request);
        var exchange = new CoordinateExchange(request);
        var random = new Pcg32(request.Seed);
        var best = Enumerable.Range(0, request.Starts).Select(_ => exchange.From(random)).MaxBy(outcome => outcome.CriterionValue)!;
        var block = exchange.Block;
        var plan = Plan.Numbered(
            $"{request.Criterion}-optimal",
            request.Factors,
            [.. request.Given, .. best.Points.Select(point => new PlanRun(0, PointKind.Optimal, block, point))]);
        if (PlanQuality.Of(plan, request.Model) is null)
            throw new ArgumentException(
                "no plan was found that estimates every term; give more runs or levels, loosen the limits, or leave out terms");
        return plan;
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

    private static void Refuse(OptimalRequest request)
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
        var blocks = request.Given.Select(run => run.Block).Distinct().Count() + (request.InNewBlock && request.Given.Count > 0 ? 1 : 0);
        var unknowns = request.Model.Terms.Count + Math.Max(0, blocks - 1);
        var runs = request.Runs + request.Given.Count;
        if (runs < unknowns)
            throw new ArgumentException(
                $"the model has {unknowns} terms, blocks included, but there are only {runs} runs; give at least one run a term");
    }
}
