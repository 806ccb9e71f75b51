using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Plans;

/// <summary>What a plan gains when one row is exchanged for another, without inverting anew: the change has rank two.
/// With V = (X'X)^-1, U = [new, old] and S = diag(1, -1): det' = -det det(G), V' = V - V U G^-1 U'V, where G = S + U'V U.</summary>
/// <remarks>Source: V. V. Fedorov 1972, Theory of Optimal Experiments (from memory); Woodbury's identity.</remarks>
internal sealed class ExchangeRate
{
    /// <summary>Added to the information matrix so that a plan that cannot estimate the model yet can be bettered too.</summary>
    private const double Ridge = 1e-7;

    private readonly OptimalCriterion criterion;
    private readonly Matrix<double> v;
    private readonly Matrix<double> vmv;
    private readonly double average;
    private Vector<double> vOld = Vector<double>.Build.Dense(1);
    private Vector<double> vmvOld = Vector<double>.Build.Dense(1);
    private double oldVOld;
    private double oldVmvOld;

    public ExchangeRate(Matrix<double> x, Matrix<double> moments, OptimalCriterion criterion)
    {
        this.criterion = criterion;
        var information = x.TransposeThisAndMultiply(x) + (Matrix<double>.Build.DenseIdentity(x.ColumnCount) * (Ridge * x.RowCount));
        v = information.Inverse();
        vmv = v * moments * v;
        average = (v * moments).Trace();
        Merit = criterion == OptimalCriterion.D ? information.Cholesky().DeterminantLn : -average;
    }

    /// <summary>The more the better: the logarithm of the determinant, or the mean variance of prediction with a minus.</summary>
    public double Merit { get; }

    /// <summary>Chooses the row to give up.</summary>
    public void Leave(double[] row)
    {
        var old = Vector<double>.Build.Dense(row);
        (vOld, vmvOld) = (v * old, vmv * old);
        (oldVOld, oldVmvOld) = (old * vOld, old * vmvOld);
    }

    /// <summary>What taking another row in its place gains, as a share of the determinant or of the mean variance; below nought for a loss.</summary>
    public double Gain(double[] row)
    {
        var taken = Vector<double>.Build.Dense(row);
        var (newVNew, newVOld) = (taken * (v * taken), taken * vOld);
        var (g11, g12, g22) = (1 + newVNew, newVOld, oldVOld - 1);
        var determinant = (g11 * g22) - (g12 * g12);
        if (criterion == OptimalCriterion.D)
            return -determinant - 1;
        if (determinant > -1e-12)
            return double.NegativeInfinity;
        var (m11, m12, m22) = (taken * (vmv * taken), taken * vmvOld, oldVmvOld);
        return ((g22 * m11) - (2 * g12 * m12) + (g11 * m22)) / determinant / average;
    }
}
