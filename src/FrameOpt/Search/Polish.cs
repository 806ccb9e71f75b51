namespace FrameOpt.Search;

/// <summary>Improves designs one factor at a time, with ever smaller steps. Accepts any factors, of which those without order stay as they are; two or more objectives; any limits.</summary>
/// <remarks>
/// Source: coordinate search, R. Hooke and T. A. Jeeves 1961, "Direct search" solution of numerical and statistical problems, J. ACM 8:212-229 (without its pattern
/// moves), of the measure in <see cref="Achievement"/>; both from memory. The designs come first, then the trials; none is evaluated twice. It ends when no step
/// improves any design.
/// </remarks>
public sealed class Polish : ISearch
{
    private readonly PolishSettings settings;

    /// <summary>A polish not yet begun.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A setting is out of its range.</exception>
    public Polish(PolishSettings settings)
    {
        settings.Check();
        this.settings = settings;
    }

    /// <inheritdoc/>
    public IEnumerable<EvaluatedBatch> Run(Problem problem, int threads) => new CoordinateSteps(problem, threads, settings).Run();
}
