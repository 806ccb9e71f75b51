using FrameOpt.Numerics;

namespace FrameOpt.Search.Evolution;

/// <summary>NSGA-III's choice: by rank, and within the last rank for the directions that have the fewest designs.</summary>
/// <remarks>Source: Deb and Jain 2014, algorithms 1, 3 and 4 (from memory).</remarks>
internal sealed class ReferencePointSelection(int objectives, int populationSize, Pcg32 random) : ISelection
{
    private readonly RankedPopulation ranked = new();
    private readonly ObjectiveNormalisation normalisation = new(objectives);
    private readonly Niching niching = new(ReferencePoints.DasDennis(objectives, populationSize), random);

    /// <inheritdoc/>
    public void SelectSurvivors(Population population, int keep)
    {
        ranked.Rank(population);
        var whole = 0;
        var last = 0;
        while (last < ranked.Ranks && whole + ranked.MembersOfRank(last).Length <= keep)
            whole += ranked.MembersOfRank(last++).Length;
        if (last < ranked.Ranks && whole < keep && population.Violation[ranked.MembersOfRank(last)[0]] == 0)
            ChooseFromLast(population, last, keep - whole);
        ranked.Keep(population, Math.Min(keep, population.Count));
    }

    /// <inheritdoc/>
    public int SelectParent(Population population)
    {
        var (a, b) = (random.Next(population.Count), random.Next(population.Count));
        return population.Violation[a] <= population.Violation[b] ? a : b;
    }

    private void ChooseFromLast(Population population, int last, int places)
    {
        normalisation.Update(population, ranked.MembersOfRank(0));
        niching.Clear(population.Capacity);
        for (var r = 0; r < last; r++)
            niching.Count(population, ranked.MembersOfRank(r), normalisation);
        niching.Choose(population, ranked.MembersOfRank(last), places, normalisation);
    }
}
