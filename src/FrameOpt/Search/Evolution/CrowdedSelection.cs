using FrameOpt.Numerics;

namespace FrameOpt.Search.Evolution;

/// <summary>NSGA-II's choice: by rank, and within a rank by the room about a design.</summary>
/// <remarks>Source: Deb et al. 2002, section III (from memory).</remarks>
internal sealed class CrowdedSelection(Pcg32 random) : ISelection
{
    private readonly RankedMembers ranked = new();
    private double[] distances = [];
    private double[] room = [];

    /// <inheritdoc/>
    public void Survive(Members members, int keep)
    {
        if (room.Length < members.Capacity)
            (room, distances) = (new double[members.Capacity], new double[members.Capacity]);
        ranked.Rank(members);
        var chosen = 0;
        for (var r = 0; r < ranked.Ranks && chosen < keep; r++)
        {
            var front = ranked.Members(r);
            if (members.Miss[front[0]] == 0)
                Crowding.Distances(members.Values, members.Objectives, front, room, distances);
            else
                ClearDistances(front);
            if (chosen + front.Length > keep)
                LonelyFirst(front);
            chosen += Math.Min(front.Length, keep - chosen);
        }

        var kept = ranked.Keep(members, chosen);
        for (var i = 0; i < kept.Length; i++)
            distances[i] = distances[kept[i]];
    }

    /// <inheritdoc/>
    public int Parent(Members members)
    {
        var (a, b) = (random.Next(members.Count), random.Next(members.Count));
        var (rankA, rankB) = (ranked.RankOf(a), ranked.RankOf(b));
        if (rankA != rankB)
            return rankA < rankB ? a : b;
        return distances[a] >= distances[b] ? a : b;
    }

    /// <summary>Designs outside their limits and failed ones are not told apart by their objectives.</summary>
    private void ClearDistances(ReadOnlySpan<int> members)
    {
        foreach (var member in members)
            distances[member] = 0;
    }

    private void LonelyFirst(Span<int> front)
    {
        for (var i = 0; i < front.Length; i++)
            room[i] = -distances[front[i]];
        room.AsSpan(0, front.Length).Sort(front);
    }
}
