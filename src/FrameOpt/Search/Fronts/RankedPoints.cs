using System.Buffers;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;
using FrameOpt.Numerics;

namespace FrameOpt.Search.Fronts;

/// <summary>Points in lexicographic order of their objectives, each objective replaced by its rank (equal values, equal rank).</summary>
/// <remarks>The arrays come from the shared pool: a search ranks several times, and fresh memory costs more than the ranking.</remarks>
internal sealed class RankedPoints : IDisposable
{
    private readonly int pointCount;
    private readonly int[][] rankOf;
    private readonly int[] lexicographic;
    private readonly int[] groupStarts;
    private readonly RankRow[] rowOf;
    private readonly int groupCount;

    public RankedPoints(double[][] columns, int count, int threads)
    {
        pointCount = count;
        rankOf = new int[columns.Length][];
        lexicographic = ArrayPool<int>.Shared.Rent(count);
        groupStarts = ArrayPool<int>.Shared.Rent(count + 1);
        rowOf = ArrayPool<RankRow>.Shared.Rent(count);
        Parallel.For(0, columns.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, j => Rank(columns[j], j));
        OrderEqualFirsts();
        groupCount = FindDistinct();
    }

    /// <summary>One row for each distinct point, in lexicographic order.</summary>
    public Memory<RankRow> Rows => rowOf.AsMemory(0, groupCount);

    /// <summary>Writes the positions of all points that the given rows stand for, ascending, and gives their number.</summary>
    public int PositionsOf(ReadOnlySpan<RankRow> rows, Span<int> positions)
    {
        Span<bool> wanted = new bool[pointCount];
        foreach (ref readonly var row in rows)
            for (var i = groupStarts[row.Group]; i < groupStarts[row.Group + 1]; i++)
                wanted[lexicographic[i]] = true;
        var found = 0;
        for (var i = 0; i < wanted.Length; i++)
            if (wanted[i])
                positions[found++] = i;
        return found;
    }

    public void Dispose()
    {
        foreach (var ranks in rankOf)
            ArrayPool<int>.Shared.Return(ranks);
        ArrayPool<int>.Shared.Return(lexicographic);
        ArrayPool<int>.Shared.Return(groupStarts);
        ArrayPool<RankRow>.Shared.Return(rowOf);
    }

    private void Rank(double[] column, int j)
    {
        var keyRoom = ArrayPool<ulong>.Shared.Rent(pointCount);
        var orderRoom = j == 0 ? lexicographic : ArrayPool<int>.Shared.Rent(pointCount);
        rankOf[j] = ArrayPool<int>.Shared.Rent(pointCount);
        var keys = keyRoom.AsSpan(0, pointCount);
        var order = orderRoom.AsSpan(0, pointCount);
        for (var i = 0; i < keys.Length; i++)
        {
            keys[i] = RadixSort.KeyOf(column[i]);
            order[i] = i;
        }
        RadixSort.Sort(keys, order);
        var ranks = rankOf[j];
        var rank = 0;
        for (var i = 0; i < keys.Length; i++)
        {
            if (i > 0 && keys[i] != keys[i - 1])
                rank++;
            ranks[order[i]] = rank;
        }
        ArrayPool<ulong>.Shared.Return(keyRoom);
        if (j > 0)
            ArrayPool<int>.Shared.Return(orderRoom);
    }

    private void OrderEqualFirsts()
    {
        var first = rankOf[0];
        for (int start = 0, end; start < pointCount; start = end)
        {
            end = start + 1;
            while (end < pointCount && first[lexicographic[end]] == first[lexicographic[start]])
                end++;
            if (end - start > 1)
                lexicographic.AsSpan(start, end - start).Sort(CompareRanks);
        }
    }

    private int CompareRanks(int a, int b)
    {
        foreach (var ranks in rankOf)
            if (ranks[a] != ranks[b])
                return ranks[a].CompareTo(ranks[b]);
        return 0;
    }

    private int FindDistinct()
    {
        var groups = 0;
        for (var i = 0; i < pointCount; i++)
        {
            if (i > 0 && CompareRanks(lexicographic[i - 1], lexicographic[i]) == 0)
                continue;
            ref var row = ref rowOf[groups];
            row.Group = groups;
            for (var j = 1; j < rankOf.Length; j++)
                row.Ranks[j - 1] = rankOf[j][lexicographic[i]];
            groupStarts[groups++] = i;
        }
        groupStarts[groups] = pointCount;
        return groups;
    }
}

/// <summary>A few rows turned into columns, so that one row is compared with many at once.</summary>
internal sealed class RankBlock
{
    public const int Capacity = 256;

    private readonly int[] rankColumns = new int[RankRow.RowRanks.Length * Capacity];

    public int Count { get; private set; }

    public void Clear() => Count = 0;

    public void Add(in RankRow row)
    {
        if (Count % Vector512<int>.Count == 0)
            for (var j = 0; j < RankRow.RowRanks.Length; j++)
                rankColumns.AsSpan(j * Capacity + Count, Vector512<int>.Count).Fill(int.MaxValue);
        for (var j = 0; j < RankRow.RowRanks.Length; j++)
            rankColumns[j * Capacity + Count] = row.Ranks[j];
        Count++;
    }

    /// <summary>Whether some row of the block is nowhere above <paramref name="row"/> from rank <paramref name="first"/> to the
    /// end.</summary>
    public bool WeaklyDominates(in RankRow row, int first, int end)
    {
        ref var columns = ref MemoryMarshal.GetArrayDataReference(rankColumns);
        var last = Vector512.Create(row.Ranks[end - 1]);
        for (var i = 0; i < Count; i += Vector512<int>.Count)
        {
            var below = Vector512.LessThanOrEqual(Vector512.LoadUnsafe(ref columns, (nuint)((end - 1) * Capacity + i)), last);
            for (var j = first; j < end - 1; j++)
                below &= Vector512.LessThanOrEqual(Vector512.LoadUnsafe(ref columns, (nuint)(j * Capacity + i)),
                    Vector512.Create(row.Ranks[j]));
            if (below != Vector512<int>.Zero)
                return true;
        }
        return false;
    }
}

/// <summary>A distinct point as the ranks of its second to last objectives; rows stand in order of the first.</summary>
internal struct RankRow
{
    public RowRanks Ranks;

    /// <summary>Index among the distinct points.</summary>
    public int Group;

    /// <summary>Up to four ranks, the second objective first.</summary>
    [InlineArray(Length)]
    internal struct RowRanks
    {
        public const int Length = 4;
        private int first;
    }
}
