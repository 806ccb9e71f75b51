using FrameOpt.Numerics;

namespace FrameOpt.Analysis;

/// <summary>The residual of measured runs parted in two: how repeated runs differ, and what the model misses beyond that.</summary>
/// <param name="PureErrorSumOfSquares">Of repeated runs about their mean.</param>
/// <param name="PureErrorDegreesOfFreedom">Degrees of freedom of it.</param>
/// <param name="SumOfSquares">Lack of fit.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of it; 0 when the model has a term for every distinct design.</param>
/// <param name="F">Mean square of lack of fit over that of pure error; null with no degrees of freedom.</param>
/// <param name="P">Probability of a larger F by chance alone.</param>
public sealed record LackOfFit(double PureErrorSumOfSquares, int PureErrorDegreesOfFreedom, double SumOfSquares, int DegreesOfFreedom,
    double? F, double? P)
{
    /// <summary>Of the residual of a fit; runs with equal factors are repeats.</summary>
    /// <returns>Null when no run is repeated.</returns>
    internal static LackOfFit? Of(IReadOnlyList<double[]> x, IReadOnlyList<double> y, double residualSumOfSquares, int residualDegrees)
    {
        var repeats = y.Zip(x).GroupBy(run => string.Join('|', run.Second.Select(value => BitConverter.DoubleToInt64Bits(value + 0.0))),
            run => run.First).ToList();
        var pureDegrees = y.Count - repeats.Count;
        if (pureDegrees == 0)
            return null;
        var pure = repeats.Sum(same =>
        {
            var mean = same.Average();
            return same.Sum(value => (value - mean) * (value - mean));
        });
        var sum = Math.Max(0, residualSumOfSquares - pure);
        var degrees = residualDegrees - pureDegrees;
        if (degrees <= 0)
            return new LackOfFit(pure, pureDegrees, 0, 0, null, null);
        var f = AnovaTable.Ratio(sum / degrees, pure / pureDegrees);
        return new LackOfFit(pure, pureDegrees, sum, degrees, f, UpperTail.F(f, degrees, pureDegrees));
    }
}
