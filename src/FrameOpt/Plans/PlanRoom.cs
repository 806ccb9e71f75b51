namespace FrameOpt.Plans;

/// <summary>What an optimal plan may choose from.</summary>
/// <param name="Factors">The names.</param>
public sealed record PlanRoom(IReadOnlyList<string> Factors)
{
    /// <summary>Levels of a factor of which no others are known.</summary>
    public const int UsualLevels = 5;

    /// <summary>The coded levels of each factor that can be made; null when not known.</summary>
    public IReadOnlyList<IReadOnlyList<double>>? Levels { get; init; }

    /// <summary>Whether a run, coded, is allowed; null for every one.</summary>
    public Func<double[], bool>? Allowed { get; init; }

    /// <summary>Indices of the factors that are hard to change.</summary>
    public IReadOnlyList<int> HardToChange { get; init; } = [];

    /// <summary>Runs that were made already, coded.</summary>
    public IReadOnlyList<double[]> Made { get; init; } = [];
}
