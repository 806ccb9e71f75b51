namespace FrameOpt.ProductLine;

/// <summary>The function of the customers' costs that a product line minimises; each customer takes the cheapest variant.</summary>
public abstract record ProductLineObjective
{
    private ProductLineObjective()
    {
    }

    /// <summary>The share-weighted mean cost.</summary>
    /// <remarks>Source: the p-median problem; S. L. Hakimi 1964, Operations Research 12, 450-459; C. S. ReVelle and R. W. Swain 1970,
    /// Geographical Analysis 2, 30-42 (from memory).</remarks>
    public sealed record Mean : ProductLineObjective;

    /// <summary>The cost of the worst-served customer, regardless of its weight.</summary>
    /// <remarks>Source: the p-centre problem; S. L. Hakimi 1964, Operations Research 12, 450-459 (from memory).</remarks>
    public sealed record Worst : ProductLineObjective;

    /// <summary>The smallest cost that customers with at least a given part of all shares do not exceed.</summary>
    /// <param name="Part">Above 0, at most 1: 0.9 for the 90th percentile.</param>
    /// <remarks>The inverse of the distribution of costs, type 1 of R. J. Hyndman and Y. Fan 1996 (from memory): unlike interpolating
    /// types, it gives the same when a customer is entered twice with half the share.</remarks>
    public sealed record Percentile(double Part) : ProductLineObjective;

    /// <summary>A weighted sum of mean and worst cost.</summary>
    /// <param name="WorstWeight">Weight of the worst cost, 0 to 1; the mean has the rest.</param>
    /// <remarks>Source: the p-centdian; J. Halpern 1976, European J. Operational Research (from memory).</remarks>
    public sealed record Blend(double WorstWeight) : ProductLineObjective;
}

/// <summary>The value of an objective for the costs of all customers.</summary>
public static class ObjectiveValue
{
    /// <summary>Relative tolerance of a percentile's share, so that rounding of sums does not matter.</summary>
    internal const double ShareRounding = 1e-9;

    /// <summary>The value of an objective; infinite when some cost is.</summary>
    /// <param name="objective">The objective.</param>
    /// <param name="shares">Weight of each customer.</param>
    /// <param name="costs">Cost of each customer's assigned candidate.</param>
    public static double Of(ProductLineObjective objective, IReadOnlyList<double> shares, IReadOnlyList<double> costs) => objective switch
    {
        ProductLineObjective.Mean => Mean(shares, costs),
        ProductLineObjective.Worst => costs.Max(),
        ProductLineObjective.Percentile { Part: var part } =>
            costs.Any(double.IsInfinity) ? double.PositiveInfinity : Percentile(part, shares, costs),
        ProductLineObjective.Blend { WorstWeight: var weight } =>
            costs.Any(double.IsInfinity) ? double.PositiveInfinity : ((1 - weight) * Mean(shares, costs)) + (weight * costs.Max()),
        _ => throw new ArgumentException($"not an objective of a line: {objective}"),
    };

    private static double Mean(IReadOnlyList<double> shares, IReadOnlyList<double> costs)
    {
        double sum = 0, all = 0;
        for (var i = 0; i < costs.Count; i++)
        {
            sum += shares[i] * costs[i];
            all += shares[i];
        }

        return sum / all;
    }

    private static double Percentile(double part, IReadOnlyList<double> shares, IReadOnlyList<double> costs)
    {
        var wanted = (part - ShareRounding) * shares.Sum();
        var sum = 0.0;
        foreach (var (cost, share) in costs.Zip(shares).OrderBy(pair => pair.First))
        {
            sum += share;
            if (sum >= wanted)
                return cost;
        }

        return costs.Max();
    }
}
