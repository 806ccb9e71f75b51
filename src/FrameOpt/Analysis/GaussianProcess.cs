using FrameOpt.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace FrameOpt.Analysis;

/// <summary>A smooth surface through measured runs without a polynomial: a Gaussian process with a constant mean, Matern 5/2 correlation
/// with a length of its own for each factor, and the error of a run.</summary>
/// <remarks>Source: C. E. Rasmussen and C. K. I. Williams 2006, Gaussian Processes for Machine Learning: correlation 4.17, likelihood 5.8,
/// leave-one-out 5.10 to 5.12; the mean by generalised least squares, 2.7.</remarks>
public sealed class GaussianProcess
{
    private const int MostRuns = 300;
    private const int MostIterations = 400;
    private const double Tolerance = 1e-6;

    /// <summary>Lengths, in coded units, and the share of the error are looked for between these.</summary>
    private const double ShortestLength = 0.1, LongestLength = 30, LeastError = 1e-6, MostError = 10;

    private static readonly double sqrt5 = Math.Sqrt(5);
    private readonly double[][] x;
    private readonly double[] lengths;
    private readonly Vector<double> weights;
    private readonly Matrix<double> inverse;
    private readonly Vector<double> inverseOnes;
    private readonly double onesForm;

    private GaussianProcess(IReadOnlyList<double[]> x, IReadOnlyList<double> y, double[] lengths, double error)
    {
        (this.x, this.lengths, ErrorShare) = ([.. x], lengths, error);
        var correlation = Matrix<double>.Build.Dense(y.Count, y.Count,
            (i, j) => Correlation(this.x[i], this.x[j]) + (i == j ? error : 0));
        var factor = correlation.Cholesky();
        inverse = factor.Solve(Matrix<double>.Build.DenseIdentity(y.Count));
        inverseOnes = inverse.RowSums();
        onesForm = inverseOnes.Sum();
        var values = Vector<double>.Build.DenseOfEnumerable(y);
        Mean = inverseOnes * values / onesForm;
        var off = values - Mean;
        weights = inverse * off;
        Variance = Math.Max(off * weights / y.Count, double.Epsilon);
        LogLikelihood = (-0.5 * y.Count * Elementary.Log(Variance)) - (0.5 * factor.DeterminantLn);
        var squares = 0.0;
        for (var i = 0; i < y.Count; i++)
            squares += weights[i] / inverse[i, i] * (weights[i] / inverse[i, i]);
        LeaveOneOutError = Math.Sqrt(squares / y.Count);
    }

    /// <summary>Of the process, in the response's unit.</summary>
    public double Mean { get; }

    /// <summary>Of the process without the error of a run, in the square of the response's unit.</summary>
    public double Variance { get; }

    /// <summary>Variance of the error of a run over that of the process.</summary>
    public double ErrorShare { get; }

    /// <summary>Length of each factor, coded: how far apart settings must be to say little of each other.</summary>
    public IReadOnlyList<double> Lengths => lengths;

    /// <summary>Up to a constant.</summary>
    public double LogLikelihood { get; }

    /// <summary>Root mean square error of predicting each run without it (the lengths stay), in the response's unit.</summary>
    public double LeaveOneOutError { get; }

    /// <summary>The process of largest likelihood.</summary>
    /// <param name="x">The factors of each run, coded.</param>
    /// <param name="y">The response of each run.</param>
    /// <returns>Null for fewer than five runs, more than 300, or a response that does not change.</returns>
    public static GaussianProcess? Fit(IReadOnlyList<double[]> x, IReadOnlyList<double> y)
    {
        if (y.Count is < 5 or > MostRuns || y.Max() - y.Min() <= 0)
            return null;
        var factors = x[0].Length;
        double[] Bounded(Vector<double> at) => [.. at.Select((value, i) => Elementary.Exp(i < factors
            ? Math.Clamp(value, Elementary.Log(ShortestLength), Elementary.Log(LongestLength))
            : Math.Clamp(value, Elementary.Log(LeastError), Elementary.Log(MostError))))];
        GaussianProcess At(Vector<double> at) => Bounded(at) is var both ? With(x, y, both[..^1], both[^1]) : null!;
        var best = new[] { 0.7, 3 }.SelectMany(length => new[] { 0.01, 0.3 }, (length, error) =>
        {
            var start = Vector<double>.Build.Dense(factors + 1, i => Elementary.Log(i < factors ? length : error));
            try
            {
                return new NelderMeadSimplex(Tolerance, MostIterations * (factors + 1))
                    .FindMinimum(ObjectiveFunction.Value(at => -At(at).LogLikelihood), start).MinimizingPoint;
            }
            catch (MaximumIterationsException)
            {
                return start;
            }
        }).MaxBy(at => At(at).LogLikelihood)!;
        return At(best);
    }

    /// <summary>The process with given lengths and share of the error.</summary>
    internal static GaussianProcess With(IReadOnlyList<double[]> x, IReadOnlyList<double> y, double[] lengths, double error) =>
        new(x, y, lengths, error);

    /// <summary>The mean response of a setting, and its standard deviation, that of a further run's error not included.</summary>
    /// <param name="at">The factors, coded.</param>
    public (double Mean, double Deviation) Predict(IReadOnlyList<double> at)
    {
        double[] here = [.. at];
        var near = Vector<double>.Build.Dense(x.Length, i => Correlation(x[i], here));
        var rest = 1 - (inverseOnes * near);
        var variance = 1 - (near * inverse * near) + (rest * rest / onesForm);
        return (Mean + (near * weights), Math.Sqrt(Math.Max(0, Variance * variance)));
    }

    private double Correlation(double[] a, double[] b)
    {
        var squares = 0.0;
        for (var f = 0; f < lengths.Length; f++)
            squares += (a[f] - b[f]) / lengths[f] * ((a[f] - b[f]) / lengths[f]);
        var distance = Math.Sqrt(squares);
        return (1 + (sqrt5 * distance) + (5 * squares / 3)) * Elementary.Exp(-sqrt5 * distance);
    }
}
