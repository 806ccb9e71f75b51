using FrameOpt.Numerics;

namespace FrameOpt.Search.Evolution;

/// <summary>NSGA-III's choice: by rank, and within the last rank for the directions that have the fewest designs.</summary>
/// <remarks>Source: Deb and Jain 2014, algorithms 1, 3 and 4 (from memory).</remarks>
internal sealed class DirectedSelection(int objectives, int population, Pcg32 random) : ISelection
{
    private readonly RankedMembers ranked = new();
    private readonly ObjectiveFrame frame = new(objectives);
    private readonly Niches niches = new(Directions.Even(objectives, population), random);

    /// <inheritdoc/>
    public void Survive(Members members, int keep)
    {
        ranked.Rank(members);
        var whole = 0;
        var last = 0;
        while (last < ranked.Ranks && whole + ranked.Members(last).Length <= keep)
            whole += ranked.Members(last++).Length;
        if (last < ranked.Ranks && whole < keep && members.Miss[ranked.Members(last)[0]] == 0)
            ChooseFromLast(members, last, keep - whole);
        ranked.Keep(members, Math.Min(keep, members.Count));
    }

    /// <inheritdoc/>
    public int Parent(Members members)
    {
        var (a, b) = (random.Next(members.Count), random.Next(members.Count));
        return members.Miss[a] <= members.Miss[b] ? a : b;
    }

    private void ChooseFromLast(Members members, int last, int places)
    {
        frame.Update(members, ranked.Members(0));
        niches.Empty(members.Capacity);
        for (var r = 0; r < last; r++)
            niches.Fill(members, ranked.Members(r), frame);
        niches.Choose(members, ranked.Members(last), places, frame);
    }
}
