using System.Numerics;
using System.Runtime.Intrinsics;

namespace FrameOpt.Search.Fronts;

/// <summary>Exclusive hypervolume contribution of each point with two or three objectives.</summary>
/// <remarks>A plane sweeps along the first objective. Along the second objective it is cut into strips at the points' values. Over each
/// strip the lowest and second lowest value of the third objective among the points passed determine which point dominates alone there, and
/// how much; it is added when either changes. Sums of positive terms only. Own construction; n points take at most n^2 steps, most of them
/// eight at a time.</remarks>
internal sealed class ContributionSweep
{
    private readonly double[] widths;
    private readonly double[] lowest;
    private readonly double[] second;
    private readonly double[] since;
    private readonly int[] owners;
    private readonly double[] contributions;

    private ContributionSweep(ReadOnlySpan<double> marks, double end, double top, int count)
    {
        var strips = marks.Length;
        var lanes = Vector512<double>.Count;
        widths = new double[strips];
        for (var s = 0; s < strips; s++)
            widths[s] = (s + 1 < strips ? marks[s + 1] : end) - marks[s];
        since = new double[strips];
        owners = new int[strips];
        lowest = new double[strips];
        // Elements beyond the strips must never count as improved.
        second = new double[(strips + lanes - 1) / lanes * lanes];
        second.AsSpan(strips).Fill(double.NegativeInfinity);
        lowest.AsSpan().Fill(top);
        second.AsSpan(0, strips).Fill(top);
        contributions = new double[count];
    }

    /// <summary>The volume that each point alone dominates.</summary>
    /// <param name="first">First objective, ascending.</param>
    /// <param name="middle">Second of three objectives; a constant for two-objective fronts.</param>
    /// <param name="final">Last objective.</param>
    /// <param name="reference">Reference point, above all points in these objectives.</param>
    public static double[] Of(double[] first, double[] middle, double[] final, (double First, double Middle, double Final) reference)
    {
        double[] marks = [.. middle];
        var strips = new int[marks.Length];
        var order = new int[marks.Length];
        for (var i = 0; i < order.Length; i++)
            order[i] = i;
        Array.Sort(marks, order);
        var count = 0;
        for (var i = 0; i < order.Length; i++)
        {
            if (i == 0 || marks[i] != marks[count - 1])
                marks[count++] = marks[i];
            strips[order[i]] = count - 1;
        }
        var sweep = new ContributionSweep(marks.AsSpan(0, count), reference.Middle, reference.Final, order.Length);
        for (var i = 0; i < order.Length; i++)
            sweep.Pass(i, first[i], strips[i], final[i]);
        for (var s = 0; s < count; s++)
            sweep.Accumulate(s, reference.First);
        return sweep.contributions;
    }

    private void Pass(int point, double at, int strip, double value)
    {
        var from = strip & -Vector512<double>.Count;
        var wanted = ulong.MaxValue << (strip - from);
        for (; from < second.Length; from += Vector512<double>.Count, wanted = ulong.MaxValue)
        {
            var improved = Vector512.LessThan(Vector512.Create(value), Vector512.Create<double>(second.AsSpan(from)));
            for (var bits = improved.ExtractMostSignificantBits() & wanted; bits != 0; bits &= bits - 1)
                Improve(from + BitOperations.TrailingZeroCount(bits), point, at, value);
        }
    }

    private void Improve(int strip, int point, double at, double value)
    {
        Accumulate(strip, at);
        if (value < lowest[strip])
            (second[strip], lowest[strip], owners[strip]) = (lowest[strip], value, point);
        else
            second[strip] = value;
    }

    private void Accumulate(int strip, double at)
    {
        contributions[owners[strip]] += (at - since[strip]) * widths[strip] * (second[strip] - lowest[strip]);
        since[strip] = at;
    }
}
