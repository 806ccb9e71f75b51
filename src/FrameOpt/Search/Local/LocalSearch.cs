namespace FrameOpt.Search.Local;

/// <summary>Improves designs one factor at a time, and where that stalls in several continuous factors together, with decreasing steps:
/// along a limit that is met exactly no single factor can move. Accepts any factors, two or more objectives and any
/// constraints.</summary>
/// <remarks>Source: coordinate search, R. Hooke and T. A. Jeeves 1961, "Direct search" solution of numerical and statistical problems, J.
/// ACM 8:212-229 (without its pattern moves); random orthogonal directions where it stalls, C. Audet and J. E. Dennis 2006, Mesh adaptive
/// direct search algorithms for constrained optimization, SIAM J. Optim. 17:188-217; on the function of
/// <see cref="AchievementFunction"/>; all from memory. The designs come first, then the trials; none is evaluated twice. It ends when no
/// step improves any design.</remarks>
public sealed class LocalSearch : ISearch
{
    private readonly LocalSearchSettings settings;

    /// <summary>Initialises a new instance for a problem.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A setting is out of its range.</exception>
    public LocalSearch(LocalSearchSettings settings)
    {
        settings.Check();
        this.settings = settings;
    }

    /// <inheritdoc/>
    public IEnumerable<EvaluatedBatch> Run(Problem problem, int threads) => new CoordinateSearch(problem, threads, settings).Run();
}

/// <summary>Settings of a local search.</summary>
/// <param name="Designs">Designs to improve, each with a value for every factor in the problem's order. A value is moved to the nearest the
/// factor allows.</param>
public sealed record LocalSearchSettings(IReadOnlyList<double[]> Designs)
{
    /// <summary>The designs' objectives, smaller is better, where they are feasible and known; null to evaluate them first.</summary>
    public IReadOnlyList<double[]>? Objectives { get; init; }

    /// <summary>Designs evaluated before, none of which is evaluated again.</summary>
    public IReadOnlyList<double[]> Seen { get; init; } = [];

    /// <summary>The first step of a continuous factor, as a share of its range.</summary>
    public double FirstStep { get; init; } = 0.05;

    /// <summary>Steps are halved until they are below this share of the range.</summary>
    public double LastStep { get; init; } = 0.0005;

    /// <summary>Checks the ranges of the settings.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A setting is out of its range.</exception>
    internal void Check()
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(LastStep);
        ArgumentOutOfRangeException.ThrowIfLessThan(FirstStep, LastStep);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(FirstStep, 1);
    }
}
