namespace FrameOpt.ProductLine;

/// <summary>Some customers that stand for all others, and how far they can be wrong.</summary>
/// <remarks>For every choice, a customer's least cost differs from that of its representative by no more than the largest difference of
/// their costs over
/// the candidates. Source: M. J. Hodgson 1990, Geographical Analysis 22, 331-340; R. L. Francis, T. J. Lowe and A. Tamir 2000, Operations
/// Research 48, 294-307
/// (from memory).</remarks>
public sealed record CustomerAggregation
{
    private const int Marks = 24;

    private CustomerAggregation(int[] representatives, int[] cells, double[] differences, double[][] costs, double[] shares) =>
        (Representatives, Clusters, Differences, Costs, Shares) = (representatives, cells, differences, costs, shares);

    /// <summary>The customer that stands for each cell.</summary>
    public IReadOnlyList<int> Representatives { get; }

    /// <summary>The cell of each customer.</summary>
    public IReadOnlyList<int> Clusters { get; }

    /// <summary>For each customer the largest difference, over the candidates allowed, between its cost and its representative's.</summary>
    public IReadOnlyList<double> Differences { get; }

    /// <summary>The costs of each representative.</summary>
    internal double[][] Costs { get; }

    /// <summary>What each representative counts for.</summary>
    internal double[] Shares { get; }

    /// <summary>Chooses representatives: customers with like costs are in one cell.</summary>
    /// <param name="shares">How much each customer counts, over 0.</param>
    /// <param name="candidates">How many.</param>
    /// <param name="row">Works out the costs of one customer; asked twice for each.</param>
    /// <param name="wanted">How many representatives; there are more when more different sets of candidates are allowed.</param>
    public static CustomerAggregation Of(double[] shares, int candidates, CostRowFunction row, int wanted)
    {
        var costs = new double[candidates];
        var marks = new double[shares.Length][];
        var kinds = new int[shares.Length];
        var known = new Dictionary<string, int>();
        int[] marked = [.. Enumerable.Range(0, Math.Min(Marks, candidates))
            .Select(mark => (int)((2L * mark + 1) * candidates / (2 * Math.Min(Marks, candidates))))];
        for (var i = 0; i < shares.Length; i++)
        {
            row(i, costs);
            marks[i] = [.. marked.Select(candidate => double.IsFinite(costs[candidate]) ? costs[candidate] : 0)];
            var allowed = Allowed(costs);
            if (!known.TryGetValue(allowed, out kinds[i]))
                known.Add(allowed, kinds[i] = known.Count);
        }

        var cells = CustomerClusters.Of(marks, kinds, shares, wanted);
        return Compare(shares, row, candidates, cells, [.. cells.Select(members => CustomerClusters.Centre(marks, shares, members))]);
    }

    /// <summary>By how much the objective of any choice can differ between all customers and their representatives.</summary>
    /// <remarks>Mean: the share-weighted mean of the differences. Worst and percentile: the largest. Blend: both, weighted.</remarks>
    /// <param name="objective">Which.</param>
    /// <param name="shares">How much each customer counts.</param>
    public double ErrorBound(ProductLineObjective objective, IReadOnlyList<double> shares) =>
        ObjectiveValue.Of(objective is ProductLineObjective.Percentile ? new ProductLineObjective.Worst() : objective, shares, Differences);

    private static CustomerAggregation Compare(
        double[] shares, CostRowFunction row, int candidates, List<int[]> cells, int[] representatives)
    {
        var own = new double[candidates];
        var cellOf = new int[shares.Length];
        var differences = new double[shares.Length];
        var costs = new double[cells.Count][];
        for (var cell = 0; cell < cells.Count; cell++)
        {
            row(representatives[cell], costs[cell] = new double[candidates]);
            foreach (var i in cells[cell])
            {
                row(i, own);
                (cellOf[i], differences[i]) = (cell, LargestDifference(own, costs[cell]));
            }
        }

        return new CustomerAggregation(representatives, cellOf, differences, costs,
            [.. cells.Select(members => members.Sum(i => shares[i]))]);
    }

    private static double LargestDifference(double[] one, double[] other)
    {
        var largest = 0.0;
        for (var candidate = 0; candidate < one.Length; candidate++)
        {
            if (double.IsFinite(one[candidate]))
                largest = Math.Max(largest, Math.Abs(one[candidate] - other[candidate]));
        }

        return largest;
    }

    /// <summary>Which candidates are allowed, a bit each.</summary>
    private static string Allowed(double[] costs) => string.Create((costs.Length + 15) / 16, costs, (bits, values) =>
    {
        bits.Clear();
        for (var candidate = 0; candidate < values.Length; candidate++)
            bits[candidate / 16] |= (char)(double.IsFinite(values[candidate]) ? 1 << (candidate % 16) : 0);
    });
}

/// <summary>Works out what one customer would be left with, so that the costs of very many need not be kept.</summary>
/// <param name="customer">Its number.</param>
/// <param name="costs">To be filled: one a candidate, 0 or more, infinite where the candidate is not allowed. The same numbers every
/// time.</param>
public delegate void CostRowFunction(int customer, Span<double> costs);
