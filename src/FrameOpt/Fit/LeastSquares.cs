using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Fit;

/// <summary>Finds the unknown numbers that explain measured values best: weighted nonlinear least squares in which what was believed of
/// a number counts as one more measurement, so that fewer measurements than unknowns are enough, and no number leaves its bounds.</summary>
/// <remarks>Source: D. W. Marquardt, J. SIAM 11 (1963) 431-441, with the damping of K. Madsen, H. B. Nielsen, O. Tingleff, Methods for
/// Non-Linear Least Squares Problems, 2004, section 3.2; beliefs as in C. D. Rodgers, Inverse Methods for Atmospheric Sounding, 2000,
/// section 5.3; from memory. MathNet's Levenberg-Marquardt is not used: it gives up at the first trial for which the model has no answer (a
/// frame that would turn over), keeps bounds by a change of variable whose slope is 0 at the bound, and knows no beliefs. Its linear
/// algebra is used.</remarks>
public static class LeastSquares
{
    private const int MaxSteps = 1000;

    /// <summary>The search ends when no unknown moves by more of its scale.</summary>
    private const double Settled = 1e-10;
    private const double FirstDamping = 1e-3;
    private const double LargestDamping = 1e20;

    /// <summary>The most likely unknowns.</summary>
    /// <param name="unknowns">One or more.</param>
    /// <param name="correlation">Between what was believed of each pair of them, -1 to 1; null when they are independent.</param>
    /// <param name="predicted">What each instrument would read for given unknowns; smooth; NaN where the model has no answer.</param>
    /// <param name="measured">What each reads, with its error.</param>
    public static LeastSquaresFit Of(
        IReadOnlyList<Unknown> unknowns, double[,]? correlation, Func<double[], double[]> predicted, IReadOnlyList<Belief> measured)
    {
        var problem = new LeastSquaresProblem(unknowns, correlation, predicted, measured);
        var now = Vector<double>.Build.Dense(unknowns.Count, i => Math.Clamp(unknowns[i].Start, unknowns[i].Low, unknowns[i].High));
        var (cost, residual) = problem.Cost(now);
        var slope = problem.Slope(now);
        var first = slope;
        var (damping, growth, moved) = (FirstDamping, 2.0, double.PositiveInfinity);
        for (var step = 0; step < MaxSteps && moved > Settled && damping < LargestDamping; step++)
        {
            var (information, gradient) = problem.Normal(slope, residual, now);
            var free = Enumerable.Range(0, unknowns.Count).Where(i => !(now[i] <= unknowns[i].Low && gradient[i] < 0)
                && !(now[i] >= unknowns[i].High && gradient[i] > 0)).ToArray();
            if (free.Length == 0)
                break;
            var change = Step(information, gradient, free, damping);
            var next = Vector<double>.Build.Dense(unknowns.Count, i => Math.Clamp(now[i] + change[i], unknowns[i].Low, unknowns[i].High));
            var (nextCost, nextResidual) = problem.Cost(next);
            var foretold = change.DotProduct(gradient) + damping * change.DotProduct(change.PointwiseMultiply(information.Diagonal()));
            if (nextCost <= cost)
            {
                moved = (next - now).Select((by, i) => Math.Abs(by) / problem.Scale(i, next)).Max();
                var gain = foretold > 0 ? (cost - nextCost) / foretold : 1;
                (damping, growth) = (damping * Math.Max(1.0 / 3, 1 - Math.Pow(2 * gain - 1, 3)), 2);
                (now, cost, residual) = (next, nextCost, nextResidual);
                slope = problem.Slope(now);
            }
            else
            {
                (damping, growth) = (damping * growth, 2 * growth);
            }
        }

        return Result(problem, now, cost, slope, first);
    }

    /// <summary>The damped step of the unknowns that are free to move; 0 for the others.</summary>
    private static Vector<double> Step(Matrix<double> information, Vector<double> gradient, int[] free, double damping)
    {
        var matrix = Matrix<double>.Build.Dense(free.Length, free.Length, (i, j) =>
            information[free[i], free[j]] * (i == j ? 1 + damping : 1) + (i == j && information[free[i], free[i]] == 0 ? 1 : 0));
        var part = matrix.Solve(Vector<double>.Build.Dense(free.Length, i => gradient[free[i]]));
        var change = Vector<double>.Build.Dense(gradient.Count);
        foreach (var (i, at) in free.Index())
            change[at] = double.IsFinite(part[i]) ? part[i] : 0;
        return change;
    }

    private static LeastSquaresFit Result(
        LeastSquaresProblem problem, Vector<double> now, double cost, Matrix<double> slope, Matrix<double> first)
    {
        var predicted = problem.Predicted(now);
        var covariance = problem.Covariance(slope);
        var deviations = covariance.Diagonal().Map(variance => Math.Sqrt(Math.Max(0, variance)));
        var readings = problem.Measured.Select((reading, r) =>
        {
            // The share of the reading that fitted itself: what is left of the residual has that much less spread.
            var row = slope.Row(r);
            var leverage = (row * covariance).DotProduct(row) / (reading.StandardDeviation * reading.StandardDeviation);
            return new FittedReading(reading, predicted[r],
                (reading.Value - predicted[r]) / (reading.StandardDeviation * Math.Sqrt(Math.Max(1e-6, 1 - leverage))));
        });
        return new LeastSquaresFit(
            [.. now.Select((value, i) => new Belief(value, deviations[i]))],
            [.. problem.Unknowns.Select((unknown, i) => now[i] <= unknown.Low || now[i] >= unknown.High)],
            covariance.ToArray(), [.. readings], slope.ToArray(), problem.ReadingCovariance(first).ToArray(), first.ToArray())
        { Cost = cost };
    }
}

/// <summary>A number that is not known exactly: the most likely value and how far it may be off.</summary>
/// <param name="Value">The most likely one.</param>
/// <param name="StandardDeviation">Above 0; infinite when nothing is believed or learnt.</param>
public readonly record struct Belief(double Value, double StandardDeviation);

/// <summary>A number to find.</summary>
/// <param name="Start">Where to begin; what was believed, if anything.</param>
/// <param name="StandardDeviation">How far it may be off from that; infinite when nothing is believed.</param>
/// <param name="Low">It cannot be less.</param>
/// <param name="High">It cannot be more.</param>
public readonly record struct Unknown(
    double Start, double StandardDeviation, double Low = double.NegativeInfinity, double High = double.PositiveInfinity);

/// <summary>A measured value beside what the fitted numbers predict.</summary>
/// <param name="Measured">As read, with its error.</param>
/// <param name="Predicted">After the fit.</param>
/// <param name="Strangeness">How far it lies from what all other readings predict, in standard deviations of both.</param>
public readonly record struct FittedReading(Belief Measured, double Predicted, double Strangeness)
{
    /// <summary>Measured less predicted.</summary>
    public double Residual => Measured.Value - Predicted;
}

/// <summary>Unknown numbers after a measurement.</summary>
/// <param name="Unknowns">In the order given; an infinite deviation for one that the readings and beliefs leave open.</param>
/// <param name="IsAtBound">True for one that would go further if it could.</param>
/// <param name="Covariance">Of the unknowns.</param>
/// <param name="Readings">In the order given.</param>
/// <param name="Slopes">How much each reading changes for each unknown at the end: a row a reading.</param>
/// <param name="ExpectedCovariance">Of the readings before they were taken, from all that was uncertain and their own errors.</param>
/// <param name="ExpectedSlopes">The slopes at the start.</param>
public sealed record LeastSquaresFit(
    IReadOnlyList<Belief> Unknowns, IReadOnlyList<bool> IsAtBound, double[,] Covariance, IReadOnlyList<FittedReading> Readings,
    double[,] Slopes, double[,] ExpectedCovariance, double[,] ExpectedSlopes)
{
    /// <summary>The sum that was made small: of the squared residuals over the squared errors of the readings, and of the squared distances
    /// from what was believed; infinite where the model had no answer from the beginning.</summary>
    public double Cost { get; init; }

    /// <summary>Sum of the squared residuals over the squared errors of the readings.</summary>
    public double ChiSquare => Readings.Sum(reading => Math.Pow(reading.Residual / reading.Measured.StandardDeviation, 2));

    /// <summary>What is believed now of two unknowns together, -1 to 1.</summary>
    public double Correlation(int i, int j) => i == j ? 1
        : Covariance[i, j] / (Unknowns[i].StandardDeviation * Unknowns[j].StandardDeviation);
}
