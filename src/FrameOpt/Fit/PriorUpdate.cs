using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Fit;

/// <summary>A number that is not known exactly: the most likely value and how far it may be off.</summary>
/// <param name="Value">The most likely one.</param>
/// <param name="StandardDeviation">Above 0.</param>
public readonly record struct Belief(double Value, double StandardDeviation);

/// <summary>Unknown numbers after a measurement.</summary>
/// <param name="Unknowns">In the order given.</param>
/// <param name="Correlation">Between each pair of them, -1 to 1.</param>
/// <param name="Expected">Of the instruments, before they were read.</param>
public sealed record UpdatedBeliefs(IReadOnlyList<Belief> Unknowns, double[,] Correlation, ExpectedReadings Expected);

/// <summary>What the instruments were expected to read.</summary>
/// <param name="Covariance">Of the readings, from all that was uncertain and their own errors.</param>
/// <param name="Slopes">How much each reading changes for each unknown: a row a reading, a column an unknown.</param>
public sealed record ExpectedReadings(double[,] Covariance, double[,] Slopes);

/// <summary>Moves what was believed of some numbers as far as measured values ask: least squares in which each belief counts as one more
/// measurement, so that fewer measurements than unknowns are enough.</summary>
/// <remarks>Source: C. D. Rodgers, Inverse Methods for Atmospheric Sounding, 2000, section 5.3, the Gauss-Newton iteration in its m-form;
/// from memory.</remarks>
public static class PriorUpdate
{
    private const int MaxSteps = 30;

    /// <summary>A step of the numerical derivative in standard deviations.</summary>
    private const double DerivativeStep = 1e-3;

    /// <summary>The iteration ends when no unknown moves by more of its standard deviation.</summary>
    private const double Settled = 1e-10;

    /// <summary>The most likely unknowns, given beliefs and measured values.</summary>
    /// <param name="beliefs">One or more.</param>
    /// <param name="correlation">Between each pair of them before, -1 to 1; 1 of each with itself.</param>
    /// <param name="predicted">What each instrument would read for given unknowns; smooth.</param>
    /// <param name="measured">What each reads, with its error.</param>
    public static UpdatedBeliefs Of(
        IReadOnlyList<Belief> beliefs, double[,] correlation, Func<double[], double[]> predicted,
        IReadOnlyList<Belief> measured)
    {
        var before = Vector<double>.Build.Dense(beliefs.Count, i => beliefs[i].Value);
        var spread = Matrix<double>.Build.Dense(beliefs.Count, beliefs.Count, (i, j) =>
            correlation[i, j] * beliefs[i].StandardDeviation * beliefs[j].StandardDeviation);
        var error = Matrix<double>.Build.DenseDiagonal(measured.Count, measured.Count, i => Square(measured[i].StandardDeviation));
        var read = Vector<double>.Build.Dense(measured.Count, i => measured[i].Value);
        var now = before;
        ExpectedReadings? expected = null;
        for (var step = 0; ; step++)
        {
            var slope = Slope(beliefs, predicted, now, measured.Count);
            var covariance = slope * spread * slope.Transpose() + error;
            expected ??= new ExpectedReadings(covariance.ToArray(), slope.ToArray());
            var gain = spread * slope.Transpose() * covariance.Inverse();
            var next = before + gain * (read - Vector<double>.Build.DenseOfEnumerable(predicted(now.ToArray())) + slope * (now - before));
            var moved = (next - now).Select((change, i) => Math.Abs(change) / beliefs[i].StandardDeviation).Max();
            now = next;
            if (moved < Settled || step == MaxSteps)
                return Result(now, spread - gain * slope * spread, expected);
        }
    }

    /// <summary>What each reading changes by for each unknown, by central differences.</summary>
    private static Matrix<double> Slope(
        IReadOnlyList<Belief> beliefs, Func<double[], double[]> predicted, Vector<double> at, int readings)
    {
        var slope = Matrix<double>.Build.Dense(readings, beliefs.Count);
        for (var i = 0; i < beliefs.Count; i++)
        {
            var step = DerivativeStep * beliefs[i].StandardDeviation;
            var (above, below) = (at.Clone(), at.Clone());
            above[i] += step;
            below[i] -= step;
            var (high, low) = (predicted(above.ToArray()), predicted(below.ToArray()));
            for (var r = 0; r < readings; r++)
                slope[r, i] = (high[r] - low[r]) / (2 * step);
        }

        return slope;
    }

    private static UpdatedBeliefs Result(Vector<double> values, Matrix<double> covariance, ExpectedReadings expected)
    {
        var deviations = covariance.Diagonal().Map(Math.Sqrt);
        var correlation = new double[values.Count, values.Count];
        for (var i = 0; i < values.Count; i++)
        {
            for (var j = 0; j < values.Count; j++)
                correlation[i, j] = covariance[i, j] / (deviations[i] * deviations[j]);
        }

        return new UpdatedBeliefs([.. values.Select((value, i) => new Belief(value, deviations[i]))], correlation, expected);
    }

    private static double Square(double value) => value * value;
}
