using FrameOpt.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Plans;

/// <summary>Quality of a plan for a model, before any run is made. Standard errors and variances are for noise of standard deviation
/// one.</summary>
/// <param name="Terms">The names of the terms, then of the blocks after the first.</param>
/// <param name="StandardErrors">Of each coefficient, as a multiple of the noise.</param>
/// <param name="VarianceInflation">For each term, how many times larger the variance is than if the term were uncorrelated with all others;
/// 1 is best. Not a number for the constant.</param>
/// <param name="Leverages">For each run, the leverage of its own result on its fitted value: 0 to 1. They add up to the number of terms and
/// blocks.</param>
/// <param name="ErrorDegreesOfFreedom">Degrees of freedom left to estimate the noise.</param>
/// <param name="DEfficiency">The root of the determinant of the information of one run, of as many powers as there are columns: 0 to 1; 1
/// for an orthogonal two-level plan.</param>
/// <param name="AEfficiency">The harmonic mean of the precision of the coefficients, 0 to 1; 1 for an orthogonal two-level plan.</param>
/// <param name="GEfficiency">The least possible worst variance of prediction over the worst of this plan within the cube, 0 to 1. The worst
/// is sought on 21 levels of each factor, from the worst runs on; above 1 only where runs lie outside the cube.</param>
/// <param name="AverageVariance">The mean variance of prediction over the cube, exactly; smaller is better.</param>
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
    /// <summary>Terms are estimable when the smallest singular value of the columns is at least this fraction of the largest.</summary>
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
            Elementary.Pow((information / runs).Determinant(), 1.0 / columns),
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

/// <summary>Searches for the largest prediction variance within the cube.</summary>
internal static class MaxPredictionVariance
{
    private const int Starts = 20;

    private static readonly double[] levels = CodedLevels.EvenlySpaced(21);

    /// <summary>The largest variance found by coordinate search from the runs with the largest variance; v is the inverse of the
    /// information matrix, blocks last.</summary>
    public static double Of(Plan plan, PlanModel model, Matrix<double> v)
    {
        var terms = v.SubMatrix(0, model.Terms.Count, 0, model.Terms.Count);
        double Variance(double[] point)
        {
            var row = Vector<double>.Build.Dense(model.At(point));
            return row * terms * row;
        }

        return plan.Runs.Select(run => run.Coded.Select(value => Math.Clamp(value, -1, 1)).ToArray())
            .OrderByDescending(Variance).Take(Starts).Max(start => Climb(start, Variance));
    }

    private static double Climb(double[] point, Func<double[], double> variance)
    {
        var worst = variance(point);
        for (var grew = true; grew;)
        {
            grew = false;
            for (var f = 0; f < point.Length; f++)
            {
                var kept = point[f];
                foreach (var level in levels)
                {
                    point[f] = level;
                    var found = variance(point);
                    if (found > worst + 1e-12)
                        (worst, kept, grew) = (found, level, true);
                }

                point[f] = kept;
            }
        }

        return worst;
    }
}

/// <summary>Correlations of the terms of a model in a plan.</summary>
public static class PlanCorrelation
{
    /// <summary>The correlation of every two terms over the runs, in the order of the model: 0 where they are orthogonal, 1 or -1 where
    /// they are fully aliased, and NaN for a term that never changes, such as the constant.</summary>
    public static double[,] Of(Plan plan, PlanModel model)
    {
        var columns = model.Terms.Select(term => plan.Runs.Select(run => term.Value(run.Coded)).ToArray()).Select(Centred).ToArray();
        var correlation = new double[columns.Length, columns.Length];
        for (var i = 0; i < columns.Length; i++)
        {
            for (var j = 0; j < columns.Length; j++)
                correlation[i, j] = Dot(columns[i], columns[j]) / Math.Sqrt(Dot(columns[i], columns[i]) * Dot(columns[j], columns[j]));
        }

        return correlation;
    }

    private static double[] Centred(double[] column)
    {
        var mean = column.Average();
        return [.. column.Select(value => value - mean)];
    }

    private static double Dot(double[] left, double[] right) => left.Zip(right, (a, b) => a * b).Sum();
}
