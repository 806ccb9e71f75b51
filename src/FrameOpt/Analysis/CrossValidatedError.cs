namespace FrameOpt.Analysis;

/// <summary>Errors of predicting runs that the fit did not see. In the response's unit.</summary>
/// <param name="RootMeanSquare">Typical size.</param>
/// <param name="Worst">Largest size.</param>
/// <param name="RSquared">1 less the sum of squared errors over that about the mean: 1 for a perfect model, below 0 for one worse than the mean.</param>
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
