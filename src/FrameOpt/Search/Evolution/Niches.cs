using FrameOpt.Numerics;

namespace FrameOpt.Search.Evolution;

/// <summary>Directions and how many designs each has for its own: those to which no other direction is nearer.</summary>
/// <remarks>Source: Deb and Jain 2014, algorithms 3 and 4 (from memory).</remarks>
internal sealed class Niches(double[][] directions, Pcg32 random)
{
    private readonly double[] parts = [.. directions.SelectMany(direction => Unit(direction))];
    private readonly double[] point = new double[directions[0].Length];
    private readonly int[] crowd = new int[directions.Length];
    private readonly int[] first = new int[directions.Length];
    private readonly int[] left = new int[directions.Length];
    private int[] niche = [];
    private int[] grouped = [];
    private double[] distance = [];

    /// <summary>Begins anew, for members up to a number.</summary>
    public void Empty(int members)
    {
        Array.Clear(crowd);
        if (niche.Length < members)
            (niche, grouped, distance) = (new int[members], new int[members], new double[members]);
    }

    /// <summary>Counts designs to their directions.</summary>
    public void Fill(Members members, ReadOnlySpan<int> designs, ObjectiveFrame frame)
    {
        foreach (var design in designs)
        {
            Associate(members, design, frame);
            crowd[niche[design]]++;
        }
    }

    /// <summary>Moves those candidates to the front that fill the emptiest directions.</summary>
    public void Choose(Members members, Span<int> candidates, int places, ObjectiveFrame frame)
    {
        Group(members, candidates, frame);
        for (var place = 0; place < places; place++)
        {
            var direction = EmptiestWithCandidates();
            candidates[place] = Take(direction);
            crowd[direction]++;
        }

        var rest = places;
        for (var d = 0; d < left.Length; d++)
        {
            grouped.AsSpan(first[d], left[d]).CopyTo(candidates[rest..]);
            rest += left[d];
        }
    }

    /// <summary>Puts candidates of one direction next to each other.</summary>
    private void Group(Members members, ReadOnlySpan<int> candidates, ObjectiveFrame frame)
    {
        Array.Clear(left);
        foreach (var candidate in candidates)
        {
            Associate(members, candidate, frame);
            left[niche[candidate]]++;
        }

        for (var d = 1; d < left.Length; d++)
            first[d] = first[d - 1] + left[d - 1];
        Array.Clear(left);
        foreach (var candidate in candidates)
        {
            var d = niche[candidate];
            grouped[first[d] + left[d]++] = candidate;
        }
    }

    /// <summary>Any of the directions with the fewest designs among those that have candidates.</summary>
    private int EmptiestWithCandidates()
    {
        var fewest = int.MaxValue;
        var ties = 0;
        for (var d = 0; d < crowd.Length; d++)
        {
            if (left[d] == 0 || crowd[d] > fewest)
                continue;
            ties = crowd[d] == fewest ? ties + 1 : 1;
            fewest = crowd[d];
        }

        var pick = random.Next(ties);
        for (var d = 0; ; d++)
        {
            if (left[d] > 0 && crowd[d] == fewest && pick-- == 0)
                return d;
        }
    }

    /// <summary>The nearest candidate of a direction that has no design yet, else any.</summary>
    private int Take(int direction)
    {
        var group = grouped.AsSpan(first[direction], left[direction]);
        var pick = 0;
        if (crowd[direction] > 0)
            pick = random.Next(group.Length);
        else
        {
            for (var i = 1; i < group.Length; i++)
            {
                if (distance[group[i]] < distance[group[pick]])
                    pick = i;
            }
        }

        var taken = group[pick];
        group[pick] = group[^1];
        left[direction]--;
        return taken;
    }

    private void Associate(Members members, int member, ObjectiveFrame frame)
    {
        frame.Place(members.ValuesOf(member), point);
        var most = double.NegativeInfinity;
        var squares = 0.0;
        foreach (var value in point)
            squares += value * value;
        for (var d = 0; d < crowd.Length; d++)
        {
            var along = 0.0;
            for (var j = 0; j < point.Length; j++)
                along += parts[d * point.Length + j] * point[j];
            if (along > most)
                (most, niche[member]) = (along, d);
        }

        distance[member] = squares - most * most;
    }

    private static double[] Unit(double[] direction)
    {
        var length = Math.Sqrt(direction.Sum(part => part * part));
        return Array.ConvertAll(direction, part => part / length);
    }
}
