using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>Variants that are in the line whatever is chosen: the first candidates. The rest are chosen for what they improve beside
/// them.</summary>
/// <remarks>With f_i the least cost of customer i with a fixed variant, the cost with a line is the least of f_i and of the chosen c_ij:
/// the
/// least over the chosen of min(c_ij, f_i). So the best choice for costs cut to f_i is the best choice beside the fixed variants, for every
/// objective, and what is proven of the one is proven of the other.</remarks>
/// <param name="count">How many are fixed, 1 or more.</param>
/// <param name="groups">The group of every candidate; null when any may be combined. The fixed ones are of one group.</param>
public sealed class FixedVariants(int count, int[]? groups)
{
    /// <summary>Cuts the costs of the candidates to choose from to that of the best fixed variant.</summary>
    /// <param name="costs">Of one customer with every candidate.</param>
    /// <param name="cut">One for each candidate after the fixed ones. One of another group saves nothing.</param>
    public void Cut(ReadOnlySpan<double> costs, Span<double> cut)
    {
        var best = double.PositiveInfinity;
        foreach (var cost in costs[..count])
            best = Math.Min(best, cost);
        for (var j = 0; j < cut.Length; j++)
            cut[j] = groups is null || groups[count + j] == groups[0] ? Math.Min(costs[count + j], best) : best;
    }

    /// <summary>The line of the fixed variants and the chosen ones, for every customer.</summary>
    /// <param name="chosen">The solution of the problem with the cut costs; null when nothing was to be chosen.</param>
    /// <param name="objective">The objective.</param>
    /// <param name="shares">Weight of each customer.</param>
    /// <param name="candidates">Number of candidates, the fixed ones included.</param>
    /// <param name="row">The costs of a customer, not cut.</param>
    public ProductLineSolution With(
        ProductLineSolution? chosen, ProductLineObjective objective, double[] shares, int candidates, CostRowFunction row)
    {
        var (costs, own) = (new double[candidates], new double[shares.Length]);
        var (assigned, servable) = (new int[shares.Length], new List<int>());
        int[] line = [.. Enumerable.Range(0, count), .. (chosen?.Chosen ?? []).Select(j => count + j).Where(MayJoin)];
        for (var i = 0; i < shares.Length; i++)
        {
            row(i, costs);
            assigned[i] = ProductLineSolutionBuilder.Assign(costs, line);
            own[i] = assigned[i] < 0 ? double.PositiveInfinity : costs[assigned[i]];
            if (costs.Any(double.IsFinite))
                servable.Add(i);
        }

        var told = ProductLineSolutionBuilder.Of(objective, shares, [.. servable], assigned, own, 0,
            chosen?.Stop ?? ProductLineStopReason.Fixed);
        return told with
        {
            Chosen = [.. Enumerable.Range(0, count).Union(told.Chosen).Order()],
            Bound = chosen is null || (told.Unserved.Count > 0 && chosen.Proven) ? told.Value : Math.Min(chosen.Bound, told.Value),
        };
    }

    private bool MayJoin(int candidate) => groups is null || groups[candidate] == groups[0];
}
