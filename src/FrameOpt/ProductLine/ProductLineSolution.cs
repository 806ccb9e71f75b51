using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>The line chosen: which candidates to make, who gets which, and what is proven of it.</summary>
public sealed record ProductLineSolution
{
    /// <summary>The candidates to make, ascending; those that nobody would get are left out.</summary>
    public required IReadOnlyList<int> Chosen { get; init; }

    /// <summary>The candidate of each customer: of the chosen the one of least cost, of equal ones the lowest; -1 when none is allowed for
    /// it.</summary>
    public required IReadOnlyList<int> Assigned { get; init; }

    /// <summary>What each customer is left with; infinite when no chosen candidate is allowed for it.</summary>
    public required IReadOnlyList<double> CustomerCosts { get; init; }

    /// <summary>The objective over all customers that some candidate is allowed for; infinite when some of those are left out.</summary>
    public required double Value { get; init; }

    /// <summary>No choice has a smaller value. Infinite when it is proven that no choice serves all.</summary>
    public required double Bound { get; init; }

    /// <summary>Why the search ended.</summary>
    public required ProductLineStopReason Stop { get; init; }

    /// <summary>Customers that no candidate at all is allowed for: they do not enter the value.</summary>
    public required IReadOnlyList<int> Unservable { get; init; }

    /// <summary>Customers that some candidate could serve but none of the chosen does: empty unless <see cref="Feasible"/> is
    /// false.</summary>
    public required IReadOnlyList<int> Unserved { get; init; }

    /// <summary>Whether every customer that can be served is. When not, the chosen are the nearest miss: as few customers left out as could
    /// be found.</summary>
    public bool Feasible => Unserved.Count == 0 && Chosen.Count > 0;

    /// <summary>How much smaller the value of an unknown choice could be; 0 when proven best.</summary>
    public double Gap => Feasible ? Value - Bound : 0;

    /// <summary>Whether the choice is proven best, or, when not feasible, that no choice serves all and none leaves out fewer.</summary>
    public bool Proven => Stop == ProductLineStopReason.Proven;
}

/// <summary>The best line of a given number of variants.</summary>
/// <param name="Count">How many may be chosen.</param>
/// <param name="Solution">The best found.</param>
/// <param name="Gain">How much smaller the value is than with one variant fewer: null for the first, and where the line before leaves
/// customers out.</param>
public sealed record ProductLineCurvePoint(int Count, ProductLineSolution Solution, double? Gain);

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
