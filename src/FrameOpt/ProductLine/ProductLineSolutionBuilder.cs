using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>Makes a solution of a choice: who gets what.</summary>
internal static class ProductLineSolutionBuilder
{
    /// <param name="problem">The whole.</param>
    /// <param name="servable">Customers that some candidate is allowed for.</param>
    /// <param name="chosen">Candidates; may be none.</param>
    /// <param name="bound">Proven.</param>
    /// <param name="stop">Why the search ended.</param>
    public static ProductLineSolution Of(ProductLineProblem problem, int[] servable, int[] chosen, double bound, ProductLineStopReason stop)
    {
        int[] assigned = [.. problem.Costs.Select(row => Assign(row, chosen))];
        double[] costs = [.. assigned.Select((candidate, i) => candidate < 0 ? double.PositiveInfinity : problem.Costs[i][candidate])];
        return Of(problem.Objective, problem.Shares, servable, assigned, costs, bound, stop);
    }

    /// <summary>From what each customer gets and pays.</summary>
    public static ProductLineSolution Of(
        ProductLineObjective objective, double[] shares, int[] servable, int[] assigned, double[] costs, double bound,
            ProductLineStopReason stop) => new()
            {
                Chosen = [.. assigned.Where(candidate => candidate >= 0).Distinct().Order()],
                Assigned = assigned,
                CustomerCosts = costs,
                Value = servable.Length == 0 ? double.PositiveInfinity
                : ObjectiveValue.Of(objective, [.. servable.Select(i => shares[i])], [.. servable.Select(i => costs[i])]),
                Bound = bound,
                Stop = stop,
                Unservable = [.. Enumerable.Range(0, assigned.Length).Except(servable)],
                Unserved = [.. servable.Where(i => assigned[i] < 0)],
            };

    /// <summary>The chosen candidate of least cost, of equal ones the lowest; -1 when none is allowed.</summary>
    public static int Assign(ReadOnlySpan<double> costs, int[] chosen)
    {
        var best = -1;
        foreach (var candidate in chosen.Order())
        {
            if (costs[candidate] < (best < 0 ? double.PositiveInfinity : costs[best]))
                best = candidate;
        }

        return best;
    }
}
