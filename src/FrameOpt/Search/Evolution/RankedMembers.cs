using FrameOpt.Search.Fronts;

namespace FrameOpt.Search.Evolution;

/// <summary>
/// The members in ranks by constrained domination: the fronts of the usable designs first, then designs outside their limits by how much
/// they miss them, then those that failed.
/// </summary>
/// <remarks>Source: Deb et al. 2002, section VI (from memory).</remarks>
internal sealed class RankedMembers
{
    private readonly NonDominatedSort sort = new();
    private readonly List<int> starts = [];
    private int[] order = [];
    private int[] rankOf = [];
    private int[] usable = [];
    private int[] usableRanks = [];
    private double[] room = [];

    /// <summary>How many ranks.</summary>
    public int Ranks => starts.Count - 1;

    /// <summary>The members of a rank.</summary>
    public Span<int> Members(int rank) => order.AsSpan(starts[rank], starts[rank + 1] - starts[rank]);

    /// <summary>The rank of a member.</summary>
    public int RankOf(int member) => rankOf[member];

    /// <summary>Ranks the members as they are.</summary>
    public void Rank(Members members)
    {
        Reserve(members);
        var usableCount = 0;
        var others = members.Count;
        for (var i = 0; i < members.Count; i++)
        {
            if (members.Miss[i] == 0)
                usable[usableCount++] = i;
            else
                order[--others] = i;
        }

        starts.Clear();
        starts.Add(0);
        RankUsable(members, usableCount);
        RankOthers(members, usableCount);
        for (var r = 0; r < Ranks; r++)
        {
            foreach (var member in Members(r))
                rankOf[member] = r;
        }
    }

    /// <summary>Leaves the first <paramref name="count"/> of the ranked members in the order they stood in, and gives the places they had.</summary>
    public ReadOnlySpan<int> Keep(Members members, int count)
    {
        var kept = order.AsSpan(0, count);
        kept.Sort();
        for (var i = 0; i < count; i++)
        {
            members.Copy(kept[i], i);
            rankOf[i] = rankOf[kept[i]];
        }

        members.Count = count;
        return kept;
    }

    private void RankUsable(Members members, int count)
    {
        var values = members.Values.AsSpan(0, count * members.Objectives);
        if (count < members.Count)
        {
            values = room.AsSpan(0, values.Length);
            for (var i = 0; i < count; i++)
                members.ValuesOf(usable[i]).CopyTo(values[(i * members.Objectives)..]);
        }

        var ranks = usableRanks.AsSpan(0, count);
        var fronts = sort.Rank(values, members.Objectives, ranks);

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
            order[next[ranks[i]]++] = usable[i];
    }

    private void RankOthers(Members members, int first)
    {
        var others = order.AsSpan(first, members.Count - first);
        var misses = room.AsSpan(0, others.Length);
        for (var i = 0; i < others.Length; i++)
            misses[i] = members.Miss[others[i]];
        misses.Sort(others);
        for (var i = 1; i <= others.Length; i++)
        {
            if (i == others.Length || misses[i] != misses[i - 1])
                starts.Add(first + i);
        }
    }

    private void Reserve(Members members)
    {
        if (order.Length == members.Capacity)
            return;
        order = new int[members.Capacity];
        rankOf = new int[members.Capacity];
        usable = new int[members.Capacity];
        usableRanks = new int[members.Capacity];
        room = new double[members.Values.Length];
    }
}
