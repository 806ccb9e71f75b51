namespace FrameOpt.Search.Evolution;

/// <summary>NSGA-III: designs that fewer others dominate survive and, among equals, those nearest to directions spread evenly over the
/// objectives. Accepts any factors, two or more objectives, any limits.</summary>
/// <remarks>
/// Source: K. Deb and H. Jain 2014, An evolutionary many-objective optimization algorithm using reference-point-based nondominated sorting
/// approach, part I,
/// IEEE Trans. Evol. Comput. 18:577-601 (from memory). No design is evaluated twice. It goes on until it is stopped or every design was
/// evaluated.
/// </remarks>
public sealed class Nsga3Search : ISearch
{
    private readonly EvolutionSettings settings;

    /// <summary>A search not yet begun.</summary>
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
