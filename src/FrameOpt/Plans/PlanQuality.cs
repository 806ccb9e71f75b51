using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Plans;

/// <summary>How well a plan estimates a model, before any run is made. Standard errors and variances are for noise of standard deviation
/// one.</summary>
/// <param name="Terms">The names of the terms, then of the blocks after the first.</param>
/// <param name="StandardErrors">Of each coefficient, as a multiple of the noise.</param>
/// <param name="VarianceInflation">For each term, how many times larger the variance is than if the term were uncorrelated with all others;
/// 1 is best. Not a
/// number for the constant.</param>
/// <param name="Leverages">For each run, how far its own result decides its fitted value: 0 to 1. They add up to the number of terms and
/// blocks.</param>
/// <param name="ErrorDegreesOfFreedom">Runs left over to measure the noise.</param>
/// <param name="DEfficiency">The root of the determinant of the information of one run, of as many powers as there are columns: 0 to 1; 1
/// for an
/// orthogonal two-level plan.</param>
/// <param name="AEfficiency">The harmonic mean of the precision of the coefficients, 0 to 1; 1 for an orthogonal two-level plan.</param>
/// <param name="GEfficiency">The least possible worst variance of prediction over the worst of this plan within the cube, 0 to 1. The worst
/// is sought on 21 levels
/// of each factor, from the worst runs on; above 1 only where runs lie outside the cube.</param>
/// <param name="AverageVariance">The mean variance of prediction over the cube, exactly; less is better.</param>
/// <remarks>Source: D. C. Montgomery, Design and Analysis of Experiments, optimal designs (from memory).</remarks>
public sealed record PlanQuality(
    IReadOnlyList<string> Terms,
    IReadOnlyList<double> StandardErrors,
    IReadOnlyList<double> VarianceInflation,
    IReadOnlyList<double> Leverages,
    int ErrorDegreesOfFreedom,
    double DEfficiency,
    double AEfficiency,
    double GEfficiency,
    double AverageVariance)
{
    /// <summary>Terms are told apart when the columns' least singular value is at least this share of the greatest.</summary>
    private const double MinShare = 1e-7;

    /// <summary>The quality of a plan for a model.</summary>
    /// <returns>Null when the plan cannot estimate every term of the model.</returns>
    public static PlanQuality? Of(Plan plan, PlanModel model)
    {
        var x = ModelMatrix.Of(plan, model);
        var (runs, columns) = (x.RowCount, x.ColumnCount);
        if (runs < columns || !HasFullRank(x))
            return null;
        var information = x.TransposeThisAndMultiply(x);
        var v = information.Inverse();
        return new PlanQuality(
            ModelMatrix.Names(plan, model),
            [.. v.Diagonal().Select(Math.Sqrt)],
            [.. Enumerable.Range(0, columns).Select(c => Inflation(x.Column(c), v[c, c]))],
            [.. x.EnumerateRows().Select(row => row * v * row)],
            runs - columns,
            Math.Pow((information / runs).Determinant(), 1.0 / columns),
            columns / (runs * v.Trace()),
            model.Terms.Count / (runs * MaxPredictionVariance.Of(plan, model, v)),
            (v * ModelMatrix.Moments(model, columns)).Trace());
    }

    private static bool HasFullRank(Matrix<double> x)
    {
        var sizes = x.Svd(computeVectors: false).S;
        return sizes.Minimum() > MinShare * sizes.Maximum();
    }

    private static double Inflation(Vector<double> column, double variance)
    {
        var mean = column.Average();
        var spread = column.Sum(value => (value - mean) * (value - mean));
        return spread < 1e-12 ? double.NaN : variance * spread;
    }
}
