using FrameOpt.Search.Fronts;

namespace FrameOpt.Search.Evolution;

/// <summary>The members in ranks by constrained domination: the fronts of the feasible designs first, then infeasible designs by their
/// violation, then those that failed.</summary>
/// <remarks>Source: Deb et al. 2002, section VI (from memory).</remarks>
internal sealed class RankedPopulation
{
    private readonly NonDominatedSort sort = new();
    private readonly List<int> starts = [];
    private int[] order = [];
    private int[] rankOf = [];
    private int[] feasible = [];
    private int[] feasibleRanks = [];
    private double[] workspace = [];

    /// <summary>Number of ranks.</summary>
    public int Ranks => starts.Count - 1;

    /// <summary>The members of a rank.</summary>
    public Span<int> MembersOfRank(int rank) => order.AsSpan(starts[rank], starts[rank + 1] - starts[rank]);

    /// <summary>The rank of a member.</summary>
    public int RankOf(int member) => rankOf[member];

    /// <summary>Ranks the members as they are.</summary>
    public void Rank(Population population)
    {
        Reserve(population);
        var feasibleCount = 0;
        var others = population.Count;
        for (var i = 0; i < population.Count; i++)
        {
            if (population.Violation[i] == 0)
                feasible[feasibleCount++] = i;
            else
                order[--others] = i;
        }

        starts.Clear();
        starts.Add(0);
        RankFeasible(population, feasibleCount);
        RankOthers(population, feasibleCount);
        for (var r = 0; r < Ranks; r++)
        {
            foreach (var member in MembersOfRank(r))
                rankOf[member] = r;
        }
    }

    /// <summary>Leaves the first <paramref name="count"/> of the ranked members in their previous order, and gives their previous
    /// indices.</summary>
    public ReadOnlySpan<int> Keep(Population population, int count)
    {
        var kept = order.AsSpan(0, count);
        kept.Sort();
        for (var i = 0; i < count; i++)
        {
            population.Copy(kept[i], i);
            rankOf[i] = rankOf[kept[i]];
        }

        population.Count = count;
        return kept;
    }

    private void RankFeasible(Population population, int count)
    {
        var values = population.Values.AsSpan(0, count * population.Objectives);
        if (count < population.Count)
        {
            values = workspace.AsSpan(0, values.Length);
            for (var i = 0; i < count; i++)
                population.ValuesOf(feasible[i]).CopyTo(values[(i * population.Objectives)..]);
        }

        var ranks = feasibleRanks.AsSpan(0, count);
        var fronts = sort.Rank(values, population.Objectives, ranks);

        // One place for each front, moved on as members are put there.
        var next = new int[fronts + 1];
        foreach (var rank in ranks)
            next[rank + 1]++;
        for (var r = 1; r <= fronts; r++)
        {
            next[r] += next[r - 1];
            starts.Add(next[r]);
        }

        for (var i = 0; i < count; i++)
            order[next[ranks[i]]++] = feasible[i];
    }

    private void RankOthers(Population population, int first)
    {
        var others = order.AsSpan(first, population.Count - first);
        var misses = workspace.AsSpan(0, others.Length);
        for (var i = 0; i < others.Length; i++)
            misses[i] = population.Violation[others[i]];
        misses.Sort(others);
        for (var i = 1; i <= others.Length; i++)
        {
            if (i == others.Length || misses[i] != misses[i - 1])
                starts.Add(first + i);
        }
    }

    private void Reserve(Population population)
    {
        if (order.Length == population.Capacity)
            return;
        order = new int[population.Capacity];
        rankOf = new int[population.Capacity];
        feasible = new int[population.Capacity];
        feasibleRanks = new int[population.Capacity];
        workspace = new double[population.Values.Length];
    }
}
