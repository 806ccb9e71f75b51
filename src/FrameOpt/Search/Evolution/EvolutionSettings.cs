namespace FrameOpt.Search.Evolution;

/// <summary>What an evolutionary search is told.</summary>
/// <param name="PopulationSize">How many designs live at a time, 2 or more.</param>
/// <param name="Seed">Where its random numbers start: the same seed gives the same designs.</param>
public sealed record EvolutionSettings(int PopulationSize, ulong Seed)
{
    /// <summary>Designs to begin with, each with a value for every factor in the problem's order. A value is moved to the nearest the
    /// factor allows.</summary>
    public IReadOnlyList<double[]> Start { get; init; } = [];

    /// <summary>The share of pairs of parents whose values are mixed, 0 to 1.</summary>
    /// <remarks>Source: Deb, Pratap, Agarwal and Meyarivan 2002, A fast and elitist multiobjective genetic algorithm: NSGA-II, IEEE Trans.
    /// Evol. Comput. 6:182-197,
    /// section IV (from memory).</remarks>
    public double CrossoverRate { get; init; } = 0.9;

    /// <summary>How near children stay to their parents when values are mixed; larger is nearer.</summary>
    /// <remarks>Source: 20 in Deb et al. 2002, section IV (from memory).</remarks>
    public double CrossoverIndex { get; init; } = 20;

    /// <summary>The chance of each value of a child to be changed, above 0 to 1; null for one over the number of factors.</summary>
    /// <remarks>Source: Deb et al. 2002, section IV (from memory).</remarks>
    public double? MutationRate { get; init; }

    /// <summary>How small such changes are; larger is smaller.</summary>
    /// <remarks>Source: 20 in Deb et al. 2002, section IV (from memory).</remarks>
    public double MutationIndex { get; init; } = 20;

    /// <summary>Refuses settings out of their ranges.</summary>
    /// <exception cref="ArgumentOutOfRangeException">One is.</exception>
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
