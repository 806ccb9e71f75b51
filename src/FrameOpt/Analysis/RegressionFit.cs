using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>A model fitted to runs, with what says how good it is.</summary>
public sealed class RegressionFit
{
    private readonly OrthogonalColumns basis;

    internal RegressionFit(OrthogonalColumns basis) => this.basis = basis;

    /// <summary>The terms fitted.</summary>
    public required IReadOnlyList<ModelTerm> Terms { get; init; }

    /// <summary>Terms left out because the runs cannot tell them from earlier ones.</summary>
    public required IReadOnlyList<ModelTerm> Aliased { get; init; }

    /// <summary>One for each term.</summary>
    public required IReadOnlyList<Coefficient> Coefficients { get; init; }

    /// <summary>Sums of squares, contributions and, for measured runs, tests of each term but the constant.</summary>
    public required AnovaTable Anova { get; init; }

    /// <summary>The runs beside their fit.</summary>
    public required IReadOnlyList<FittedRun> Runs { get; init; }

    /// <summary>Of measured runs with repeats; null otherwise.</summary>
    public required LackOfFit? LackOfFit { get; init; }

    /// <summary>Whether the runs were computed: then <see cref="NoTestsBecause"/> says why tests are null.</summary>
    public bool IsDeterministic => Anova.Errors == ErrorKind.Deterministic;

    /// <summary>Why standard errors, F ratios, p-values and intervals are null; null when they are not.</summary>
    public string? NoTestsBecause => Anova.NoTestsBecause;

    /// <summary>Sum of squares of the errors of predicting each run without it (PRESS); null when a run decides its own fit.</summary>
    /// <remarks>Source: D. M. Allen 1974, The relationship between variable selection and data augmentation (from memory).</remarks>
    public double? PredictedSumOfSquares => Runs.All(run => run.LeftOutError is not null) ? Runs.Sum(run => run.LeftOutError * run.LeftOutError) : null;

    /// <summary>1 less that sum over the total, below 0 for a model worse than the mean; null when a run decides its own fit.</summary>
    public double? PredictedRSquared => Anova.TotalSumOfSquares > 0 ? 1 - (PredictedSumOfSquares / Anova.TotalSumOfSquares) : PredictedSumOfSquares is null ? null : 1;

    /// <summary>The coefficient of a term; 0 for one the model does not have.</summary>
    public double CoefficientOf(ModelTerm term) => Coefficients.FirstOrDefault(coefficient => coefficient.Term.Equals(term))?.Value ?? 0;

    /// <summary>The fitted response at a design, in the factors' units as fitted.</summary>
    public double Predict(IReadOnlyList<double> design)
    {
        var sum = 0.0;
        for (var j = 0; j < Coefficients.Count; j++)
            sum += Coefficients[j].Value * Terms[j].Value(design);
        return sum;
    }

    /// <summary>Where the mean response of a design lies; null where nothing can be tested.</summary>
    /// <param name="design">The factors, in the units of the fit.</param>
    /// <param name="confidence">Such as 0.95.</param>
    public Interval? ConfidenceInterval(IReadOnlyList<double> design, double confidence) => IntervalAt(design, confidence, 0);

    /// <summary>Where one further run of a design would lie; null where nothing can be tested.</summary>
    /// <param name="design">The factors, in the units of the fit.</param>
    /// <param name="confidence">Such as 0.95.</param>
    public Interval? PredictionInterval(IReadOnlyList<double> design, double confidence) => IntervalAt(design, confidence, 1);

    private Interval? IntervalAt(IReadOnlyList<double> design, double confidence, double ownVariance)
    {
        if (NoTestsBecause is not null)
            return null;
        var spread = basis.Spread([.. Terms.Select(term => term.Value(design))]);
        var half = Quantile.Student((1 + confidence) / 2, Anova.ResidualDegrees) * Anova.ResidualDeviation!.Value * Math.Sqrt(ownVariance + spread);
        var fitted = Predict(design);
        return new Interval(fitted - half, fitted + half);
    }
}
