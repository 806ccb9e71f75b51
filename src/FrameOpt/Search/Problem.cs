namespace FrameOpt.Search;

/// <summary>An optimisation problem: factors, objectives, constraints and a function that evaluates designs.</summary>
/// <param name="Factors">One or more.</param>
/// <param name="RowFactor">Index of the factor along which a row of designs is cheapest to evaluate.</param>
/// <param name="Objectives">Two to five.</param>
/// <param name="Constraints">Any number.</param>
/// <param name="Evaluate">Fills objectives, constraint values and failures of a batch; called by several threads at once, each with its own
/// batch.</param>
public sealed record Problem(
    IReadOnlyList<Factor> Factors,
    int RowFactor,
    IReadOnlyList<Objective> Objectives,
    IReadOnlyList<Constraint> Constraints,
    Action<EvaluatedBatch> Evaluate);

/// <summary>A design variable and the values it may take.</summary>
/// <param name="Name">As the study writes it.</param>
public abstract record Factor(string Name)
{
    /// <summary>All values the factor may take, or null when there are infinitely many.</summary>
    public abstract IReadOnlyList<double>? Values { get; }

    /// <summary>Ordered levels.</summary>
    /// <param name="Name">As the study writes it.</param>
    /// <param name="Levels">One or more, increasing.</param>
    public sealed record Discrete(string Name, IReadOnlyList<double> Levels) : Factor(Name)
    {
        /// <inheritdoc/>
        public override IReadOnlyList<double> Values => Levels;
    }

    /// <summary>Any value of an interval.</summary>
    /// <param name="Name">As the study writes it.</param>
    /// <param name="From">Smallest value allowed.</param>
    /// <param name="To">Largest value allowed, above <paramref name="From"/>.</param>
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
    /// <summary>A raw value oriented so that smaller is better; applied twice it gives the raw value back.</summary>
    public double Oriented(double value) => Maximise ? -value : value;
}

/// <summary>A constraint of a search.</summary>
/// <param name="Name">As the study writes it.</param>
/// <param name="AtLeast">Smallest value allowed; minus infinity for none.</param>
/// <param name="AtMost">Largest value allowed; infinity for none.</param>
public sealed record Constraint(string Name, double AtLeast, double AtMost)
{
    /// <summary>True when a value satisfies the constraint. NaN never does.</summary>
    public bool IsSatisfiedBy(double value) => value >= AtLeast && value <= AtMost;

    /// <summary>Violation relative to the violated bound (absolute where that bound is zero); 0 when satisfied.</summary>
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

/// <summary>A search algorithm: chooses which designs to evaluate.</summary>
public interface ISearch
{
    /// <summary>Evaluates designs batch by batch, lazily, in the same order for any number of threads.</summary>
    /// <param name="problem">What to search.</param>
    /// <param name="threads">Worker threads, at least 1.</param>
    IEnumerable<EvaluatedBatch> Run(Problem problem, int threads);
}
