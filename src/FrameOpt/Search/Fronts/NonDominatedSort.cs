using FrameOpt.Numerics;

namespace FrameOpt.Search.Fronts;

/// <summary>Sorts points into fronts, all objectives to be minimised: rank 0 is the front of all points, rank 1 the front of those without
/// rank 0, and so on. Equal points share a rank. Infinities are ordinary values.</summary>
/// <remarks>The points are taken in lexicographic order, so that nothing is dominated by what follows, and each finds its front by binary
/// search over the fronts so far. Source: Zhang, Tian, Cheng and Jin, An efficient approach to nondominated sorting for evolutionary
/// multiobjective optimization, IEEE Transactions on Evolutionary Computation 19 (2015) 201-213, from memory; dropping points covered by
/// later ones and comparing eight points at a time are our own additions. Worst case, with nearly all points on one front of five or six
/// objectives: the square of their number. An instance keeps its working memory, for searches that sort thousands of times; not to be used
/// from several threads at once.</remarks>
public sealed class NonDominatedSort
{
    private readonly FrontArchives covers = new();
    private ulong[] keys = [];
    private int[] order = [];

    /// <summary>The rank of every point.</summary>
    /// <param name="values">The points one after the other, each with all its objectives.</param>
    /// <param name="objectives">Number of objectives, 2 to 6.</param>
    /// <exception cref="ArgumentException">The length is no multiple of the number of objectives, or a value is not a number.</exception>
    public static int[] Ranks(ReadOnlySpan<double> values, int objectives)
    {
        var ranks = new int[PointArguments.Count(values, objectives)];
        new NonDominatedSort().Rank(values, objectives, ranks);
        return ranks;
    }

    /// <summary>Writes the rank of every point and gives the number of fronts, allocating nothing once it has seen as many
    /// points.</summary>
    /// <param name="values">The points one after the other, each with all its objectives.</param>
    /// <param name="objectives">Number of objectives, 2 to 6.</param>
    /// <param name="ranks">Room for as many ranks as there are points.</param>
    /// <exception cref="ArgumentException">The lengths do not agree, or a value is not a number.</exception>
    public int Rank(ReadOnlySpan<double> values, int objectives, Span<int> ranks)
    {
        var count = PointArguments.Count(values, objectives);
        if (ranks.Length != count)
            throw new ArgumentException($"expected room for {count} ranks", nameof(ranks));
        if (order.Length < count)
            (keys, order) = (new ulong[count], new int[count]);
        var ordered = order.AsSpan(0, count);
        for (var i = 0; i < count; i++)
            ordered[i] = i;
        OrderFrom(values, objectives, 0, ordered, keys.AsSpan(0, count));

        covers.Clear(objectives - 1);
        ReadOnlySpan<double> previous = [];
        var rank = 0;
        foreach (var i in ordered)
        {
            var point = values.Slice(i * objectives, objectives);
            if (!point.SequenceEqual(previous))
                covers.Add(rank = FindRank(point[1..]), point[1..]);
            ranks[i] = rank;
            previous = point;
        }
        return covers.Fronts;
    }

    /// <summary>A point dominated by one of a front is dominated by one of every front before it.</summary>
    private int FindRank(ReadOnlySpan<double> others)
    {
        var low = 0;
        var high = covers.Fronts;
        while (low < high)
        {
            var middle = (low + high) >>> 1;
            if (covers.WeaklyDominates(middle, others))
                low = middle + 1;
            else
                high = middle;
        }
        return low;
    }

    /// <summary>Brings indices of points that are equal before objective <paramref name="first"/> into lexicographic order from there
    /// on.</summary>
    private static void OrderFrom(ReadOnlySpan<double> values, int objectives, int first, Span<int> indices, Span<ulong> workspace)
    {
        for (var i = 0; i < indices.Length; i++)
            workspace[i] = RadixSort.KeyOf(values[indices[i] * objectives + first]);
        RadixSort.SortUnstable(workspace, indices);
        if (first == objectives - 1)
            return;
        for (int start = 0, end; start < indices.Length; start = end)
        {
            end = start + 1;
            while (end < indices.Length && workspace[end] == workspace[start])
                end++;
            if (end - start > 1)
                OrderFrom(values, objectives, first + 1, indices[start..end], workspace[start..end]);
        }
    }
}
