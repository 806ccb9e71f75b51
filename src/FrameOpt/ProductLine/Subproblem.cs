using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.ProductLine;

/// <summary>The candidates that may be chosen together, for the customers that some candidate can serve.</summary>
internal sealed class Subproblem
{
    private readonly double[][] costs;

    public Subproblem(double[][] costs, double[] shares, int count, int[] candidates)
    {
        this.costs = [.. costs.Select(row => Array.ConvertAll(candidates, candidate => row[candidate]))];
        (Candidates, Count) = (candidates, Math.Min(count, candidates.Length));
        var all = shares.Sum();
        Shares = Array.ConvertAll(shares, share => share / all);
        RowMinima = [.. this.costs.Select(row => row.Min())];
    }

    /// <summary>The number of each candidate in the whole problem.</summary>
    public int[] Candidates { get; }

    public int Count { get; }

    /// <summary>Weights, normalised to sum to 1.</summary>
    public double[] Shares { get; }

    /// <summary>Smallest cost of each customer.</summary>
    public double[] RowMinima { get; }

    /// <summary>The largest cost allowed.</summary>
    public double Largest => costs.Max(row => row.Where(double.IsFinite).DefaultIfEmpty(0).Max());

    public double Cost(int customer, int column) => costs[customer][column];

    /// <summary>Cost of each customer when the columns are chosen.</summary>
    public double[] RowCosts(int[] chosen) => [.. costs.Select(row => chosen.Min(column => row[column]))];

    public double Value(ProductLineObjective objective, int[] chosen) => ObjectiveValue.Of(objective, Shares, RowCosts(chosen));

    /// <summary>The share-weighted mean, with only the costs below a limit allowed.</summary>
    public PMedianProblem Mean(double below = double.PositiveInfinity) =>
        Problem((i, j) => costs[i][j] < below ? Shares[i] * costs[i][j] : double.PositiveInfinity);

    /// <summary>The number of customers that no chosen column is allowed for.</summary>
    public PMedianProblem UnservedCountProblem() => Problem((i, j) => double.IsFinite(costs[i][j]) ? 0 : 1);

    /// <summary>The number of customers whose cost is above a limit.</summary>
    public PMedianProblem NumberAbove(double limit) => Problem((i, j) => costs[i][j] <= limit ? 0 : 1);

    /// <summary>The share of customers whose cost is above a limit, all served.</summary>
    public PMedianProblem ShareAbove(double limit) =>
        Problem((i, j) => costs[i][j] <= limit ? 0 : double.IsFinite(costs[i][j]) ? Shares[i] : double.PositiveInfinity);

    /// <summary>All different costs from one value to another, ascending.</summary>
    public double[] Levels(double from, double to)
    {
        var levels = new List<double>();
        foreach (var row in costs)
            levels.AddRange(row.Where(cost => cost >= from && cost <= to && double.IsFinite(cost)));
        levels.Sort();
        return [.. levels.Where((level, i) => i == 0 || level != levels[i - 1])];
    }

    private PMedianProblem Problem(Func<int, int, double> cost) => PMedianProblem.From(costs.Length, Candidates.Length, Count, cost);
}
