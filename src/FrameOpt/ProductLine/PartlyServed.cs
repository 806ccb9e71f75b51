using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>Which customers a line leaves out where not all need be served.</summary>
/// <remarks>First the line of least mean cost is chosen with every customer free to go without at a price, that of the worst pair allowed:
/// somebody left out counts as the worst that anybody could have. Where that leaves out more than may be, the price is raised. Who goes
/// without then is set aside, and the line is chosen and proven for the others.</remarks>
public static class PartlyServed
{
    private const double Dearer = 4;
    private const int Tries = 8;

    /// <summary>The customers to set aside, ascending; none when all are served.</summary>
    /// <param name="problem">With all customers.</param>
    /// <param name="serve">Share of the weight of those servable that must be served.</param>
    /// <param name="settings">Limits of the solver.</param>
    public static IReadOnlyList<int> SetAside(ProductLineProblem problem, double serve, ProductLineSolverSettings settings)
    {
        int[] servable = [.. Enumerable.Range(0, problem.Costs.Length).Where(i => problem.Costs[i].Any(double.IsFinite))];
        if (servable.Length == 0)
            return [];
        var most = (1 - serve) * servable.Sum(i => problem.Shares[i]) * (1 + ObjectiveValue.ShareRounding);
        var price = problem.Costs.Max(row => row.Where(double.IsFinite).DefaultIfEmpty(0).Max());
        for (var attempt = 0; attempt < Tries; attempt++, price *= Dearer)
        {
            var free = servable.Select(i => Array.ConvertAll(problem.Costs[i], cost => Math.Min(cost, price))).ToArray();
            var line = ProductLineSolver.Solve(new ProductLineProblem(free, [.. servable.Select(i => problem.Shares[i])], problem.Count,
                new ProductLineObjective.Mean(), problem.Groups), settings);
            int[] without = [.. servable.Where(i => line.Chosen.All(candidate => double.IsInfinity(problem.Costs[i][candidate])))];
            if (without.Sum(i => problem.Shares[i]) <= most)
                return without;
        }

        return [];
    }

    /// <summary>Puts the customers that were set aside back into the solution for the others: those it suits are served after
    /// all.</summary>
    /// <param name="others">In which those set aside were not allowed anything.</param>
    /// <param name="aside">Those customers.</param>
    /// <param name="row">The costs of a customer.</param>
    /// <param name="candidates">Number of candidates.</param>
    public static ProductLineSolution PutBack(
        ProductLineSolution others, IReadOnlyList<int> aside, CostRowFunction row, int candidates)
    {
        var (own, chosen) = (new double[candidates], others.Chosen.ToArray());
        int[] assigned = [.. others.Assigned];
        double[] costs = [.. others.CustomerCosts];
        foreach (var i in aside)
        {
            row(i, own);
            assigned[i] = ProductLineSolutionBuilder.Assign(own, chosen);
            costs[i] = assigned[i] < 0 ? double.PositiveInfinity : own[assigned[i]];
        }

        return others with
        {
            Assigned = assigned,
            CustomerCosts = costs,
            Unservable = [.. others.Unservable.Except(aside)],
            SetAside = [.. aside.Where(i => assigned[i] < 0)],
        };
    }
}
