using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>A line for very many customers: chosen for representatives, then worked out for every customer.</summary>
/// <param name="Solution">Value, assignment and costs are those of all customers, exactly; the bound is what is proven for the representatives less
/// <paramref name="ErrorBound"/>, or for a mean what their prices prove of all customers, whichever is more.</param>
/// <param name="RepresentativesValue">The objective over the representatives.</param>
/// <param name="ErrorBound">By how much the objective of any choice can differ between customers and representatives.</param>
/// <param name="Aggregation">Who stands for whom.</param>
public sealed record AggregatedLine(LineSolution Solution, double RepresentativesValue, double ErrorBound, LineAggregation Aggregation)
{
    /// <summary>Chooses for representatives and works out the choice for every customer.</summary>
    /// <param name="shares">How much each customer counts, over 0.</param>
    /// <param name="candidates">How many.</param>
    /// <param name="row">Works out the costs of one customer; asked three times for each.</param>
    /// <param name="line">Makes the problem of the representatives from their costs and shares: how many to choose, what to make small, groups.</param>
    /// <param name="representatives">How many to choose at least; a few hundred.</param>
    /// <param name="settings">Of the search.</param>
    public static AggregatedLine Solve(
        double[] shares, int candidates, CostRow row, Func<double[][], double[], LineProblem> line, int representatives, LineSettings settings)
    {
        var aggregation = LineAggregation.Of(shares, candidates, row, representatives);
        var problem = line(aggregation.Costs, aggregation.Shares);
        var chosen = LineSearch.Solve(problem, settings);
        int[] servable = [.. Enumerable.Range(0, shares.Length).Where(i => !chosen.Unservable.Contains(aggregation.Cells[i]))];
        var error = servable.Length == 0 ? 0 : aggregation.ErrorBound(problem.Objective, shares);
        var prices = problem.Objective is LineObjective.Mean && chosen.Feasible ? new RepresentativePrices(problem, chosen, new LineClock(settings)) : null;
        var (assigned, costs) = Assign(shares, aggregation, row, [.. chosen.Chosen], prices);
        var exact = LineAnswer.Of(problem.Objective, shares, servable, assigned, costs, 0, chosen.Stop);
        var bound = Math.Min(Math.Max(prices?.Bound ?? 0, chosen.Bound - error), exact.Value);
        var rough = chosen.Proven && exact.Feasible && exact.Value - bound > LineSearch.Tolerance * exact.Value;
        return new AggregatedLine(exact with { Bound = bound, Stop = rough ? LineStop.Representatives : chosen.Stop }, chosen.Value, error, aggregation);
    }

    /// <summary>The exact cost of every customer; tells the prices of each.</summary>
    private static (int[] Assigned, double[] Costs) Assign(
        double[] shares, LineAggregation aggregation, CostRow row, int[] chosen, RepresentativePrices? prices)
    {
        var own = new double[aggregation.Costs[0].Length];
        var (assigned, costs) = (new int[shares.Length], new double[shares.Length]);
        for (var i = 0; i < shares.Length; i++)
        {
            row(i, own);
            assigned[i] = LineAnswer.Assign(own, chosen);
            costs[i] = assigned[i] < 0 ? double.PositiveInfinity : own[assigned[i]];
            if (assigned[i] >= 0)
                prices?.Add(own, shares[i], costs[i], aggregation.Cells[i]);
        }

        return (assigned, costs);
    }
}
