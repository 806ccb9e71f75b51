using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>Prediction error of a fitted model for unseen runs: for deterministic runs, used instead of significance tests.</summary>
public static class CrossValidation
{
    /// <summary>Each run predicted from all others.</summary>
    /// <returns>Null when the model cannot be fitted without some run.</returns>
    /// <remarks>Source: M. Stone 1974, Cross-validatory choice; by leverages, residual/(1 - h), Allen 1974 (from memory).</remarks>
    public static CrossValidatedError? LeaveOneOut(RegressionFit fit) => fit.Press is null ? null
        : CrossValidatedError.Of([.. fit.Runs.Select(run => run.PressResidual!.Value)], [.. fit.Runs.Select(run => run.Observed)]);

    /// <summary>Runs dealt at random into folds, each fold predicted from the others.</summary>
    /// <param name="terms">Of the model.</param>
    /// <param name="x">The factors of each run.</param>
    /// <param name="y">The response of each run.</param>
    /// <param name="folds">2 to the number of runs.</param>
    /// <param name="seed">The same seed deals the same folds.</param>
    /// <returns>Null when the model cannot be fitted without some fold.</returns>
    public static CrossValidatedError? Folds(
        IReadOnlyList<ModelTerm> terms, IReadOnlyList<double[]> x, IReadOnlyList<double> y, int folds, int seed)
    {
        if (folds < 2 || folds > y.Count)
            throw new ArgumentOutOfRangeException(nameof(folds), folds, $"folds must be from 2 to the {y.Count} runs");
        int[] shuffled = [.. Enumerable.Range(0, y.Count)];
        new Random(seed).Shuffle(shuffled);
        var errors = new double[y.Count];
        for (var fold = 0; fold < folds; fold++)
        {
            int[] seen = [.. shuffled.Where((_, place) => place % folds != fold)];
            var columns = new OrthogonalColumns(terms.Select(term => seen.Select(run => term.Value(x[run])).ToArray()));
            if (columns.Kept.Count < terms.Count)
                return null;
            var coefficients = columns.Coefficients(columns.Project([.. seen.Select(run => y[run])]).Along);
            foreach (var run in shuffled.Where((_, place) => place % folds == fold))
                errors[run] = y[run] - coefficients.Select((value, j) => value * terms[j].Value(x[run])).Sum();
        }

        return CrossValidatedError.Of(errors, y);
    }
}

/// <summary>Errors of predicting runs that the fit did not see. In the response's unit.</summary>
/// <param name="RootMeanSquare">Root mean square error.</param>
/// <param name="Worst">Largest absolute error.</param>
/// <param name="RSquared">1 less the sum of squared errors over that about the mean: 1 for a perfect model, below 0 for one worse than the
/// mean.</param>
public sealed record CrossValidatedError(double RootMeanSquare, double Worst, double RSquared)
{
    internal static CrossValidatedError Of(IReadOnlyList<double> errors, IReadOnlyList<double> y)
    {
        var mean = y.Average();
        var sum = errors.Sum(error => error * error);
        var total = y.Sum(value => (value - mean) * (value - mean));
        return new CrossValidatedError(Math.Sqrt(sum / errors.Count), errors.Max(Math.Abs), total > 0 ? 1 - (sum / total) : 1);
    }
}
