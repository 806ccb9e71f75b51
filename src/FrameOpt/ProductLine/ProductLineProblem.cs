namespace FrameOpt.ProductLine;

/// <summary>The problem of choosing a few candidates for many customers.</summary>
public sealed record ProductLineProblem
{
    /// <summary>Initialises and checks a problem.</summary>
    /// <param name="costs">One row per customer, one cost per candidate, at least 0 in any one unit; <see cref="double.PositiveInfinity"/>
    /// where the candidate is not allowed for the customer.</param>
    /// <param name="shares">Weight of each customer, over 0: a share or a number of pieces.</param>
    /// <param name="count">Largest number of candidates chosen, at least 1.</param>
    /// <param name="objective">Objective to minimise.</param>
    /// <param name="groups">A key per candidate: all chosen candidates must have the same key. Null when any may be combined.</param>
    /// <exception cref="ArgumentException">Sizes do not agree, or a number is out of its range.</exception>
    public ProductLineProblem(double[][] costs, double[] shares, int count, ProductLineObjective objective, int[]? groups = null)
    {
        (Costs, Shares, Count, Objective, Groups) = (costs, shares, count, objective, groups);
        Require(costs.Length > 0 && costs[0].Length > 0, "a line needs at least one customer and one candidate");
        Require(costs.All(row => row.Length == costs[0].Length), "every customer needs a cost for every candidate");
        Require(costs.All(row => row.All(cost => cost >= 0)), "a cost must be 0 or more, or infinite where the candidate is not allowed");
        Require(shares.Length == costs.Length, "every customer needs a share");
        Require(shares.All(share => share > 0 && double.IsFinite(share)), "a share must be over 0");
        Require(count > 0, "at least one variant must be chosen");
        Require(groups is null || groups.Length == costs[0].Length, "every candidate needs a group");
        Require(objective is not ProductLineObjective.Percentile { Part: not (> 0 and <= 1) }, "a percentile must be over 0 and at most 1");
        Require(objective is not ProductLineObjective.Blend { WorstWeight: not (>= 0 and <= 1) },
            "the weight of the worst must be from 0 to 1");
    }

    /// <summary>One row per customer, one cost per candidate; infinite where not allowed.</summary>
    public double[][] Costs { get; }

    /// <summary>Weight of each customer.</summary>
    public double[] Shares { get; }

    /// <summary>Largest number of candidates chosen.</summary>
    public int Count { get; init; }

    /// <summary>Objective to minimise.</summary>
    public ProductLineObjective Objective { get; init; }

    /// <summary>The group of each candidate, or null.</summary>
    public int[]? Groups { get; }

    /// <summary>Number of candidates.</summary>
    public int Candidates => Costs[0].Length;

    private static void Require(bool holds, string otherwise)
    {
        if (!holds)
            throw new ArgumentException(otherwise);
    }
}
