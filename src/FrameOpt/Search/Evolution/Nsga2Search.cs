namespace FrameOpt.Search.Evolution;

/// <summary>NSGA-II: designs that fewer others dominate survive and, among equals, those with more room around them. Accepts any factors,
/// two or more objectives, any limits.</summary>
/// <remarks>
/// Source: Deb, Pratap, Agarwal and Meyarivan 2002, A fast and elitist multiobjective genetic algorithm: NSGA-II, IEEE Trans. Evol. Comput.
/// 6:182-197 (from memory).
/// No design is evaluated twice. It goes on until it is stopped or every design was evaluated.
/// </remarks>
public sealed class Nsga2Search : ISearch
{
    private readonly EvolutionSettings settings;

    /// <summary>A search not yet begun.</summary>
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
