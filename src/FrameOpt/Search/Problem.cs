namespace FrameOpt.Search;

/// <summary>What a search works on: factors, goals, limits, and a function from designs to their evaluations.</summary>
/// <param name="Factors">One or more.</param>
/// <param name="RowFactor">Index of the factor along which a row of designs is cheapest to evaluate.</param>
/// <param name="Objectives">Two to five.</param>
/// <param name="Constraints">Any number.</param>
/// <param name="Evaluate">Fills objectives, bounded values and failures of a batch; called by several threads at once, each with its own
/// batch.</param>
public sealed record Problem(
    IReadOnlyList<Factor> Factors,
    int RowFactor,
    IReadOnlyList<Objective> Objectives,
    IReadOnlyList<Constraint> Constraints,
    Action<EvaluatedBatch> Evaluate);

/// <summary>Something a search may choose, and the values it may take.</summary>
/// <param name="Name">As the study writes it.</param>
public abstract record Factor(string Name)
{
    /// <summary>All values the factor may take, or null when there are infinitely many.</summary>
    public abstract IReadOnlyList<double>? Values { get; }

    /// <summary>Values in order: neighbours are alike.</summary>
    /// <param name="Name">As the study writes it.</param>
    /// <param name="Levels">One or more, increasing.</param>
    public sealed record Discrete(string Name, IReadOnlyList<double> Levels) : Factor(Name)
    {
        /// <inheritdoc/>
        public override IReadOnlyList<double> Values => Levels;
    }

    /// <summary>Any value of an interval.</summary>
    /// <param name="Name">As the study writes it.</param>
    /// <param name="From">The least value allowed.</param>
    /// <param name="To">The greatest value allowed, above <paramref name="From"/>.</param>
    public sealed record Continuous(string Name, double From, double To) : Factor(Name)
    {
        /// <inheritdoc/>
        public override IReadOnlyList<double>? Values => null;
    }
}

/// <summary>An objective of a search.</summary>
/// <param name="Name">As the study writes it.</param>
/// <param name="Maximise">True when more is better.</param>
public sealed record Objective(string Name, bool Maximise)
{
    /// <summary>A raw value turned so that less is better, and back.</summary>
    public double Oriented(double value) => Maximise ? -value : value;
}

/// <summary>A limit of a search.</summary>
/// <param name="Name">As the study writes it.</param>
/// <param name="AtLeast">Smallest value allowed; minus infinity for none.</param>
/// <param name="AtMost">Largest value allowed; infinity for none.</param>
public sealed record Constraint(string Name, double AtLeast, double AtMost)
{
    /// <summary>True when a value keeps the limit. NaN does not.</summary>
    public bool IsSatisfiedBy(double value) => value >= AtLeast && value <= AtMost;

    /// <summary>How far a value misses, as a share of the bound it misses (of one where that bound is zero); 0 when kept.</summary>
    public double Violation(double value)
    {
        if (double.IsNaN(value))
            return double.PositiveInfinity;
        if (value < AtLeast)
            return (AtLeast - value) / Scale(AtLeast);
        return value > AtMost ? (value - AtMost) / Scale(AtMost) : 0;
    }

    private static double Scale(double bound) => bound == 0 ? 1 : Math.Abs(bound);
}

/// <summary>A way of choosing which designs to evaluate.</summary>
public interface ISearch
{
    /// <summary>Evaluates designs batch by batch, lazily, in the same order for any number of threads.</summary>
    /// <param name="problem">What to search.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    IEnumerable<EvaluatedBatch> Run(Problem problem, int threads);
}
