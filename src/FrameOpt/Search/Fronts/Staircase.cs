using System.Numerics;
using System.Runtime.Intrinsics;

namespace FrameOpt.Search.Fronts;

/// <summary>The area dominated by two-objective points up to a reference corner, stored as the steps of its boundary.</summary>
/// <param name="capacity">Largest number of points.</param>
internal sealed class Staircase(int capacity)
{
    private const int FewSteps = 32;

    private readonly double[] lefts = new double[capacity + Vector512<double>.Count];
    private readonly double[] heights = new double[capacity];
    private double rightEnd;
    private double top;
    private int count;

    /// <summary>Resets it to no points and a new corner.</summary>
    public void Clear(double cornerX, double cornerY)
    {
        (rightEnd, top) = (cornerX, cornerY);
        count = 0;
    }

    /// <summary>Adds a point strictly below and left of the corner, and gives the area it adds.</summary>
    public double Add(double x, double y)
    {
        var first = FirstNotLeftOf(x);
        var height = first > 0 ? heights[first - 1] : top;
        if (height <= y || (first < count && lefts[first] == x && heights[first] <= y))
            return 0;
        var gain = 0.0;
        var left = x;
        var end = first;
        for (; end < count && heights[end] >= y; end++)
        {
            gain += (lefts[end] - left) * (height - y);
            left = lefts[end];
            height = heights[end];
        }
        gain += ((end < count ? lefts[end] : rightEnd) - left) * (height - y);
        Replace(first, end, x, y);
        return gain;
    }

    private int FirstNotLeftOf(double x) => count <= FewSteps ? CountLeftOf(x) : SearchNotLeftOf(x);

    private int CountLeftOf(double x)
    {
        var found = 0;
        for (var i = 0; i < count; i += Vector512<double>.Count)
        {
            var left = Vector512.LessThan(Vector512.Create<double>(lefts.AsSpan(i)), Vector512.Create(x));
            found += BitOperations.PopCount(left.ExtractMostSignificantBits() & ((1UL << (count - i)) - 1));
        }
        return found;
    }

    private int SearchNotLeftOf(double x)
    {
        var low = 0;
        for (var length = count; length > 0;)
        {
            var half = length >> 1;
            var left = lefts[low + half] < x;
            low = left ? low + half + 1 : low;
            length = left ? length - half - 1 : half;
        }
        return low;
    }

    private void Replace(int first, int end, double x, double y)
    {
        if (end != first + 1)
        {
            lefts.AsSpan(end, count - end).CopyTo(lefts.AsSpan(first + 1));
            heights.AsSpan(end, count - end).CopyTo(heights.AsSpan(first + 1));
            count += first + 1 - end;
        }
        (lefts[first], heights[first]) = (x, y);
    }
}
