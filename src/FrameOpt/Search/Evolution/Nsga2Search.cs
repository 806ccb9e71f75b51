using FrameOpt.Numerics;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Search.Evolution;

/// <summary>NSGA-II: designs of lower rank survive and, within a rank, those with a larger crowding distance. Accepts any factors, two or
/// more objectives, any constraints.</summary>
/// <remarks>Source: Deb, Pratap, Agarwal and Meyarivan 2002, A fast and elitist multiobjective genetic algorithm: NSGA-II, IEEE Trans.
/// Evol. Comput. 6:182-197 (from memory). No design is evaluated twice. It goes on until it is stopped or every design was
/// evaluated.</remarks>
public sealed class Nsga2Search : ISearch
{
    private readonly EvolutionSettings settings;

    /// <summary>Initialises a new instance for a problem.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A setting is out of its range.</exception>
    public Nsga2Search(EvolutionSettings settings)
    {
        settings.Check();
        this.settings = settings;
    }

    /// <inheritdoc/>
    public IEnumerable<EvaluatedBatch> Run(Problem problem, int threads) =>
        new EvolutionLoop(problem, threads, settings, random => new CrowdedSelection(random)).Run();
}

/// <summary>NSGA-II selection: by rank, and within a rank by crowding distance.</summary>
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

    /// <summary>Infeasible and failed designs are not ranked by their objectives.</summary>
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

/// <summary>Crowding distance of the points of one front; larger in less crowded regions.</summary>
/// <remarks>Source: Deb, Pratap, Agarwal and Meyarivan, A fast and elitist multiobjective genetic algorithm: NSGA-II, IEEE Transactions on
/// Evolutionary Computation 6 (2002) 182-197, section III-B (from memory).</remarks>
public static class Crowding
{
    /// <summary>The crowding distance of every point; the points are one front.</summary>
    /// <param name="values">The points one after the other, each with all its objectives.</param>
    /// <param name="objectives">Number of objectives, 2 to 6.</param>
    /// <returns>At least 0, without unit; infinite for a point that is first or last in some objective.</returns>
    /// <exception cref="ArgumentException">The length is no multiple of the number of objectives, or a value is not a number.</exception>
    public static double[] Distances(ReadOnlySpan<double> values, int objectives)
    {
        var distances = new double[PointArguments.Count(values, objectives)];
        var front = new int[distances.Length];
        for (var i = 0; i < front.Length; i++)
            front[i] = i;
        Distances(values, objectives, front, new double[front.Length], distances);
        return distances;
    }

    /// <summary>Writes the crowding distance of every point of one front: the sum over objectives of the distance between the point's two
    /// neighbours, divided by the front's range; the first and the last in an objective are infinite. Ties in an objective are ordered the
    /// same way in every run. An objective without range is left out; two equal infinite neighbours have distance zero.</summary>
    /// <param name="values">All points one after the other, each with all its objectives; numbers.</param>
    /// <param name="objectives">Number of objectives.</param>
    /// <param name="front">Indices of the points of the front; reordered.</param>
    /// <param name="workspace">Workspace, as long as the front.</param>
    /// <param name="distances">Written at the indices of the front's points.</param>
    public static void Distances(ReadOnlySpan<double> values, int objectives, Span<int> front, Span<double> workspace,
        Span<double> distances)
    {
        foreach (var i in front)
            distances[i] = 0;
        for (var j = 0; j < objectives; j++)
        {
            for (var k = 0; k < front.Length; k++)
                workspace[k] = values[front[k] * objectives + j];
            workspace[..front.Length].Sort(front);
            AddGaps(workspace[..front.Length], front, distances);
        }
    }

    private static void AddGaps(ReadOnlySpan<double> sorted, ReadOnlySpan<int> front, Span<double> distances)
    {
        if (sorted.IsEmpty || sorted[0] == sorted[^1])
            return;
        var range = sorted[^1] - sorted[0];
        for (var k = 1; k < sorted.Length - 1; k++)
        {
            var gap = sorted[k + 1] == sorted[k - 1] ? 0 : sorted[k + 1] - sorted[k - 1];
            distances[front[k]] += double.IsFinite(gap) ? gap / range : gap;
        }
        distances[front[0]] = distances[front[^1]] = double.PositiveInfinity;
    }
}
