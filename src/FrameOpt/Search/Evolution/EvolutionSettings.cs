namespace FrameOpt.Search.Evolution;

/// <summary>Settings of an evolutionary search.</summary>
/// <param name="PopulationSize">Number of designs of a generation, at least 2.</param>
/// <param name="Seed">Seed of the random numbers; the same seed gives the same designs.</param>
public sealed record EvolutionSettings(int PopulationSize, ulong Seed)
{
    /// <summary>Designs to start with, each with a value for every factor in the problem's order. A value is moved to the nearest the
    /// factor allows.</summary>
    public IReadOnlyList<double[]> Start { get; init; } = [];

    /// <summary>Crossover probability, 0 to 1.</summary>
    /// <remarks>Source: Deb, Pratap, Agarwal and Meyarivan 2002, A fast and elitist multiobjective genetic algorithm: NSGA-II, IEEE Trans.
    /// Evol. Comput. 6:182-197, section IV (from memory).</remarks>
    public double CrossoverRate { get; init; } = 0.9;

    /// <summary>Distribution index of the crossover; larger values keep children closer to their parents.</summary>
    /// <remarks>Source: 20 in Deb et al. 2002, section IV (from memory).</remarks>
    public double CrossoverIndex { get; init; } = 20;

    /// <summary>Mutation probability of each gene, above 0 to 1; null for one over the number of factors.</summary>
    /// <remarks>Source: Deb et al. 2002, section IV (from memory).</remarks>
    public double? MutationRate { get; init; }

    /// <summary>Distribution index of the mutation; larger values give smaller changes.</summary>
    /// <remarks>Source: 20 in Deb et al. 2002, section IV (from memory).</remarks>
    public double MutationIndex { get; init; } = 20;

    /// <summary>Checks the ranges of the settings.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A setting is out of its range.</exception>
    internal void Check()
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(PopulationSize, 2);
        ArgumentOutOfRangeException.ThrowIfNegative(CrossoverRate);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(CrossoverRate, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(CrossoverIndex);
        ArgumentOutOfRangeException.ThrowIfNegative(MutationIndex);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(MutationRate ?? 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(MutationRate ?? 1, 1);
    }
}
