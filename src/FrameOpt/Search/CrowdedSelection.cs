using FrameOpt.Plans;

namespace FrameOpt.Search;

/// <summary>NSGA-II's choice: by rank, and within a rank by the room around a design.</summary>
/// <remarks>
/// Source: Deb et al. 2002, sections III and VI (from memory). Ranks follow constrained domination: the fronts of the usable designs first, then designs outside their
/// limits by how much they miss them, then those that failed.
/// </remarks>
internal sealed class CrowdedSelection(Pcg32 random) : ISelection
{
    private readonly RankedMembers ranked = new();
    private double[] room = [];

    /// <inheritdoc/>
    public void Survive(Members members, int keep)
    {
        if (room.Length < members.Miss.Length)
            room = new double[members.Miss.Length];
        ranked.Rank(members);
        var chosen = 0;
        for (var r = 0; r < ranked.Ranks && chosen < keep; r++)
        {
            var front = ranked.Members(r);
            Crowding.Fill(members.Objectives, front, room);
            if (chosen + front.Length > keep)
                MostRoomFirst(front);
            chosen += Math.Min(front.Length, keep - chosen);
        }

        var kept = ranked.Keep(members, chosen);
        for (var i = 0; i < kept.Length; i++)
            room[i] = room[kept[i]];
    }

    /// <inheritdoc/>
    public int Parent(Members members)
    {
        var (a, b) = (random.Next(members.Count), random.Next(members.Count));
        var (rankA, rankB) = (ranked.RankOf(a), ranked.RankOf(b));
        if (rankA != rankB)
            return rankA < rankB ? a : b;
        return room[a] >= room[b] ? a : b;
    }

    private void MostRoomFirst(Span<int> front)
    {
        Span<double> keys = new double[front.Length];
        for (var i = 0; i < front.Length; i++)
            keys[i] = -room[front[i]];
        keys.Sort(front);
    }
}
