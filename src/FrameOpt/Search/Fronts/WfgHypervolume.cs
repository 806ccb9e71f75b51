using System.Runtime.Intrinsics;

namespace FrameOpt.Search.Fronts;

/// <summary>Volumes between points and a reference, slice by slice along the last objective.</summary>
/// <remarks>Taken in order of the last objective, each point adds its exclusive volume in the other objectives, times its distance from the
/// reference in the last. Its exclusive volume is its box less the volume of the earlier points, each clipped to the point's box: the same
/// problem with one objective fewer. With three objectives the earlier points form a staircase. Source: While, Bradstreet and Barone, A
/// fast way of calculating exact hypervolumes, IEEE Transactions on Evolutionary Computation 16 (2012) 86-95, from memory; for three
/// objectives Beume, Fonseca, Lopez-Ibanez, Paquete and Vahrenhold, On the complexity of computing the hypervolume indicator, the same
/// journal 13 (2009) 1075-1082, from memory.</remarks>
internal sealed class WfgHypervolume
{
    private readonly double[] reference;
    private readonly int last;
    private readonly Staircase staircase;
    private readonly WfgHypervolume? below;
    private readonly double[][] earlier;
    private readonly double[][] limitSet;

    /// <summary>Prepares for at most <paramref name="capacity"/> points of 3 or more objectives, as many as the reference has.</summary>
    public WfgHypervolume(ReadOnlySpan<double> reference, int capacity)
    {
        this.reference = reference.ToArray();
        last = reference.Length - 1;
        staircase = new Staircase(last == 2 ? capacity : 0);
        below = last == 2 ? null : new WfgHypervolume(reference[..last], capacity);
        earlier = Columns(below is null ? 0 : last, capacity);
        limitSet = Columns(below is null ? 0 : reference.Length, capacity + Vector512<double>.Count);
    }

    /// <summary>An array for each objective.</summary>
    public static double[][] Columns(int objectives, int capacity)
    {
        var columns = new double[objectives][];
        for (var j = 0; j < objectives; j++)
            columns[j] = new double[capacity];
        return columns;
    }

    /// <summary>The volume that the first points dominate.</summary>
    /// <param name="columns">One array for each objective, all below the reference, in ascending order of the last objective.</param>
    /// <param name="count">Number of points.</param>
    public double Of(double[][] columns, int count)
    {
        staircase.Clear(reference[0], reference[1]);
        var volume = 0.0;
        var kept = 0;
        Span<double> point = stackalloc double[last];
        for (var i = 0; i < count; i++)
        {
            var height = reference[last] - columns[last][i];
            if (below is null)
            {
                volume += height * staircase.Add(columns[0][i], columns[1][i]);
                continue;
            }
            for (var k = 0; k < last; k++)
                point[k] = columns[k][i];
            var alone = below.ExclusiveVolume(point, earlier, kept);
            if (alone > 0)
                kept = Insert(point, kept);
            volume += height * alone;
        }
        return volume;
    }

    /// <summary>The volume that a point dominates and others do not; exactly 0 if one of them is nowhere above the point.</summary>
    /// <param name="point">Below the reference.</param>
    /// <param name="others">One array for each objective, all below the reference, in ascending order of the last objective.</param>
    /// <param name="count">Number of other points.</param>
    public double ExclusiveVolume(ReadOnlySpan<double> point, double[][] others, int count)
    {
        var box = 1.0;
        for (var k = 0; k <= last; k++)
            box *= reference[k] - point[k];
        return below is null ? ExclusiveVolume3D(point, others, count, box) : ExclusiveVolumeByLimitSet(point, others, count, box);
    }

    private double ExclusiveVolume3D(ReadOnlySpan<double> point, double[][] others, int count, double box)
    {
        staircase.Clear(reference[0], reference[1]);
        var shared = 0.0;
        var covered = false;
        for (var i = 0; i < count && !covered; i++)
        {
            var x = Math.Max(others[0][i], point[0]);
            var y = Math.Max(others[1][i], point[1]);
            var z = others[2][i];
            covered = x == point[0] && y == point[1];
            if (covered && z <= point[2])
                return 0;
            shared += (reference[2] - Math.Max(z, point[2])) * staircase.Add(x, y);
        }
        return Math.Max(0, box - shared);
    }

    private double ExclusiveVolumeByLimitSet(ReadOnlySpan<double> point, double[][] others, int count, double box)
    {
        var kept = 0;
        var covered = false;
        Span<double> moved = stackalloc double[point.Length];
        for (var i = 0; i < count && !covered; i++)
        {
            covered = true;
            for (var k = 0; k <= last; k++)
            {
                moved[k] = Math.Max(others[k][i], point[k]);
                covered &= k == last || moved[k] == point[k];
            }
            if (covered && moved[last] == point[last])
                return 0;
            kept = Keep(moved, kept);
        }
        return Math.Max(0, box - Of(limitSet, kept));
    }

    /// <summary>Appends a point to the clipped ones unless one of them covers it, dropping those it covers; gives their number.</summary>
    private int Keep(ReadOnlySpan<double> point, int count)
    {
        for (var i = 0; i < count; i += Vector512<double>.Count)
        {
            var covering = (1UL << Math.Min(Vector512<double>.Count, count - i)) - 1;
            for (var k = 0; k <= last && covering != 0; k++)
                covering &= Vector512.LessThanOrEqual(Vector512.Create<double>(limitSet[k].AsSpan(i)),
                    Vector512.Create(point[k])).ExtractMostSignificantBits();
            if (covering != 0)
                return count;
        }
        // Points come in order of the last value: a later point can cover an earlier one only if that value is equal.
        var kept = count > 0 && limitSet[last][0] == point[last] ? Drop(limitSet, last + 1, point, 0, count) : count;
        for (var k = 0; k <= last; k++)
            limitSet[k][kept] = point[k];
        return kept + 1;
    }

    /// <summary>Inserts a point among the earlier ones in order of its last value, dropping those it covers; gives their number.</summary>
    private int Insert(ReadOnlySpan<double> point, int count)
    {
        var order = earlier[last - 1];
        var place = 0;
        while (place < count && order[place] < point[last - 1])
            place++;
        var kept = Drop(earlier, last, point, place, count);
        for (var k = 0; k < last; k++)
        {
            earlier[k].AsSpan(place, kept - place).CopyTo(earlier[k].AsSpan(place + 1));
            earlier[k][place] = point[k];
        }
        return kept + 1;
    }

    /// <summary>Drops the points from <paramref name="start"/> on that a point covers, keeping the order; gives the number left.</summary>
    private static int Drop(double[][] columns, int objectives, ReadOnlySpan<double> point, int start, int count)
    {
        var kept = start;
        for (var i = start; i < count; i++)
        {
            var covered = true;
            for (var k = 0; k < objectives && covered; k++)
                covered = point[k] <= columns[k][i];
            if (covered)
                continue;
            for (var k = 0; k < objectives && kept < i; k++)
                columns[k][kept] = columns[k][i];
            kept++;
        }
        return kept;
    }
}
