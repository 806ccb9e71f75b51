using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>A product line for very many customers: solved for representatives, then evaluated for every customer.</summary>
/// <param name="Solution">Value, assignment and costs are those of all customers, exactly; the bound is that of the representatives less
/// <paramref name="ErrorBound"/>, or for a mean the bound their multipliers give for all customers, whichever is larger.</param>
/// <param name="RepresentativesValue">The objective over the representatives.</param>
/// <param name="ErrorBound">Largest difference of the objective of any choice between customers and representatives.</param>
/// <param name="Aggregation">Aggregation of customers to representatives.</param>
public sealed record AggregatedSolution(
    ProductLineSolution Solution, double RepresentativesValue, double ErrorBound, CustomerAggregation Aggregation)
{
    /// <summary>Solves for representatives and evaluates the choice for every customer.</summary>
    /// <param name="shares">Weight of each customer, over 0.</param>
    /// <param name="candidates">Number of candidates.</param>
    /// <param name="row">Computes the costs of one customer; asked three times for each.</param>
    /// <param name="line">Makes the problem of the representatives from their costs and shares: count, objective, groups.</param>
    /// <param name="representatives">Smallest number of representatives; a few hundred.</param>
    /// <param name="settings">Limits of the solver.</param>
    /// <param name="leaveOut">The representatives that need not be served, where not all need be; a customer is allowed what its
    /// representative is, so the weight left out is exact.</param>
    public static AggregatedSolution Solve(
        double[] shares, int candidates, CostRowFunction row, Func<double[][], double[], ProductLineProblem> line, int representatives,
            ProductLineSolverSettings settings, Func<ProductLineProblem, IReadOnlyList<int>>? leaveOut = null)
    {
        var aggregation = CustomerAggregation.Of(shares, candidates, row, representatives);
        var problem = line(aggregation.Costs, aggregation.Shares);
        var aside = leaveOut?.Invoke(problem).ToHashSet() ?? [];
        if (aside.Count > 0)
            problem = line([.. aggregation.Costs.Select((costs, cell) =>
                aside.Contains(cell) ? [.. costs.Select(_ => double.PositiveInfinity)] : costs)], aggregation.Shares);
        var chosen = ProductLineSolver.Solve(problem, settings);
        int[] servable = [.. Enumerable.Range(0, shares.Length).Where(i => !chosen.Unservable.Contains(aggregation.Clusters[i]))];
        var error = servable.Length == 0 ? 0 : aggregation.ErrorBound(problem.Objective, shares, servable);
        var multipliers = problem.Objective is ProductLineObjective.Mean && chosen.Feasible
            ? new RepresentativeMultipliers(problem, chosen, new SolverClock(settings)) : null;
        var (assigned, costs) = Assign(shares, aggregation, row, [.. chosen.Chosen], multipliers, aside);
        var exact = ProductLineSolutionBuilder.Of(problem.Objective, shares, servable, assigned, costs, 0, chosen.Stop);
        var bound = Math.Min(Math.Max(multipliers?.Bound ?? 0, chosen.Bound - error), exact.Value);
        var rough = chosen.Proven && exact.Feasible && exact.Value - bound > ProductLineSolver.Tolerance * exact.Value;
        return new AggregatedSolution(exact with { Bound = bound, Stop = rough ? ProductLineStopReason.Representatives : chosen.Stop },
            chosen.Value, error, aggregation)
        {
            Aside = aside.Count == 0 ? [] : [.. Enumerable.Range(0, shares.Length).Where(i => aside.Contains(aggregation.Clusters[i]))],
        };
    }

    /// <summary>The customers that need not be served, ascending; the value is that of the others.</summary>
    public IReadOnlyList<int> Aside { get; private init; } = [];

    /// <summary>The exact cost of every customer; passes each customer's costs to the multipliers.</summary>
    private static (int[] Assigned, double[] Costs) Assign(
        double[] shares, CustomerAggregation aggregation, CostRowFunction row, int[] chosen, RepresentativeMultipliers? multipliers,
        HashSet<int> aside)
    {
        var own = new double[aggregation.Costs[0].Length];
        var (assigned, costs) = (new int[shares.Length], new double[shares.Length]);
        for (var i = 0; i < shares.Length; i++)
        {
            row(i, own);
            assigned[i] = ProductLineSolutionBuilder.Assign(own, chosen);
            costs[i] = assigned[i] < 0 ? double.PositiveInfinity : own[assigned[i]];
            if (assigned[i] >= 0 && !aside.Contains(aggregation.Clusters[i]))
                multipliers?.Add(own, shares[i], costs[i], aggregation.Clusters[i]);
        }

        return (assigned, costs);
    }
}

/// <summary>A lower bound on the mean cost of all customers from the multipliers of their representatives. Any multipliers give a valid
/// bound (<see cref="LagrangianBound"/>); those of the representatives, shifted by the difference in cost of each customer, give a tight
/// one.</summary>
internal sealed class RepresentativeMultipliers
{
    private const int Steps = 500;
    private readonly ProductLineProblem problem;
    private readonly double[] margins;
    private readonly double[] reducedCosts;
    private double multipliers;
    private double shares;

    /// <param name="problem">The problem of the representatives.</param>
    /// <param name="solution">Its solution, with every customer served.</param>
    /// <param name="clock">When to stop improving multipliers.</param>
    public RepresentativeMultipliers(ProductLineProblem problem, ProductLineSolution solution, SolverClock clock)
    {
        this.problem = problem;
        int[] servable = [.. Enumerable.Range(0, problem.Costs.Length).Except(solution.Unservable)];
        int[] all = [.. Enumerable.Range(0, problem.Candidates)];
        var part = new Subproblem([.. servable.Select(i => problem.Costs[i])], [.. servable.Select(i => problem.Shares[i])], problem.Count,
            all);
        var mean = part.Mean();
        var open = new double[servable.Length];
        Array.Fill(open, mean.UnservedCost);
        double[] start = [.. servable.Select((i, row) => part.Shares[row] * solution.CustomerCosts[i])];
        var incumbent = new Incumbent(mean, [.. solution.Chosen], double.PositiveInfinity, double.PositiveInfinity);
        var bound = new LagrangianBound(mean, incumbent, [], open, all, start);
        bound.Improve(Steps, clock);
        margins = new double[problem.Costs.Length];
        for (var row = 0; row < servable.Length; row++)
            margins[servable[row]] = (bound.Multipliers[row] - start[row]) / part.Shares[row];
        reducedCosts = new double[problem.Candidates];
    }

    /// <summary>The bound for all customers added so far.</summary>
    public double Bound
    {
        get
        {
            var groups = Enumerable.Range(0, reducedCosts.Length).GroupBy(candidate => problem.Groups?[candidate] ?? 0);
            return (multipliers + groups.Min(group => group.Select(candidate => reducedCosts[candidate]).Order()
                .Take(problem.Count).Sum())) / shares;
        }
    }

    /// <summary>Adds a customer.</summary>
    /// <param name="costs">Cost with every candidate.</param>
    /// <param name="share">Weight.</param>
    /// <param name="cost">Cost with the line.</param>
    /// <param name="representative">Index of its representative.</param>
    public void Add(ReadOnlySpan<double> costs, double share, double cost, int representative)
    {
        var price = Math.Max(0, cost + margins[representative]);
        multipliers += share * price;
        shares += share;
        for (var candidate = 0; candidate < costs.Length; candidate++)
            reducedCosts[candidate] += share * Math.Min(0, costs[candidate] - price);
    }
}
