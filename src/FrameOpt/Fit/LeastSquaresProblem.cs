using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Fit;

/// <summary>What least squares are made of: cost, slopes and information at any unknowns.</summary>
internal sealed class LeastSquaresProblem
{
    /// <summary>A step of the numerical derivative, in standard deviations of what was believed.</summary>
    private const double BelievedStep = 1e-3;

    /// <summary>The same as a share of an unknown of which nothing was believed.</summary>
    private const double OpenStep = 1e-5;

    /// <summary>Information this much smaller than the rest, in equal scales, is none.</summary>
    private const double NoInformation = 1e-13;

    private readonly Func<double[], double[]> predicted;
    private readonly Matrix<double> belief;
    private readonly Vector<double> weight;

    public LeastSquaresProblem(
        IReadOnlyList<Unknown> unknowns, double[,]? correlation, Func<double[], double[]> predicted, IReadOnlyList<Belief> measured)
    {
        (Unknowns, Measured, this.predicted) = (unknowns, measured, predicted);
        weight = Vector<double>.Build.Dense(measured.Count, r => 1 / (measured[r].StandardDeviation * measured[r].StandardDeviation));
        belief = Matrix<double>.Build.Dense(unknowns.Count, unknowns.Count);
        var believed = Enumerable.Range(0, unknowns.Count).Where(i => double.IsFinite(unknowns[i].StandardDeviation)).ToArray();
        if (believed.Length == 0)
            return;
        var inverse = Matrix<double>.Build.Dense(believed.Length, believed.Length, (i, j) =>
            (i == j ? 1 : correlation?[believed[i], believed[j]] ?? 0)
                * unknowns[believed[i]].StandardDeviation * unknowns[believed[j]].StandardDeviation).Inverse();
        foreach (var (i, row) in believed.Index())
        {
            foreach (var (j, column) in believed.Index())
                belief[row, column] = inverse[i, j];
        }
    }

    public IReadOnlyList<Unknown> Unknowns { get; }

    public IReadOnlyList<Belief> Measured { get; }

    /// <summary>By how much an unknown moves when it moves by much.</summary>
    public double Scale(int unknown, Vector<double> at) => double.IsFinite(Unknowns[unknown].StandardDeviation)
        ? Unknowns[unknown].StandardDeviation : Math.Max(Math.Abs(at[unknown]), double.Epsilon);

    public double[] Predicted(Vector<double> at) => predicted(at.ToArray());

    /// <summary>The sum to make small, infinite where the model has no answer, and the residuals.</summary>
    public (double Cost, Vector<double> Residual) Cost(Vector<double> at)
    {
        var values = Predicted(at);
        var residual = Vector<double>.Build.Dense(Measured.Count, r => Measured[r].Value - values[r]);
        var off = Off(at);
        var cost = residual.PointwiseMultiply(residual).DotProduct(weight) + off.DotProduct(belief * off);
        return (double.IsNaN(cost) ? double.PositiveInfinity : cost, residual);
    }

    /// <summary>What each reading changes by for each unknown, by central differences; one-sided at a bound.</summary>
    public Matrix<double> Slope(Vector<double> at)
    {
        var slope = Matrix<double>.Build.Dense(Measured.Count, Unknowns.Count);
        for (var i = 0; i < Unknowns.Count; i++)
        {
            var unknown = Unknowns[i];
            var step = double.IsFinite(unknown.StandardDeviation) ? BelievedStep * unknown.StandardDeviation
                : OpenStep * Math.Max(Math.Abs(at[i]), OpenStep);
            var (above, below) = (at.Clone(), at.Clone());
            above[i] = Math.Min(at[i] + step, unknown.High);
            below[i] = Math.Max(at[i] - step, unknown.Low);
            var (high, low) = (Predicted(above), Predicted(below));
            for (var r = 0; r < Measured.Count; r++)
            {
                var by = (high[r] - low[r]) / (above[i] - below[i]);
                slope[r, i] = double.IsFinite(by) ? by : 0;
            }
        }

        return slope;
    }

    /// <summary>The normal equations at a point: the left side, and half the fall of the cost for each unknown.</summary>
    public (Matrix<double> Information, Vector<double> Gradient) Normal(
        Matrix<double> slope, Vector<double> residual, Vector<double> at) =>
        (Information(slope), slope.TransposeThisAndMultiply(residual.PointwiseMultiply(weight)) - belief * Off(at));

    /// <summary>Of the unknowns; infinite for those that neither readings nor beliefs fix.</summary>
    public Matrix<double> Covariance(Matrix<double> slope)
    {
        var information = Information(slope);
        var scale = information.Diagonal().Map(value => value > 0 ? 1 / Math.Sqrt(value) : 1);
        var even = Matrix<double>.Build.Dense(scale.Count, scale.Count, (i, j) =>
            (information[i, j] + information[j, i]) / 2 * scale[i] * scale[j]);
        var parts = even.Evd(Symmetricity.Symmetric);
        var covariance = Matrix<double>.Build.Dense(scale.Count, scale.Count);
        for (var k = 0; k < scale.Count; k++)
        {
            var (value, vector) = (parts.EigenValues[k].Real, parts.EigenVectors.Column(k).PointwiseMultiply(scale));
            if (value > NoInformation * scale.Count)
            {
                covariance += vector.OuterProduct(vector) / value;
                continue;
            }

            foreach (var (i, share) in parts.EigenVectors.Column(k).Index().Where(part => Math.Abs(part.Item) > 1e-3))
                covariance[i, i] = double.PositiveInfinity;
        }

        return covariance;
    }

    /// <summary>Of the readings, from all that was believed and their own errors; only where something was believed of every
    /// unknown.</summary>
    public Matrix<double> ReadingCovariance(Matrix<double> slope)
    {
        var error = Matrix<double>.Build.DenseOfDiagonalVector(weight.Map(value => 1 / value));
        return Unknowns.Any(unknown => double.IsInfinity(unknown.StandardDeviation)) ? error
            : slope * belief.Inverse() * slope.Transpose() + error;
    }

    private Matrix<double> Information(Matrix<double> slope) =>
        slope.TransposeThisAndMultiply(Matrix<double>.Build.DiagonalOfDiagonalVector(weight) * slope) + belief;

    private Vector<double> Off(Vector<double> at) => Vector<double>.Build.Dense(at.Count, i => at[i] - Unknowns[i].Start);
}
