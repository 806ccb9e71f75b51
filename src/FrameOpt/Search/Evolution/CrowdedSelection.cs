using FrameOpt.Numerics;

namespace FrameOpt.Search.Evolution;

/// <summary>NSGA-II's choice: by rank, and within a rank by the room about a design.</summary>
/// <remarks>Source: Deb et al. 2002, section III (from memory).</remarks>
internal sealed class CrowdedSelection(Pcg32 random) : ISelection
{
    private readonly RankedPopulation ranked = new();
    private double[] distances = [];
    private double[] workspace = [];

    /// <inheritdoc/>
    public void SelectSurvivors(Population population, int keep)
    {
        if (workspace.Length < population.Capacity)
            (workspace, distances) = (new double[population.Capacity], new double[population.Capacity]);
        ranked.Rank(population);
        var chosen = 0;
        for (var r = 0; r < ranked.Ranks && chosen < keep; r++)
        {
            var front = ranked.MembersOfRank(r);
            if (population.Violation[front[0]] == 0)
                Crowding.Distances(population.Values, population.Objectives, front, workspace, distances);
            else
                ClearDistances(front);
            if (chosen + front.Length > keep)
                LargestDistanceFirst(front);
            chosen += Math.Min(front.Length, keep - chosen);
        }

        var kept = ranked.Keep(population, chosen);
        for (var i = 0; i < kept.Length; i++)
            distances[i] = distances[kept[i]];
    }

    /// <inheritdoc/>
    public int SelectParent(Population population)
    {
        var (a, b) = (random.Next(population.Count), random.Next(population.Count));
        var (rankA, rankB) = (ranked.RankOf(a), ranked.RankOf(b));
        if (rankA != rankB)
            return rankA < rankB ? a : b;
        return distances[a] >= distances[b] ? a : b;
    }

    /// <summary>Designs outside their limits and failed ones are not told apart by their objectives.</summary>
    private void ClearDistances(ReadOnlySpan<int> population)
    {
        foreach (var member in population)
            distances[member] = 0;
    }

    private void LargestDistanceFirst(Span<int> front)
    {
        for (var i = 0; i < front.Length; i++)
            workspace[i] = -distances[front[i]];
        workspace.AsSpan(0, front.Length).Sort(front);
    }
}
