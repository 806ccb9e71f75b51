namespace FrameOpt.ProductLine;

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
