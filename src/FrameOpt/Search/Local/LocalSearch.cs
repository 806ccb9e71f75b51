namespace FrameOpt.Search.Local;

/// <summary>Improves designs one factor at a time, with ever smaller steps. Accepts any factors, of which those without order stay as they
/// are; two or more objectives; any limits.</summary>
/// <remarks>
/// Source: coordinate search, R. Hooke and T. A. Jeeves 1961, "Direct search" solution of numerical and statistical problems, J. ACM
/// 8:212-229 (without its pattern
/// moves), of the measure in <see cref="AchievementFunction"/>; both from memory. The designs come first, then the trials; none is
/// evaluated twice. It ends when no step
/// improves any design.
/// </remarks>
public sealed class LocalSearch : ISearch
{
    private readonly LocalSearchSettings settings;

    /// <summary>A polish not yet begun.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A setting is out of its range.</exception>
    public LocalSearch(LocalSearchSettings settings)
    {
        settings.Check();
        this.settings = settings;
    }

    /// <inheritdoc/>
    public IEnumerable<EvaluatedBatch> Run(Problem problem, int threads) => new CoordinateSearch(problem, threads, settings).Run();
}

/// <summary>What a polish is told.</summary>
/// <param name="Designs">Designs to improve, each with a value for every factor in the problem's order. A value is moved to the nearest the
/// factor allows.</param>
public sealed record LocalSearchSettings(IReadOnlyList<double[]> Designs)
{
    /// <summary>The designs' objectives, less being better, where they are usable and known; null to evaluate them first.</summary>
    public IReadOnlyList<double[]>? Objectives { get; init; }

    /// <summary>Designs evaluated before, none of which is evaluated again.</summary>
    public IReadOnlyList<double[]> Seen { get; init; } = [];

    /// <summary>The first step of a continuous factor, as a share of its range.</summary>
    public double FirstStep { get; init; } = 0.05;

    /// <summary>Steps are halved until they are below this share of the range.</summary>
    public double LastStep { get; init; } = 0.0005;

    /// <summary>Refuses settings out of their ranges.</summary>
    /// <exception cref="ArgumentOutOfRangeException">One is.</exception>
    internal void Check()
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(LastStep);
        ArgumentOutOfRangeException.ThrowIfLessThan(FirstStep, LastStep);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(FirstStep, 1);
    }
}
