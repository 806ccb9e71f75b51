namespace FrameOpt.Search;

/// <summary>Volumes between points and a reference, slice by slice along the last objective.</summary>
/// <remarks>
/// Taken in order of the last objective, each point adds what it alone dominates in the other objectives, times its distance from the
/// reference in the last. What it alone dominates is its box less the volume of the earlier points, each moved up to the point where it
/// is below: the same task with an objective less. With three objectives the earlier points are a staircase.
/// Source: While, Bradstreet and Barone, A fast way of calculating exact hypervolumes, IEEE Transactions on Evolutionary Computation 16
/// (2012) 86-95, from memory; for three objectives Beume, Fonseca, Lopez-Ibanez, Paquete and Vahrenhold, On the complexity of computing
/// the hypervolume indicator, the same journal 13 (2009) 1075-1082, from memory.
/// </remarks>
internal sealed class SlicedVolume
{
    private readonly double[] reference;
    private readonly int last;
    private readonly Staircase staircase;
    private readonly SlicedVolume? below;
    private readonly double[][] earlier;
    private readonly double[][] clipped;

    /// <summary>Prepares for at most <paramref name="capacity"/> points of 3 or more objectives, as many as the reference has.</summary>
    public SlicedVolume(ReadOnlySpan<double> reference, int capacity)
    {
        this.reference = reference.ToArray();
        last = reference.Length - 1;
        staircase = new Staircase(last == 2 ? capacity : 0);
        below = last == 2 ? null : new SlicedVolume(reference[..last], capacity);
        earlier = Columns(below is null ? 0 : last, capacity);
        clipped = Columns(reference.Length, capacity);
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
    /// <param name="count">How many points.</param>
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
            var alone = below.OfAlone(point, earlier, kept);
            if (alone > 0)
                kept = Insert(point, kept);
            volume += height * alone;
        }
        return volume;
    }

    /// <summary>The volume that a point dominates and others do not; exactly 0 if one of them is nowhere above the point.</summary>
    /// <param name="point">Below the reference.</param>
    /// <param name="others">One array for each objective, all below the reference, in ascending order of the last objective.</param>
    /// <param name="count">How many others.</param>
    public double OfAlone(ReadOnlySpan<double> point, double[][] others, int count)
    {
        var kept = 0;
        var covered = false;
        for (var i = 0; i < count && !covered; i++, kept++)
        {
            covered = true;
            for (var k = 0; k < last; k++)
            {
                var value = others[k][i];
                covered &= value <= point[k];
                clipped[k][i] = Math.Max(value, point[k]);
            }
            if (covered && others[last][i] <= point[last])
                return 0;
            clipped[last][i] = Math.Max(others[last][i], point[last]);
        }
        var box = 1.0;
        for (var k = 0; k <= last; k++)
            box *= reference[k] - point[k];
        return Math.Max(0, box - Of(clipped, kept));
    }

    /// <summary>Inserts a point among the earlier ones in order of its last value, dropping those it covers; gives their number.</summary>
    private int Insert(ReadOnlySpan<double> point, int count)
    {
        var order = earlier[last - 1];
        var place = 0;
        while (place < count && order[place] < point[last - 1])
            place++;
        var kept = place;
        for (var i = place; i < count; i++)
            if (!Covers(point, i))
            {
                for (var k = 0; k < last && kept < i; k++)
                    earlier[k][kept] = earlier[k][i];
                kept++;
            }
        for (var k = 0; k < last; k++)
        {
            earlier[k].AsSpan(place, kept - place).CopyTo(earlier[k].AsSpan(place + 1));
            earlier[k][place] = point[k];
        }
        return kept + 1;
    }

    private bool Covers(ReadOnlySpan<double> point, int i)
    {
        for (var k = 0; k < last; k++)
            if (point[k] > earlier[k][i])
                return false;
        return true;
    }
}
