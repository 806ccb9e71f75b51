using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>The solution of a product line: candidates to make, assignments, and a proven bound.</summary>
public sealed record ProductLineSolution
{
    /// <summary>The candidates to make, ascending; those that no customer would get are left out.</summary>
    public required IReadOnlyList<int> Chosen { get; init; }

    /// <summary>The candidate of each customer: the cheapest of the chosen, the lowest index in case of a tie; -1 when none is allowed for
    /// it.</summary>
    public required IReadOnlyList<int> Assigned { get; init; }

    /// <summary>Cost of each customer's assigned candidate; infinite when no chosen candidate is allowed for it.</summary>
    public required IReadOnlyList<double> CustomerCosts { get; init; }

    /// <summary>The objective over all customers that some candidate is allowed for; infinite when some of those are left out.</summary>
    public required double Value { get; init; }

    /// <summary>Proven lower bound on the objective; infinite when it is proven that no choice serves all customers.</summary>
    public required double Bound { get; init; }

    /// <summary>Why the solver ended.</summary>
    public required ProductLineStopReason Stop { get; init; }

    /// <summary>Customers that no candidate at all is allowed for: they do not enter the value.</summary>
    public required IReadOnlyList<int> Unservable { get; init; }

    /// <summary>Customers that some candidate could serve but none of the chosen does: empty unless <see cref="Feasible"/> is
    /// false.</summary>
    public required IReadOnlyList<int> Unserved { get; init; }

    /// <summary>Customers that some candidate could serve and that were left out on purpose, because not all need be served: they do not
    /// enter the value.</summary>
    public IReadOnlyList<int> SetAside { get; init; } = [];

    /// <summary>True when every servable customer is served. Otherwise the chosen candidates are the nearest miss: as few customers left
    /// out as could be found.</summary>
    public bool Feasible => Unserved.Count == 0 && Chosen.Count > 0;

    /// <summary>Optimality gap: value less bound; 0 when proven optimal.</summary>
    public double Gap => Feasible ? Value - Bound : 0;

    /// <summary>True when the choice is proven optimal or, when infeasible, when it is proven that no choice leaves out fewer
    /// customers.</summary>
    public bool Proven => Stop == ProductLineStopReason.Proven;
}

/// <summary>The best line of a given number of variants.</summary>
/// <param name="Count">Largest number of variants.</param>
/// <param name="Solution">The best solution found.</param>
/// <param name="Gain">Decrease of the value compared with one variant fewer; null for the first, and where the smaller line leaves
/// customers out.</param>
public sealed record ProductLineCurvePoint(int Count, ProductLineSolution Solution, double? Gain);

/// <summary>Builds a solution from a choice by assigning the customers.</summary>
internal static class ProductLineSolutionBuilder
{
    /// <param name="problem">The whole problem.</param>
    /// <param name="servable">Customers that some candidate is allowed for.</param>
    /// <param name="chosen">The chosen candidates; may be none.</param>
    /// <param name="bound">Proven lower bound on the objective.</param>
    /// <param name="stop">Why the solver ended.</param>
    public static ProductLineSolution Of(ProductLineProblem problem, int[] servable, int[] chosen, double bound, ProductLineStopReason stop)
    {
        int[] assigned = [.. problem.Costs.Select(row => Assign(row, chosen))];
        double[] costs = [.. assigned.Select((candidate, i) => candidate < 0 ? double.PositiveInfinity : problem.Costs[i][candidate])];
        return Of(problem.Objective, problem.Shares, servable, assigned, costs, bound, stop);
    }

    /// <summary>Builds a solution from the assignment and cost of each customer.</summary>
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

    /// <summary>The cheapest chosen candidate, the lowest index in case of a tie; -1 when none is allowed.</summary>
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
