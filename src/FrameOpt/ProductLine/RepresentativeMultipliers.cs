using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>A bound on the mean cost of all customers from the prices of their representatives. Any prices give a true bound
/// (<see cref="LagrangianBound"/>); prices that suit the representatives, moved by what each customer's cost differs, give a close
/// one.</summary>
internal sealed class RepresentativeMultipliers
{
    private const int Steps = 500;
    private readonly ProductLineProblem problem;
    private readonly double[] margins;
    private readonly double[] reducedCosts;
    private double multipliers;
    private double shares;

    /// <param name="problem">Of the representatives.</param>
    /// <param name="solution">Their line, all served.</param>
    /// <param name="clock">When to stop improving prices.</param>
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
    /// <param name="costs">For every candidate.</param>
    /// <param name="share">How much it counts.</param>
    /// <param name="cost">With the line.</param>
    /// <param name="representative">Who stands for it.</param>
    public void Add(ReadOnlySpan<double> costs, double share, double cost, int representative)
    {
        var price = Math.Max(0, cost + margins[representative]);
        multipliers += share * price;
        shares += share;
        for (var candidate = 0; candidate < costs.Length; candidate++)
            reducedCosts[candidate] += share * Math.Min(0, costs[candidate] - price);
    }
}
