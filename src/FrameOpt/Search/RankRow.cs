using System.Runtime.CompilerServices;

namespace FrameOpt.Search;

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
