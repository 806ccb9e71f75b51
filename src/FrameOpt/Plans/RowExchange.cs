using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Plans;

/// <summary>Change of the criterion when one row is exchanged for another, by a rank-two update instead of a new inverse. With V =
/// (X'X)^-1, U = [new, old] and S = diag(1, -1): det' = -det det(G), V' = V - V U G^-1 U'V, where G = S + U'V U.</summary>
/// <remarks>Source: V. V. Fedorov 1972, Theory of Optimal Experiments (from memory); Woodbury's identity.</remarks>
internal sealed class RowExchange
{
    /// <summary>Regularises the information matrix of a plan that cannot estimate the model yet.</summary>
    private const double Ridge = 1e-7;

    private readonly OptimalCriterion criterion;
    private readonly double[][] v;
    private readonly double[][] vmv;
    private readonly double average;
    private double[] vOld = [];
    private double[] vmvOld = [];
    private double oldVOld;
    private double oldVmvOld;

    public RowExchange(Matrix<double> x, Matrix<double> moments, OptimalCriterion criterion)
    {
        this.criterion = criterion;
        var information = x.TransposeThisAndMultiply(x) + (Matrix<double>.Build.DenseIdentity(x.ColumnCount) * (Ridge * x.RowCount));
        var inverse = information.Inverse();
        v = inverse.ToRowArrays();
        vmv = criterion == OptimalCriterion.I ? (inverse * moments * inverse).ToRowArrays() : [];
        average = criterion == OptimalCriterion.I ? (inverse * moments).Trace() : 0;
        CriterionValue = criterion == OptimalCriterion.D ? information.Cholesky().DeterminantLn : -average;
    }

    /// <summary>Larger is better: the logarithm of the determinant, or the mean variance of prediction with a minus.</summary>
    public double CriterionValue { get; }

    /// <summary>Sets the row to remove.</summary>
    public void SetRemovedRow(double[] row)
    {
        vOld = [.. v.Select(line => Dot(line, row))];
        vmvOld = [.. vmv.Select(line => Dot(line, row))];
        oldVOld = Dot(vOld, row);
        oldVmvOld = vmv.Length == 0 ? 0 : Dot(vmvOld, row);
    }

    /// <summary>Gain of another row in its place, relative to the determinant or to the mean variance; negative for a loss.</summary>
    public double Gain(double[] row)
    {
        var (g11, g12, g22) = (1 + Form(v, row), Dot(vOld, row), oldVOld - 1);
        var determinant = (g11 * g22) - (g12 * g12);
        if (criterion == OptimalCriterion.D)
            return -determinant - 1;
        if (determinant > -1e-12)
            return double.NegativeInfinity;
        var (m11, m12, m22) = (Form(vmv, row), Dot(vmvOld, row), oldVmvOld);
        return ((g22 * m11) - (2 * g12 * m12) + (g11 * m22)) / determinant / average;
    }

    /// <summary>The row times a symmetric matrix times the row.</summary>
    private static double Form(double[][] symmetric, double[] row)
    {
        var sum = 0.0;
        for (var i = 0; i < row.Length; i++)
        {
            if (row[i] != 0)
                sum += row[i] * Dot(symmetric[i], row);
        }

        return sum;
    }

    private static double Dot(double[] left, double[] right)
    {
        var sum = 0.0;
        for (var i = 0; i < left.Length; i++)
            sum += left[i] * right[i];
        return sum;
    }
}
