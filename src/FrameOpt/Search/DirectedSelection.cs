using FrameOpt.Plans;

namespace FrameOpt.Search;

/// <summary>NSGA-III's choice: by rank, and within the last rank for the directions that have the fewest designs.</summary>
/// <remarks>Source: Deb and Jain 2014, algorithms 1 to 4 (from memory); extreme points and ideal are kept from generation to generation.</remarks>
internal sealed class DirectedSelection : ISelection
{
    private readonly RankedMembers ranked = new();
    private readonly double[][] directions;
    private readonly double[] lengths;
    private readonly ObjectiveFrame frame;
    private readonly Pcg32 random;
    private readonly int[] crowd;
    private int[] niche = [];
    private double[] distance = [];

    public DirectedSelection(int objectives, int population, ulong seed)
    {
        directions = Directions.Even(objectives, population);
        lengths = Array.ConvertAll(directions, direction => direction.Sum(part => part * part));
        frame = new ObjectiveFrame(objectives);
        random = new Pcg32(seed, sequence: 3);
        crowd = new int[directions.Length];
    }

    /// <inheritdoc/>
    public void Survive(Members members, int keep)
    {
        if (niche.Length < members.Miss.Length)
            (niche, distance) = (new int[members.Miss.Length], new double[members.Miss.Length]);
        ranked.Rank(members);
        var whole = 0;
        var last = 0;
        while (last < ranked.Ranks && whole + ranked.Members(last).Length <= keep)
            whole += ranked.Members(last++).Length;
        if (last < ranked.Ranks && whole < keep && members.Miss[ranked.Members(last)[0]] == 0)
            FillNiches(members, last, keep - whole);
        ranked.Keep(members, Math.Min(keep, members.Count), distance);
    }

    /// <inheritdoc/>
    public int Parent(Members members, Pcg32 random)
    {
        var (a, b) = (random.Next(members.Count), random.Next(members.Count));
        if (members.Miss[a] != members.Miss[b])
            return members.Miss[a] < members.Miss[b] ? a : b;
        return a;
    }

    /// <summary>Puts those of the last rank that survive before the others.</summary>
    private void FillNiches(Members members, int last, int places)
    {
        frame.Update(members.Objectives, ranked.Members(0));
        Array.Clear(crowd);
        for (var r = 0; r <= last; r++)
        {
            foreach (var member in ranked.Members(r))
            {
                Associate(members, member);
                if (r < last)
                    crowd[niche[member]]++;
            }
        }

        var candidates = ranked.Members(last);
        for (var place = 0; place < places; place++)
        {
            var pick = Pick(candidates, place);
            crowd[niche[candidates[pick]]]++;
            (candidates[place], candidates[pick]) = (candidates[pick], candidates[place]);
        }
    }

    /// <summary>A candidate of the direction with the fewest designs, any of several such: the nearest if the direction has none yet, else any.</summary>
    private int Pick(ReadOnlySpan<int> candidates, int from)
    {
        var fewest = int.MaxValue;
        foreach (var candidate in candidates[from..])
            fewest = Math.Min(fewest, crowd[niche[candidate]]);
        var direction = AnyDirection(candidates[from..], fewest);
        var pick = -1;
        var met = 0;
        for (var i = from; i < candidates.Length; i++)
        {
            if (niche[candidates[i]] != direction)
                continue;
            met++;
            if (pick < 0 || (fewest == 0 ? distance[candidates[i]] < distance[candidates[pick]] : random.Next(met) == 0))
                pick = i;
        }

        return pick;
    }

    private int AnyDirection(ReadOnlySpan<int> candidates, int fewest)
    {
        var direction = -1;
        var met = 0;
        var seen = new HashSet<int>();
        foreach (var candidate in candidates)
        {
            if (crowd[niche[candidate]] == fewest && seen.Add(niche[candidate]) && random.Next(++met) == 0)
                direction = niche[candidate];
        }

        return direction;
    }

    private void Associate(Members members, int member)
    {
        Span<double> point = stackalloc double[members.Objectives.Length];
        frame.Place(members.Objectives, member, point);
        var squares = 0.0;
        foreach (var value in point)
            squares += value * value;
        distance[member] = double.PositiveInfinity;
        for (var d = 0; d < directions.Length; d++)
        {
            var along = 0.0;
            var direction = directions[d];
            for (var j = 0; j < point.Length; j++)
                along += direction[j] * point[j];
            var away = squares - along * along / lengths[d];
            if (away < distance[member])
                (distance[member], niche[member]) = (away, d);
        }
    }
}
