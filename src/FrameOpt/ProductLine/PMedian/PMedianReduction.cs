namespace FrameOpt.ProductLine.PMedian;

/// <summary>A smaller problem with the same best value: rows that put the columns in the same order are added up (the
/// same column is least in all of them, whatever is chosen), and a column that another never exceeds is left out.</summary>
internal static class PMedianReduction
{
    /// <param name="problem">The whole.</param>
    /// <returns>The smaller problem and the column of the whole that each of its columns is. Of equal columns the lowest stays.</returns>
    public static (PMedianProblem Problem, int[] Columns) Of(PMedianProblem problem)
    {
        var columns = Undominated(problem);
        var rows = Enumerable.Range(0, problem.Rows).GroupBy(row => Ranks(problem, columns, row)).Select(alike => alike.ToArray())
            .ToArray();
        return (problem.Part(rows, columns), columns);
    }

    /// <summary>Cheap columns first, each compared with those kept: one that is dominated is so by a kept one.</summary>
    private static int[] Undominated(PMedianProblem problem)
    {
        var sums = Enumerable.Range(0, problem.Columns).Select(column => PMedianProblem.Sum(problem.Column(column))).ToArray();
        var kept = new List<int>();
        foreach (var column in Enumerable.Range(0, problem.Columns).OrderBy(column => sums[column]).ThenBy(column => column))
        {
            if (!kept.Exists(other => NeverAbove(problem.Column(other), problem.Column(column))))
                kept.Add(column);
        }

        return [.. kept.Order()];
    }

    private static bool NeverAbove(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        for (var row = 0; row < one.Length; row++)
        {
            if (one[row] > other[row])
                return false;
        }

        return true;
    }

    /// <summary>The rank of each column in a row, equal ones alike.</summary>
    private static string Ranks(PMedianProblem problem, int[] columns, int row)
    {
        double[] costs = [.. columns.Select(column => problem.Column(column)[row])];
        double[] levels = [.. costs.Distinct().Order()];
        return string.Concat(costs.Select(cost => (char)Array.BinarySearch(levels, cost)));
    }
}
