using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace FrameOpt.Search.Fronts;

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

    /// <summary>Which of the distinct points this is.</summary>
    public int Group;

    /// <summary>Up to four ranks, the second objective first.</summary>
    [InlineArray(Length)]
    internal struct RowRanks
    {
        public const int Length = 4;
        private int first;
    }
}
