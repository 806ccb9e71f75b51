using FrameOpt.Numerics;

namespace FrameOpt.Search.Fronts;

/// <summary>The exact hypervolume of points with respect to a reference point, all objectives to be minimised. A point that is not strictly
/// below the reference in every objective dominates nothing.</summary>
/// <remarks>Source: Zitzler and Thiele, Multiobjective optimization using evolutionary algorithms: a comparative case study, Parallel
/// Problem Solving from Nature V (1998) 292-301 (from memory).</remarks>
public static class Hypervolume
{
    /// <summary>The volume dominated by at least one point, in the product of the objectives' units.</summary>
    /// <param name="values">The points one after the other, each with all its objectives; they need not be a front.</param>
    /// <param name="reference">The reference, 2 to 6 objectives.</param>
    /// <exception cref="ArgumentException">The length is no multiple of the number of objectives, a value is not a number or minus
    /// infinity, or the reference is not finite.</exception>
    public static double Of(ReadOnlySpan<double> values, ReadOnlySpan<double> reference)
    {
        var last = reference.Length - 1;
        var columns = Ordered(values, reference, last, out var points);
        return last == 1 ? Area(columns, reference) : new WfgHypervolume(reference, points.Length).Of(columns, points.Length);
    }

    /// <summary>Exclusive contribution of every point: the decrease of the hypervolume without it.</summary>
    /// <param name="values">The points one after the other, each with all its objectives; they need not be a front.</param>
    /// <param name="reference">The reference, 2 to 6 objectives.</param>
    /// <exception cref="ArgumentException">As for the whole volume.</exception>
    public static double[] Contributions(ReadOnlySpan<double> values, ReadOnlySpan<double> reference)
    {
        var last = reference.Length - 1;
        var columns = Ordered(values, reference, last > 2 ? last : 0, out var points);
        var ofPoints = last switch
        {
            1 => ContributionSweep.Of(columns[0], new double[points.Length], columns[1], (reference[0], 1, reference[1])),
            2 => ContributionSweep.Of(columns[0], columns[1], columns[2], (reference[0], reference[1], reference[2])),
            _ => OneByOne(columns, reference, points.Length),
        };
        var contributions = new double[values.Length / reference.Length];
        for (var k = 0; k < points.Length; k++)
            contributions[points[k]] = ofPoints[k];
        return contributions;
    }

    /// <summary>The index of the point with the smallest contribution, the first in case of a tie.</summary>
    /// <param name="values">One point or more, one after the other, each with all its objectives.</param>
    /// <param name="reference">The reference, 2 to 6 objectives.</param>
    /// <exception cref="ArgumentException">There are no points, or as for the whole volume.</exception>
    public static int LeastContributor(ReadOnlySpan<double> values, ReadOnlySpan<double> reference)
    {
        if (values.IsEmpty)
            throw new ArgumentException("of no points none contributes least", nameof(values));
        var contributions = Contributions(values, reference);
        var least = 0;
        for (var i = 1; i < contributions.Length; i++)
            if (contributions[i] < contributions[least])
                least = i;
        return least;
    }

    /// <summary>The points below the reference as columns in ascending order of one objective, and which points they are.</summary>
    private static double[][] Ordered(ReadOnlySpan<double> values, ReadOnlySpan<double> reference, int by, out int[] points)
    {
        var objectives = reference.Length;
        var count = PointArguments.Count(values, objectives);
        foreach (var value in reference)
            if (!double.IsFinite(value))
                throw new ArgumentException("the reference must be finite", nameof(reference));
        if (values.Contains(double.NegativeInfinity))
            throw new ArgumentException("a point at minus infinity dominates no finite volume", nameof(values));
        var keys = new ulong[count];
        points = new int[count];
        var below = 0;
        for (var i = 0; i < count; i++)
            if (IsBelow(values.Slice(i * objectives, objectives), reference))
                (keys[below], points[below++]) = (RadixSort.KeyOf(values[i * objectives + by]), i);
        Array.Resize(ref points, below);
        RadixSort.SortUnstable(keys.AsSpan(0, below), points);
        var columns = WfgHypervolume.Columns(objectives, below);
        for (var k = 0; k < below; k++)
            for (var j = 0; j < objectives; j++)
                columns[j][k] = values[points[k] * objectives + j];
        return columns;
    }

    private static bool IsBelow(ReadOnlySpan<double> point, ReadOnlySpan<double> reference)
    {
        for (var j = 0; j < point.Length; j++)
            if (point[j] >= reference[j])
                return false;
        return true;
    }

    private static double Area(double[][] columns, ReadOnlySpan<double> reference)
    {
        var area = 0.0;
        var right = reference[0];
        for (var i = 0; i < columns[1].Length; i++)
        {
            var left = Math.Min(right, columns[0][i]);
            area += (right - left) * (reference[1] - columns[1][i]);
            right = left;
        }
        return area;
    }

    private static double[] OneByOne(double[][] columns, ReadOnlySpan<double> reference, int count)
    {
        var contributions = new double[count];
        var volume = new WfgHypervolume(reference, count);
        var point = new double[columns.Length];
        for (var i = 0; i < count; i++)
        {
            var others = Array.ConvertAll(columns, column => (double[])[.. column.AsSpan(0, i), .. column.AsSpan(i + 1)]);
            for (var j = 0; j < point.Length; j++)
                point[j] = columns[j][i];
            contributions[i] = volume.ExclusiveVolume(point, others, count - 1);
        }
        return contributions;
    }
}

/// <summary>Checks points given one after the other, each with all its objectives.</summary>
internal static class PointArguments
{
    public const int MaxObjectives = 6;

    /// <summary>Number of points.</summary>
    /// <exception cref="ArgumentException">There are fewer than at least 2 than 6 objectives, part of a point, or a value that is not a
    /// number.</exception>
    public static int Count(ReadOnlySpan<double> values, int objectives)
    {
        if (objectives is < 2 or > MaxObjectives)
            throw new ArgumentException($"expected 2 to {MaxObjectives} objectives, not {objectives}", nameof(objectives));
        if (values.Length % objectives != 0)
            throw new ArgumentException($"{values.Length} values are no whole number of points with {objectives} objectives",
                nameof(values));
        var allNumbers = true;
        foreach (var value in values)
            allNumbers &= !double.IsNaN(value);
        if (!allNumbers)
            throw new ArgumentException("an objective is not a number", nameof(values));
        return values.Length / objectives;
    }
}
