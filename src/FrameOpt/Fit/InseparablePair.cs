namespace FrameOpt.Fit;

/// <summary>Two numbers that the readings tell together but not apart.</summary>
/// <param name="First">Index of one of them.</param>
/// <param name="Second">Index of the other.</param>
/// <param name="Correlation">What is believed of them together, -1 to 1.</param>
/// <param name="Cure">The one more measurement that tells them apart best; null when none of the candidates does.</param>
/// <param name="CorrelationThen">What would be left after it.</param>
public sealed record InseparablePair(int First, int Second, double Correlation, MeasuredRun? Cure, double CorrelationThen)
{
    /// <summary>From this correlation on two numbers are not told apart.</summary>
    private const double Together = 0.75;

    /// <summary>A measurement that takes less than this from the correlation is not worth a name.</summary>
    private const double LeastRelief = 0.1;

    /// <summary>The pairs, the closest first.</summary>
    /// <param name="fit">Of the readings so far.</param>
    /// <param name="candidates">Safe ones only.</param>
    public static IReadOnlyList<InseparablePair> Of(MeasuredFit fit, IReadOnlyList<MeasuredRun> candidates)
    {
        var after = new Lazy<IReadOnlyList<(MeasuredRun Run, MathNet.Numerics.LinearAlgebra.Matrix<double> Covariance)>>(
            () => [.. candidates.Select(run => (run, NextMeasurements.With(fit, run)))]);
        InseparablePair Pair(int i, int j)
        {
            double Then(MathNet.Numerics.LinearAlgebra.Matrix<double> covariance) =>
                covariance[i, j] / Math.Sqrt(covariance[i, i] * covariance[j, j]);
            var best = after.Value.Select(next => (next.Run, Correlation: Then(next.Covariance)))
                .OrderBy(next => Math.Abs(next.Correlation)).FirstOrDefault();
            var now = fit.Least.Correlation(i, j);
            var helps = best.Run is not null && Math.Abs(best.Correlation) < Math.Abs(now) - LeastRelief;
            return new InseparablePair(i, j, now, helps ? best.Run : null, helps ? best.Correlation : now);
        }

        return
        [
            .. from i in Enumerable.Range(0, fit.Numbers.Count)
               from j in Enumerable.Range(i + 1, fit.Numbers.Count - i - 1)
               where Math.Abs(fit.Least.Correlation(i, j)) >= Together
               orderby -Math.Abs(fit.Least.Correlation(i, j))
               select Pair(i, j),
        ];
    }
}
