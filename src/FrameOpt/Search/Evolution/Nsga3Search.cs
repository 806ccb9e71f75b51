using FrameOpt.Numerics;

namespace FrameOpt.Search.Evolution;

/// <summary>NSGA-III: designs of lower rank survive and, within the last rank, those nearest to evenly spread reference points with few
/// designs. Accepts any factors, two or more objectives, any constraints.</summary>
/// <remarks>Source: K. Deb and H. Jain 2014, An evolutionary many-objective optimization algorithm using reference-point-based nondominated
/// sorting approach, part I, IEEE Trans. Evol. Comput. 18:577-601 (from memory). No design is evaluated twice. It goes on until it is
/// stopped or every design was evaluated.</remarks>
public sealed class Nsga3Search : ISearch
{
    private readonly EvolutionSettings settings;

    /// <summary>Initialises a new instance for a problem.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A setting is out of its range.</exception>
    public Nsga3Search(EvolutionSettings settings)
    {
        settings.Check();
        this.settings = settings;
    }

    /// <inheritdoc/>
    public IEnumerable<EvaluatedBatch> Run(Problem problem, int threads) =>
        new EvolutionLoop(problem, threads, settings, random => new ReferencePointSelection(
            problem.Objectives.Count, settings.PopulationSize, random)).Run();
}

/// <summary>NSGA-III selection: by rank, and within the last rank for the reference points with the fewest designs.</summary>
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

/// <summary>Evenly spread reference points on the unit simplex of the objectives.</summary>
/// <remarks>Source: I. Das and J. E. Dennis 1998, Normal-boundary intersection, SIAM J. Optim. 8:631-657 (from memory); two layers as in
/// Deb and Jain 2014, section IV.</remarks>
internal static class ReferencePoints
{
    /// <summary>As many as the population has members, at least one per objective. With fewer divisions than objectives no point would lie
    /// inside the simplex, so a second layer is added half way to its centre.</summary>
    public static double[][] DasDennis(int objectives, int most)
    {
        var steps = MaxSteps(objectives, most);
        if (steps >= objectives || objectives == 2)
            return Layer(objectives, steps, inwards: 0);
        var outer = Layer(objectives, MaxSteps(objectives, most * 2 / 3), inwards: 0);
        var inner = MaxSteps(objectives, most - outer.Length);
        return inner == 0 || outer.Length >= most ? outer : [.. outer, .. Layer(objectives, inner, inwards: 0.5)];
    }

    private static int MaxSteps(int objectives, int most)
    {
        var steps = 1;
        while (Count(objectives, steps + 1) <= most)
            steps++;
        return steps;
    }

    private static double Count(int objectives, int steps)
    {
        var count = 1.0;
        for (var i = 1; i < objectives; i++)
            count *= (double)(steps + i) / i;
        return Math.Round(count);
    }

    private static double[][] Layer(int objectives, int steps, double inwards) =>
        [.. Shares(objectives, steps).Select(shares => Array.ConvertAll(
            shares, share => (1 - inwards) * share / steps + inwards / objectives))];

    private static IEnumerable<int[]> Shares(int parts, int sum) => parts == 1
        ? [[sum]]
        : Enumerable.Range(0, sum + 1).SelectMany(first => Shares(parts - 1, sum - first).Select(rest => (int[])[first, .. rest]));
}
