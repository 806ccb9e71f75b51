using System.Runtime.Intrinsics;

namespace FrameOpt.Search.Fronts;

/// <summary>Lookup table that rejects most dominated points in constant time. It never rejects a non-dominated point.</summary>
/// <remarks>A lattice covers all objectives but one, the test objective. Each lattice corner holds the lowest value of the test objective
/// among the points it was built from that are nowhere above the corner. A point is looked up at the highest corner that is nowhere above
/// the point: if the value there is below the point's own value, one of those points dominates it. Own construction.</remarks>
internal sealed class DominanceFilter
{
    private const int Block = 512;

    private readonly int objectives;
    private readonly int stride;
    private int pivot;
    private int[] binned = [];
    private LatticeAxis[] binnedAxes = [];
    private double[] lowestPivot = [];

    public DominanceFilter(int objectives)
    {
        this.objectives = objectives;
        stride = objectives switch { 2 => 4096, 3 => 256, 4 => 48, _ => 20 };
        Corners = 1;
        for (var j = 1; j < objectives; j++)
            Corners *= stride;
    }

    public int Corners { get; }

    /// <summary>Rebuilds the table from the first <paramref name="count"/> points.</summary>
    public void Rebuild(double[][] columns, int count)
    {
        LayLattice(columns, count);
        if (lowestPivot.Length == 0)
            lowestPivot = new double[Corners];
        Array.Fill(lowestPivot, double.PositiveInfinity);
        Span<double> corners = stackalloc double[Block];
        for (var start = 0; start < count; start += Block)
        {
            var length = Math.Min(Block, count - start);
            corners.Clear();
            for (var k = 0; k < binnedAxes.Length; k++)
                binnedAxes[k].NumberAbove(columns[binned[k]].AsSpan(start, length), corners, stride);
            Insert(columns[pivot].AsSpan(start, length), corners);
        }
        Propagate();
    }

    /// <summary>Writes the positions from <paramref name="start"/> to <paramref name="end"/> that are feasible and not rejected; gives
    /// their number.</summary>
    public int Survivors(double[][] columns, byte[] feasible, int start, int end, int[] positions, int threads)
    {
        var share = (end - start) / threads + 1;
        int From(int t) => Math.Min(t * share, end - start);
        var kept = new int[threads];
        Parallel.For(0, threads, t =>
            kept[t] = Survivors(columns, feasible, start + From(t), start + From(t + 1), positions.AsSpan(From(t))));
        var total = kept[0];
        for (var t = 1; t < threads; t++)
        {
            positions.AsSpan(From(t), kept[t]).CopyTo(positions.AsSpan(total));
            total += kept[t];
        }
        return total;
    }

    private int Survivors(double[][] columns, byte[] feasible, int start, int end, Span<int> positions)
    {
        Span<double> corners = stackalloc double[Block];
        var kept = 0;
        for (var from = start; from < end; from += Block)
        {
            var length = Math.Min(Block, end - from);
            corners.Clear();
            for (var k = 0; k < binnedAxes.Length; k++)
                binnedAxes[k].NumberBelow(columns[binned[k]].AsSpan(from, length), corners, stride);
            kept += Pass(columns[pivot].AsSpan(from, length), corners, feasible.AsSpan(from, length), from, positions[kept..]);
        }
        return kept;
    }

    private int Pass(ReadOnlySpan<double> judged, ReadOnlySpan<double> corners, ReadOnlySpan<byte> feasible, int from, Span<int> positions)
    {
        var table = lowestPivot.Length > 0 ? lowestPivot : [double.PositiveInfinity];
        var kept = 0;
        for (var i = 0; i < judged.Length; i++)
        {
            positions[kept] = from + i;
            kept += !(table[(int)corners[i]] < judged[i]) & feasible[i] != 0 ? 1 : 0;
        }
        return kept;
    }

    private void Insert(ReadOnlySpan<double> judged, ReadOnlySpan<double> corners)
    {
        for (var i = 0; i < judged.Length; i++)
        {
            ref var lowest = ref lowestPivot[(int)corners[i]];
            if (judged[i] < lowest)
                lowest = judged[i];
        }
    }

    private void LayLattice(double[][] columns, int count)
    {
        var axes = new LatticeAxis[objectives];
        for (var j = 0; j < objectives; j++)
            axes[j] = new LatticeAxis(columns[j].AsSpan(0, count), stride - 2);
        // The test objective must differ between points, or it rejects none.
        pivot = Math.Max(0, Array.FindLastIndex(axes, axis => axis.Divides));
        binnedAxes = [.. axes.Where((_, j) => j != pivot)];
        binned = [.. Enumerable.Range(0, objectives).Where(j => j != pivot)];
    }

    /// <summary>Propagates each corner's value to the corners above it, one axis after another.</summary>
    private void Propagate()
    {
        for (var step = 1; step < lowestPivot.Length; step *= stride)
            for (var start = 0; start < lowestPivot.Length; start += step * stride)
            {
                var line = lowestPivot.AsSpan(start, step * stride);
                var i = step;
                if (step >= Vector512<double>.Count)
                    for (; i + Vector512<double>.Count <= line.Length; i += Vector512<double>.Count)
                        Vector512.Min(Vector512.Create<double>(line[i..]), Vector512.Create<double>(line[(i - step)..])).CopyTo(line[i..]);
                for (; i < line.Length; i++)
                    line[i] = Math.Min(line[i], line[i - step]);
            }
    }
}
