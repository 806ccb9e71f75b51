namespace FrameOpt.ProductLine;

/// <summary>Customer aggregation: one representative per cluster, with a bound on the aggregation error.</summary>
/// <remarks>For every choice, a customer's least cost differs from that of its representative by no more than the largest difference of
/// their costs over the candidates. Source: M. J. Hodgson 1990, Geographical Analysis 22, 331-340; R. L. Francis, T. J. Lowe and A. Tamir
/// 2000, Operations Research 48, 294-307 (from memory).</remarks>
public sealed record CustomerAggregation
{
    private const int Marks = 24;

    private CustomerAggregation(int[] representatives, int[] cells, double[] differences, double[][] costs, double[] shares) =>
        (Representatives, Clusters, Differences, Costs, Shares) = (representatives, cells, differences, costs, shares);

    /// <summary>The representative of each cluster.</summary>
    public IReadOnlyList<int> Representatives { get; }

    /// <summary>The cluster of each customer.</summary>
    public IReadOnlyList<int> Clusters { get; }

    /// <summary>For each customer the largest difference, over the candidates allowed, between its cost and its representative's.</summary>
    public IReadOnlyList<double> Differences { get; }

    /// <summary>The costs of each representative.</summary>
    internal double[][] Costs { get; }

    /// <summary>Total weight of each cluster.</summary>
    internal double[] Shares { get; }

    /// <summary>Chooses representatives; customers with similar costs are in one cluster.</summary>
    /// <param name="shares">Weight of each customer, over 0.</param>
    /// <param name="candidates">Number of candidates.</param>
    /// <param name="row">Computes the costs of one customer; asked twice for each.</param>
    /// <param name="wanted">Number of representatives wanted; there are more when there are more different sets of allowed
    /// candidates.</param>
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

    /// <summary>Largest difference of the objective of any choice between all customers and their representatives.</summary>
    /// <remarks>Mean: the share-weighted mean of the differences. Worst and percentile: the largest. Blend: both, weighted.</remarks>
    /// <param name="objective">The objective.</param>
    /// <param name="shares">Weight of each customer.</param>
    /// <param name="servable">The customers that enter the objective, one or more.</param>
    public double ErrorBound(ProductLineObjective objective, IReadOnlyList<double> shares, IReadOnlyList<int> servable) =>
        ObjectiveValue.Of(objective is ProductLineObjective.Percentile ? new ProductLineObjective.Worst() : objective,
            [.. servable.Select(i => shares[i])], [.. servable.Select(i => Differences[i])]);

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

    /// <summary>The allowed candidates, one bit each.</summary>
    private static string Allowed(double[] costs) => string.Create((costs.Length + 15) / 16, costs, (bits, values) =>
    {
        bits.Clear();
        for (var candidate = 0; candidate < values.Length; candidate++)
            bits[candidate / 16] |= (char)(double.IsFinite(values[candidate]) ? 1 << (candidate % 16) : 0);
    });
}

/// <summary>Computes the costs of one customer, so that the costs of very many customers need not be stored.</summary>
/// <param name="customer">Index of the customer.</param>
/// <param name="costs">Filled with one cost per candidate, at least 0, infinite where the candidate is not allowed; the same values every
/// time.</param>
public delegate void CostRowFunction(int customer, Span<double> costs);

/// <summary>Clusters customers with similar costs.</summary>
/// <remarks>The cluster with the largest product of weight and width is halved first, across the candidate whose costs differ most.
/// Customers with different allowed candidates are never in one cluster, so there can be more clusters than wanted.</remarks>
internal static class CustomerClusters
{
    /// <param name="marks">For each customer its costs for some of the candidates, 0 where not allowed.</param>
    /// <param name="kinds">Customers of one kind have the same candidates allowed.</param>
    /// <param name="shares">Weight of each customer.</param>
    /// <param name="wanted">Number of clusters wanted.</param>
    /// <returns>The customers of each cluster.</returns>
    public static List<int[]> Of(double[][] marks, int[] kinds, double[] shares, int wanted)
    {
        var cells = new List<int[]>();
        var queue = new PriorityQueue<(int[] Members, int Mark, double Middle), (double Size, int Place)>();
        void Add(int[] members)
        {
            var (mark, low, high) = Widest(marks, members);
            cells.Add(members);
            if (high > low)
                queue.Enqueue((members, mark, (low + high) / 2), (-(high - low) * members.Sum(i => shares[i]), members[0]));
        }

        foreach (var kind in Enumerable.Range(0, kinds.Length).GroupBy(i => kinds[i]))
            Add([.. kind]);
        while (cells.Count < wanted && queue.TryDequeue(out var cell, out _))
        {
            cells.Remove(cell.Members);
            Add([.. cell.Members.Where(i => marks[i][cell.Mark] <= cell.Middle)]);
            Add([.. cell.Members.Where(i => marks[i][cell.Mark] > cell.Middle)]);
        }

        return cells;
    }

    /// <summary>The member whose marks are nearest to the cluster's share-weighted mean.</summary>
    public static int Centre(double[][] marks, double[] shares, int[] members)
    {
        var all = members.Sum(i => shares[i]);
        double[] mean = [.. Enumerable.Range(0, marks[0].Length).Select(mark => members.Sum(i => shares[i] * marks[i][mark]) / all)];
        return members.MinBy(i => marks[i].Zip(mean, (value, middle) => (value - middle) * (value - middle)).Sum());
    }

    private static (int Mark, double Low, double High) Widest(double[][] marks, int[] members)
    {
        var widest = (Mark: 0, Low: 0.0, High: 0.0);
        for (var mark = 0; mark < marks[0].Length; mark++)
        {
            double low = double.PositiveInfinity, high = double.NegativeInfinity;
            foreach (var i in members)
                (low, high) = (Math.Min(low, marks[i][mark]), Math.Max(high, marks[i][mark]));
            if (high - low > widest.High - widest.Low)
                widest = (mark, low, high);
        }

        return widest;
    }
}
