using System.Buffers;

namespace FrameOpt.Search;

/// <summary>Points in lexicographic order of their objectives, each objective replaced by its rank (equal values, equal rank).</summary>
/// <remarks>The arrays come from the shared pool: a search ranks several times, and fresh memory costs more than the ranking.</remarks>
internal sealed class RankedPoints : IDisposable
{
    private readonly int _count;
    private readonly int[][] _ranks;
    private readonly int[] _order;
    private readonly int[] _groupStarts;
    private readonly RankRow[] _rows;
    private readonly int _groups;

    public RankedPoints(double[][] columns, int count, int threads)
    {
        _count = count;
        _ranks = new int[columns.Length][];
        _order = ArrayPool<int>.Shared.Rent(count);
        _groupStarts = ArrayPool<int>.Shared.Rent(count + 1);
        _rows = ArrayPool<RankRow>.Shared.Rent(count);
        Parallel.For(0, columns.Length, new ParallelOptions { MaxDegreeOfParallelism = threads }, j => Rank(columns[j], j));
        OrderEqualFirsts();
        _groups = FindDistinct();
    }

    /// <summary>One row for each distinct point, in lexicographic order.</summary>
    public Memory<RankRow> Rows => _rows.AsMemory(0, _groups);

    /// <summary>Writes the positions of all points that the given rows stand for, ascending, and gives their number.</summary>
    public int PositionsOf(ReadOnlySpan<RankRow> rows, Span<int> positions)
    {
        Span<bool> wanted = new bool[_count];
        foreach (ref readonly var row in rows)
            for (var i = _groupStarts[row.Group]; i < _groupStarts[row.Group + 1]; i++)
                wanted[_order[i]] = true;
        var found = 0;
        for (var i = 0; i < wanted.Length; i++)
            if (wanted[i])
                positions[found++] = i;
        return found;
    }

    public void Dispose()
    {
        foreach (var ranks in _ranks)
            ArrayPool<int>.Shared.Return(ranks);
        ArrayPool<int>.Shared.Return(_order);
        ArrayPool<int>.Shared.Return(_groupStarts);
        ArrayPool<RankRow>.Shared.Return(_rows);
    }

    private void Rank(double[] column, int j)
    {
        var keyRoom = ArrayPool<ulong>.Shared.Rent(_count);
        var orderRoom = j == 0 ? _order : ArrayPool<int>.Shared.Rent(_count);
        _ranks[j] = ArrayPool<int>.Shared.Rent(_count);
        var keys = keyRoom.AsSpan(0, _count);
        var order = orderRoom.AsSpan(0, _count);
        for (var i = 0; i < keys.Length; i++)
        {
            keys[i] = RadixSort.KeyOf(column[i]);
            order[i] = i;
        }
        RadixSort.Sort(keys, order);
        var ranks = _ranks[j];
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
        var first = _ranks[0];
        for (int start = 0, end; start < _count; start = end)
        {
            end = start + 1;
            while (end < _count && first[_order[end]] == first[_order[start]])
                end++;
            if (end - start > 1)
                _order.AsSpan(start, end - start).Sort(CompareRanks);
        }
    }

    private int CompareRanks(int a, int b)
    {
        foreach (var ranks in _ranks)
            if (ranks[a] != ranks[b])
                return ranks[a].CompareTo(ranks[b]);
        return 0;
    }

    private int FindDistinct()
    {
        var groups = 0;
        for (var i = 0; i < _count; i++)
        {
            if (i > 0 && CompareRanks(_order[i - 1], _order[i]) == 0)
                continue;
            ref var row = ref _rows[groups];
            row.Group = groups;
            for (var j = 1; j < _ranks.Length; j++)
                row.Ranks[j - 1] = _ranks[j][_order[i]];
            _groupStarts[groups++] = i;
        }
        _groupStarts[groups] = _count;
        return groups;
    }
}
