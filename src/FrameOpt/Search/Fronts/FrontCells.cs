using System.Numerics;
using FrameOpt.Numerics;

namespace FrameOpt.Search.Fronts;

/// <summary>The points of a front in boxes of a lattice, so that a question about all of them looks into few boxes. The answers are those
/// of looking at every point in turn.</summary>
internal sealed class FrontCells
{
    /// <summary>Points in a box, were they spread evenly.</summary>
    private const int PointsPerBox = 8;

    /// <summary>Place in the front of each point: box by box, ascending in each.</summary>
    private readonly int[] places;

    private readonly double[][] columns;

    /// <summary>The first point of each box, and one beyond the last.</summary>
    private readonly int[] starts;

    /// <summary>For each objective the lowest value in each box.</summary>
    private readonly double[][] lowest;

    /// <summary>Sorts the points of a front of two objectives or more.</summary>
    public FrontCells(FrontPoints front)
    {
        var boxes = Boxes(front);
        places = [.. Enumerable.Range(0, boxes.Length)];
        RadixSort.Sort(Array.ConvertAll(boxes, box => (ulong)box), places);
        columns = Array.ConvertAll(front.Columns, column => Array.ConvertAll(places, i => column[i]));
        starts = [.. Enumerable.Range(0, places.Length).Where(k => k == 0 || boxes[places[k]] != boxes[places[k - 1]]), places.Length];
        lowest = Array.ConvertAll(columns, column =>
            Enumerable.Range(0, starts.Length - 1).Select(box => column[starts[box]..starts[box + 1]].Min()).ToArray());
    }

    /// <summary>True when some point is nowhere above another.</summary>
    /// <param name="point">The other.</param>
    public bool Dominates(double[] point)
    {
        var boxes = starts.Length - 1;
        for (var box = NowhereAbove(lowest, 0, boxes, point); box >= 0; box = NowhereAbove(lowest, box + 1, boxes, point))
            if (NowhereAbove(columns, starts[box], starts[box + 1], point) >= 0)
                return true;
        return false;
    }

    /// <summary>Place in the front of the first point whose largest excess over another, each objective divided by its range, is
    /// smallest.</summary>
    /// <param name="point">The other.</param>
    /// <param name="ranges">Above 0.</param>
    public int Substitute(double[] point, double[] ranges)
    {
        var (best, least) = (0, double.PositiveInfinity);
        for (var box = 0; box < starts.Length - 1; box++)
        {
            // Differences and quotients are rounded in order: no point of the box has less than its lowest values have.
            if (Excess(lowest, box, point, ranges, least) > least)
                continue;
            for (var k = starts[box]; k < starts[box + 1]; k++)
            {
                var excess = Excess(columns, k, point, ranges, least);
                if (excess < least || (excess == least && places[k] < best))
                    (least, best) = (excess, places[k]);
            }
        }

        return best;
    }

    /// <summary>The largest excess, or one that is above the least already.</summary>
    private static double Excess(double[][] columns, int k, double[] point, double[] ranges, double least)
    {
        var excess = double.NegativeInfinity;
        for (var j = 0; j < ranges.Length && excess <= least; j++)
            excess = Math.Max(excess, (columns[j][k] - point[j]) / ranges[j]);
        return excess;
    }

    /// <summary>The first row from one to before another that is nowhere above a point, or -1.</summary>
    private static int NowhereAbove(double[][] columns, int from, int to, double[] point)
    {
        for (; from + Vector<double>.Count <= to; from += Vector<double>.Count)
        {
            var all = Vector<long>.AllBitsSet;
            for (var j = 0; j < columns.Length && all != Vector<long>.Zero; j++)
                all &= Vector.LessThanOrEqual(new Vector<double>(columns[j], from), new Vector<double>(point[j]));
            if (all != Vector<long>.Zero)
                break;
        }

        for (; from < to; from++)
        {
            var j = 0;
            while (j < columns.Length && columns[j][from] <= point[j])
                j++;
            if (j == columns.Length)
                return from;
        }

        return -1;
    }

    /// <summary>The box of each point: its place on a regular lattice over all objectives but the last, which on a front follows from the
    /// others.</summary>
    private static int[] Boxes(FrontPoints front)
    {
        var axes = front.Columns.Length - 1;
        var marks = Math.Max(1, (int)Elementary.Pow((double)front.Ids.Length / PointsPerBox, 1.0 / axes));
        var boxes = new int[front.Ids.Length];
        foreach (var column in front.Columns.Take(axes))
        {
            var (low, high) = boxes.Length == 0 ? (0, 0) : (column.Min(), column.Max());
            for (var i = 0; i < boxes.Length; i++)
                boxes[i] = boxes[i] * marks + Math.Clamp((int)(marks * ((column[i] - low) / (high - low))), 0, marks - 1);
        }

        return boxes;
    }
}
