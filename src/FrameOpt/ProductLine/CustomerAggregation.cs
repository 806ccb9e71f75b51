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

/// <summary>Parts very many customers into cells of customers with like costs.</summary>
/// <remarks>Cells are halved, the one of most share times width first, across the widest of some of the candidates' costs. Customers for
/// whom
/// different candidates are allowed are never in one cell, so there can be more cells than wanted.</remarks>
internal static class CustomerClusters
{
    /// <param name="marks">For each customer its costs for some of the candidates, 0 where not allowed.</param>
    /// <param name="kinds">Customers of one kind have the same candidates allowed.</param>
    /// <param name="shares">How much each customer counts.</param>
    /// <param name="wanted">Cells.</param>
    /// <returns>The customers of each cell.</returns>
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

    /// <summary>The member whose marks are nearest to the cell's share-weighted mean.</summary>
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
