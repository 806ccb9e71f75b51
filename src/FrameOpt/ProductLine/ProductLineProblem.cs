namespace FrameOpt.ProductLine;

/// <summary>Which few of many candidates to make, so that every customer finds one that suits.</summary>
public sealed record ProductLineProblem
{
    /// <summary>A problem, checked.</summary>
    /// <param name="costs">A row a customer, a cost a candidate, 0 or more in any one unit; <see cref="double.PositiveInfinity"/> where the
    /// candidate
    /// is not allowed for the customer.</param>
    /// <param name="shares">How much each customer counts, over 0: a share or a number of pieces.</param>
    /// <param name="count">How many candidates may be chosen, at least 1.</param>
    /// <param name="objective">What to make small.</param>
    /// <param name="groups">A key a candidate: all chosen must have one key. Null when any may go together.</param>
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

    /// <summary>A row a customer, a cost a candidate; infinite where not allowed.</summary>
    public double[][] Costs { get; }

    /// <summary>How much each customer counts.</summary>
    public double[] Shares { get; }

    /// <summary>How many candidates may be chosen.</summary>
    public int Count { get; init; }

    /// <summary>What to make small.</summary>
    public ProductLineObjective Objective { get; init; }

    /// <summary>The group of each candidate, or null.</summary>
    public int[]? Groups { get; }

    /// <summary>How many candidates there are.</summary>
    public int Candidates => Costs[0].Length;

    private static void Require(bool holds, string otherwise)
    {
        if (!holds)
            throw new ArgumentException(otherwise);
    }
}
