using System.Numerics;
using System.Runtime.InteropServices;

namespace FrameOpt.ProductLine.PMedian;

/// <summary>The p-median problem behind every objective: choose at most <see cref="Count"/> columns that minimise the sum over rows of the
/// smallest chosen cost. Costs include the weights. Where a column is not allowed for a row its cost is <see cref="UnservedCost"/>, larger
/// than the sum of any choice that serves all rows.</summary>
internal sealed class PMedianProblem
{
    private readonly double[] costs;

    private PMedianProblem(double[] costs, int rows, int columns, int count, double unserved) =>
        (this.costs, Rows, Columns, Count, UnservedCost) = (costs, rows, columns, count, unserved);

    public int Rows { get; }

    public int Columns { get; }

    public int Count { get; }

    public double UnservedCost { get; }

    /// <summary>From costs by (row, column), infinite where not allowed.</summary>
    public static PMedianProblem From(int rows, int columns, int count, Func<int, int, double> cost)
    {
        var costs = new double[rows * columns];
        var largest = new double[rows];
        for (var column = 0; column < columns; column++)
        {
            for (var row = 0; row < rows; row++)
            {
                var value = cost(row, column);
                costs[(column * rows) + row] = value;
                if (double.IsFinite(value))
                    largest[row] = Math.Max(largest[row], value);
            }
        }

        var unserved = (1.001 * largest.Sum()) + double.Epsilon;
        if (unserved < 1e-300)
            unserved = 1;
        foreach (ref var value in costs.AsSpan())
            value = Math.Min(value, unserved);
        return new PMedianProblem(costs, rows, columns, Math.Min(count, columns), unserved);
    }

    /// <summary>Some of the columns, with rows that rank them equally summed.</summary>
    public PMedianProblem Part(int[][] alike, int[] columns)
    {
        var part = new double[alike.Length * columns.Length];
        for (var place = 0; place < columns.Length; place++)
        {
            for (var row = 0; row < alike.Length; row++)
            {
                foreach (var member in alike[row])
                    part[(place * alike.Length) + row] += Column(columns[place])[member];
            }
        }

        return new PMedianProblem(part, alike.Length, columns.Length, Math.Min(Count, columns.Length), UnservedCost);
    }

    public ReadOnlySpan<double> Column(int column) => costs.AsSpan(column * Rows, Rows);

    /// <summary>The sum over rows of the least cost among the chosen columns.</summary>
    public double Value(IReadOnlyList<int> chosen)
    {
        var least = Column(chosen[0]).ToArray();
        foreach (var column in chosen)
            Lower(least, Column(column));
        return Sum(least);
    }

    public static double Sum(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values)
            sum += value;
        return sum;
    }

    /// <summary>Replaces each cost by a lower one.</summary>
    public static void Lower(Span<double> costs, ReadOnlySpan<double> by)
    {
        for (var i = 0; i < costs.Length; i++)
            costs[i] = Math.Min(costs[i], by[i]);
    }

    /// <summary>Sum of min(a, b): the inner loop of bounds and values.</summary>
    public static double SumOfMinima(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        var first = MemoryMarshal.Cast<double, Vector<double>>(a);
        var second = MemoryMarshal.Cast<double, Vector<double>>(b);
        Vector<double> even = Vector<double>.Zero, odd = Vector<double>.Zero;
        var i = 0;
        for (; i + 1 < first.Length; i += 2)
        {
            even += Vector.Min(first[i], second[i]);
            odd += Vector.Min(first[i + 1], second[i + 1]);
        }

        if (i < first.Length)
            even += Vector.Min(first[i], second[i]);
        var sum = Vector.Sum(even + odd);
        for (var rest = first.Length * Vector<double>.Count; rest < a.Length; rest++)
            sum += Math.Min(a[rest], b[rest]);
        return sum;
    }
}

/// <summary>A smaller problem with the same optimum: rows that rank the columns equally are summed (the same chosen column is the cheapest
/// in all of them), and dominated columns are removed.</summary>
internal static class PMedianReduction
{
    /// <param name="problem">The whole problem.</param>
    /// <returns>The smaller problem and the column of the whole that each of its columns is. Of equal columns the lowest stays.</returns>
    public static (PMedianProblem Problem, int[] Columns) Of(PMedianProblem problem)
    {
        var columns = Undominated(problem);
        var rows = Enumerable.Range(0, problem.Rows).GroupBy(row => Ranks(problem, columns, row)).Select(alike => alike.ToArray())
            .ToArray();
        return (problem.Part(rows, columns), columns);
    }

    /// <summary>Cheap columns first, each compared with those kept: a dominated column is dominated by a kept one.</summary>
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

    /// <summary>The rank of each column in a row, equal costs having equal ranks.</summary>
    private static string Ranks(PMedianProblem problem, int[] columns, int row)
    {
        double[] costs = [.. columns.Select(column => problem.Column(column)[row])];
        double[] levels = [.. costs.Distinct().Order()];
        return string.Concat(costs.Select(cost => (char)Array.BinarySearch(levels, cost)));
    }
}
