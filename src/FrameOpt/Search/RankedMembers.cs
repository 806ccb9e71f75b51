namespace FrameOpt.Search;

/// <summary>
/// The members in ranks by constrained domination: the fronts of the usable designs first, then designs outside their limits by how much
/// they miss them, then those that failed.
/// </summary>
/// <remarks>Source: Deb et al. 2002, section VI (from memory).</remarks>
internal sealed class RankedMembers
{
    private readonly List<int> starts = [];
    private int[] order = [];
    private int[] rankOf = [];

    /// <summary>How many ranks.</summary>
    public int Ranks => starts.Count - 1;

    /// <summary>Ranks the members as they are.</summary>
    public void Rank(Members members)
    {
        if (order.Length < members.Miss.Length)
            (order, rankOf) = (new int[members.Miss.Length], new int[members.Miss.Length]);
        var usable = 0;
        var others = members.Count;
        for (var i = members.Count - 1; i >= 0; i--)
        {
            if (members.Miss[i] > 0)
                order[--others] = i;
        }

        for (var i = 0; i < members.Count; i++)
        {
            if (members.Miss[i] == 0)
                order[usable++] = i;
        }

        starts.Clear();
        starts.Add(0);
        RankUsable(members, usable);
        RankOthers(members, usable);
        for (var r = 0; r < Ranks; r++)
        {
            foreach (var member in Members(r))
                rankOf[member] = r;
        }
    }

    /// <summary>The members of a rank.</summary>
    public Span<int> Members(int rank) => order.AsSpan(starts[rank], starts[rank + 1] - starts[rank]);

    /// <summary>The rank of a member.</summary>
    public int RankOf(int member) => rankOf[member];

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

    // TEMPORARY until the fast sort is there.
    private void RankUsable(Members members, int usable)
    {
        var done = 0;
        while (done < usable)
        {
            var rest = order[done..usable];
            var isFront = Array.ConvertAll(rest, i => !Array.Exists(rest, o => Dominates(members, o, i)));
            foreach (var pick in new[] { true, false })
            {
                var at = pick ? done : starts[^1];
                for (var i = 0; i < rest.Length; i++)
                {
                    if (isFront[i] == pick)
                        order[at++] = rest[i];
                }

                if (pick)
                    starts.Add(at);
            }

            done = starts[^1];
        }
    }

    private static bool Dominates(Members members, int a, int b)
    {
        var lower = false;
        foreach (var column in members.Objectives)
        {
            if (column[a] > column[b])
                return false;
            lower |= column[a] < column[b];
        }

        return lower;
    }

    private void RankOthers(Members members, int usable)
    {
        var others = order.AsSpan(usable, members.Count - usable);
        Span<double> misses = new double[others.Length];
        for (var i = 0; i < others.Length; i++)
            misses[i] = members.Miss[others[i]];
        misses.Sort(others);
        for (var i = 1; i <= others.Length; i++)
        {
            if (i == others.Length || misses[i] != misses[i - 1])
                starts.Add(usable + i);
        }
    }
}
