using System.Runtime.Intrinsics;
using FrameOpt.Numerics;
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

    /// <summary>The errors of runs in whole plots; null where every run was set up by itself. With them, sums of squares and residuals are
    /// those of runs from which a part of the mean of their whole plot was taken.</summary>
    public WholePlotErrors? WholePlots { get; init; }

    /// <summary>Whether the runs were computed: then <see cref="NoTestsReason"/> says why tests are null.</summary>
    public bool IsDeterministic => Anova.Errors == ErrorKind.Deterministic;

    /// <summary>Why standard errors, F ratios, p-values and intervals are null; null when they are not.</summary>
    public string? NoTestsReason => Anova.NoTestsReason;

    /// <summary>Sum of squares of the errors of predicting each run without it (PRESS); null when a run decides its own fit.</summary>
    /// <remarks>Source: D. M. Allen 1974, The relationship between variable selection and data augmentation (from memory).</remarks>
    public double? Press => Runs.All(run => run.PressResidual is not null) ? Runs.Sum(run => run.PressResidual * run.PressResidual) : null;

    /// <summary>1 less that sum over the total, below 0 for a model worse than the mean; null when a run decides its own fit.</summary>
    public double? PredictedRSquared => Anova.TotalSumOfSquares > 0 ? 1 - (Press / Anova.TotalSumOfSquares) : Press is null ? null : 1;

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

    /// <summary>The fitted responses at many designs.</summary>
    /// <param name="columns">For each factor its value in every design, in the units of the fit.</param>
    /// <param name="result">As many values as each column has.</param>
    public void PredictAll(double[][] columns, double[] result)
    {
        (double Coefficient, int[] Factors)[] terms = [.. Terms.Select((term, j) => (Coefficients[j].Value, term.Multiplied))];
        var i = 0;
        for (; i + Vector512<double>.Count <= result.Length; i += Vector512<double>.Count)
        {
            var sum = Vector512<double>.Zero;
            foreach (var (coefficient, factors) in terms)
            {
                var value = Vector512<double>.One;
                foreach (var f in factors)
                    value *= Vector512.Create(columns[f], i);
                sum += coefficient * value;
            }

            sum.CopyTo(result, i);
        }

        for (; i < result.Length; i++)
            result[i] = Predict(Array.ConvertAll(columns, column => column[i]));
    }

    /// <summary>Where the mean response of a design lies; null where nothing can be tested.</summary>
    /// <param name="design">The factors, in the units of the fit.</param>
    /// <param name="confidence">Such as 0.95.</param>
    public Interval? ConfidenceInterval(IReadOnlyList<double> design, double confidence) => IntervalAt(design, confidence, 0);

    /// <summary>Where one further run of a design, in a whole plot of its own, would lie; null where nothing can be tested.</summary>
    /// <param name="design">The factors, in the units of the fit.</param>
    /// <param name="confidence">Such as 0.95.</param>
    public Interval? PredictionInterval(IReadOnlyList<double> design, double confidence) => IntervalAt(design, confidence, 1);

    private Interval? IntervalAt(IReadOnlyList<double> design, double confidence, double ownVariance)
    {
        if (NoTestsReason is not null)
            return null;
        var spread = basis.VarianceFactor([.. Terms.Select(term => term.Value(design))]);
        var degrees = WholePlots?.PlotDegreesOfFreedom ?? Anova.ResidualDegreesOfFreedom;
        if (degrees == 0)
            return null;
        var own = ownVariance * (1 + Math.Max(0, WholePlots?.Ratio ?? 0));
        var half = Quantile.Student((1 + confidence) / 2, degrees) * Anova.ResidualDeviation!.Value * Math.Sqrt(own + spread);
        var fitted = Predict(design);
        return new Interval(fitted - half, fitted + half);
    }
}

/// <summary>One coefficient of a fitted model, in the response's unit over the term's.</summary>
/// <param name="Term">What it multiplies.</param>
/// <param name="Value">The estimate.</param>
/// <param name="StandardError">Of the estimate; null where nothing can be tested.</param>
/// <param name="T">Value over standard error, infinite for an exact fit; null where nothing can be tested.</param>
/// <param name="P">Probability of a larger |t| by chance alone; null where nothing can be tested.</param>
/// <param name="VarianceInflation">How many times the other terms raise its variance: 1 for an orthogonal plan; null for the
/// constant and for runs in whole plots.</param>
/// <param name="ErrorDegreesOfFreedom">Degrees of freedom of the error it is judged by; 0 where nothing can be tested.</param>
public sealed record Coefficient(ModelTerm Term, double Value, double? StandardError, double? T, double? P, double? VarianceInflation,
    int ErrorDegreesOfFreedom);

/// <summary>One run beside its fit. Values are in the response's unit.</summary>
/// <param name="Observed">The response of the run.</param>
/// <param name="Fitted">What the model gives there.</param>
/// <param name="Residual">Observed less fitted.</param>
/// <param name="Leverage">How far the run decides its own fit, 0 to 1.</param>
/// <param name="InternallyStudentised">Residual over its deviation, from all runs; null where the run decides its own fit, or for an exact
/// fit.</param>
/// <param name="ExternallyStudentised">The same with the deviation from the other runs; null also where those leave nothing to judge it
/// by.</param>
/// <param name="CookDistance">How far the whole fit moves without this run; null where <paramref name="InternallyStudentised"/> is.</param>
/// <param name="PressResidual">Observed less what the model gives when fitted without this run; null where the run decides its own
/// fit.</param>
public sealed record FittedRun(double Observed, double Fitted, double Residual, double Leverage,
    double? InternallyStudentised, double? ExternallyStudentised, double? CookDistance, double? PressResidual)
{
    /// <summary>A leverage closer to 1 than this is 1: the run alone decides its fit.</summary>
    private const double LeverageTolerance = 1e-10;

    /// <summary>A run with its diagnostics.</summary>
    /// <param name="observed">The response.</param>
    /// <param name="residual">Observed less fitted.</param>
    /// <param name="leverage">0 to 1.</param>
    /// <param name="residualSumOfSquares">Of all runs.</param>
    /// <param name="residualDegrees">Runs less terms.</param>
    /// <param name="terms">Of the model.</param>
    /// <remarks>Source: R. D. Cook 1977, Detection of influential observation in linear regression; R. D. Cook and S. Weisberg 1982 (from
    /// memory).</remarks>
    internal static FittedRun Of(double observed, double residual, double leverage, double residualSumOfSquares, int residualDegrees,
        int terms)
    {
        var free = 1 - leverage;
        if (free < LeverageTolerance)
            return new FittedRun(observed, observed - residual, residual, leverage, null, null, null, null);
        var leftOut = residual / free;
        if (residualSumOfSquares == 0)
            return new FittedRun(observed, observed - residual, residual, leverage, null, null, null, leftOut);
        var inside = residual / Math.Sqrt(residualSumOfSquares / residualDegrees * free);
        var cook = inside * inside / terms * leverage / free;

        // The others' deviation has one degree of freedom less, and none of this run's share.
        var othersSum = residualDegrees - (inside * inside);
        double? outside = residualDegrees > 1 && othersSum > 0 ? inside * Math.Sqrt((residualDegrees - 1) / othersSum) : null;
        return new FittedRun(observed, observed - residual, residual, leverage, inside, outside, cook, leftOut);
    }
}

/// <summary>From a lower to an upper value, in the response's unit.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public readonly record struct Interval(double Low, double High);
