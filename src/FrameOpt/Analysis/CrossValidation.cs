namespace FrameOpt.Analysis;

/// <summary>Prediction error of a fitted model for unseen runs: for deterministic runs, used instead of significance tests.</summary>
public static class CrossValidation
{
    /// <summary>Each run predicted from all others.</summary>
    /// <returns>Null when the model cannot be fitted without some run.</returns>
    /// <remarks>Source: M. Stone 1974, Cross-validatory choice; by leverages, residual/(1 - h), Allen 1974 (from memory).</remarks>
    public static CrossValidatedError? LeaveOneOut(RegressionFit fit) => fit.Press is null ? null
        : CrossValidatedError.Of([.. fit.Runs.Select(run => run.PressResidual!.Value)], [.. fit.Runs.Select(run => run.Observed)]);
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
