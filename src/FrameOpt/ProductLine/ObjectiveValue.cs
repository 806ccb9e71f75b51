namespace FrameOpt.ProductLine;

/// <summary>What an objective makes of the costs of all customers.</summary>
public static class ObjectiveValue
{
    /// <summary>Part of all shares by which a percentile may fall short, so that sums of rounded shares do not decide.</summary>
    internal const double ShareRounding = 1e-9;

    /// <summary>The value of an objective; infinite when some cost is.</summary>
    /// <param name="objective">Which.</param>
    /// <param name="shares">How much each customer counts.</param>
    /// <param name="costs">What each customer is left with.</param>
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
