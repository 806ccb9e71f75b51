using FrameOpt.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

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
    /// <summary>Degrees of freedom of the error that each term is judged by: fewer than all for those that whole plots decide.</summary>
    public required IReadOnlyList<int> TermDegreesOfFreedom { get; init; }

    /// <summary>Terms are estimable when the smallest singular value of the columns is at least this fraction of the largest.</summary>
    private const double MinShare = 1e-7;

    /// <summary>The quality of a plan for a model. In whole plots the setting of a factor that is hard to change errs as much as a
    /// run.</summary>
    /// <returns>Null when the plan cannot estimate every term of the model.</returns>
    public static PlanQuality? Of(Plan plan, PlanModel model)
    {
        var asRun = ModelMatrix.Of(plan, model);
        var (runs, columns) = (asRun.RowCount, asRun.ColumnCount);
        if (runs < columns || !HasFullRank(asRun))
            return null;
        var x = plan.WholePlots == 0 ? asRun : PlotErrors.Whitened(plan, asRun);

        // From the columns themselves: X'X would square their condition number.
        var triangle = x.QR(QRMethod.Thin).R;
        var inverse = triangle.Inverse();
        var v = inverse.TransposeAndMultiply(inverse);
        return new PlanQuality(
            ModelMatrix.Names(plan, model),
            [.. v.Diagonal().Select(Math.Sqrt)],
            [.. Enumerable.Range(0, columns).Select(c => Inflation(asRun.Column(c), v[c, c]))],
            [.. x.EnumerateRows().Select(row => row * v * row)],
            runs - columns,
            Elementary.Pow(triangle.Diagonal().Aggregate(1.0, (product, size) => product * (size * size / runs)), 1.0 / columns),
            columns / (runs * v.Trace()),
            model.Terms.Count / (runs * MaxPredictionVariance.Of(plan, model, v)),
            (v * ModelMatrix.Moments(model, columns)).Trace())
        {
            TermDegreesOfFreedom = plan.WholePlots == 0 ? [.. Enumerable.Repeat(runs - columns, columns)]
                : PlotErrors.DegreesOfFreedom(plan, asRun),
        };
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

/// <summary>The columns of a plan in whole plots.</summary>
internal static class PlotErrors
{
    /// <summary>Columns by which errors that whole plots share become independent: of m runs, each less its plot's mean times 1 less the
    /// inverse root of 1 + m.</summary>
    public static Matrix<double> Whitened(Plan plan, Matrix<double> x)
    {
        var whitened = x.Clone();
        foreach (var plot in plan.Runs.Index().GroupBy(run => run.Item.WholePlot, run => run.Index).Select(plot => plot.ToArray()))
        {
            for (var c = 0; c < x.ColumnCount; c++)
            {
                var part = (1 - (1 / Math.Sqrt(1 + plot.Length))) * plot.Average(run => x[run, c]);
                foreach (var run in plot)
                    whitened[run, c] -= part;
            }
        }

        return whitened;
    }

    /// <summary>Whole plots less the columns that are constant within each, for those columns; what is left, for the others.</summary>
    public static IReadOnlyList<int> DegreesOfFreedom(Plan plan, Matrix<double> x)
    {
        var plots = plan.Runs.Index().GroupBy(run => run.Item.WholePlot, run => run.Index).ToList();
        var isOfPlots = x.EnumerateColumns()
            .Select(column => plots.TrueForAll(plot => plot.Max(run => column[run]) - plot.Min(run => column[run]) < 1e-9)).ToList();
        var ofPlots = plots.Count - isOfPlots.Count(own => own);
        return [.. isOfPlots.Select(own => own ? Math.Max(0, ofPlots) : Math.Max(0, x.RowCount - x.ColumnCount - ofPlots))];
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

/// <summary>What the estimate of a term takes with it of interactions that the model leaves out.</summary>
/// <param name="Term">Of the model.</param>
/// <param name="Interactions">Those it takes with it, each with the share of it: 1 for full aliasing.</param>
public sealed record PartialAlias(ModelTerm Term, IReadOnlyList<(ModelTerm Interaction, double Share)> Interactions)
{
    /// <summary>Smaller shares are rounding.</summary>
    private const double Least = 1e-6;

    /// <summary>The terms of a plan's model that are aliased, wholly or in part, with interactions of two factors.</summary>
    /// <param name="plan">Its runs.</param>
    /// <param name="terms">Of the model; as many runs or more.</param>
    /// <remarks>Source: the alias matrix (X'X)^-1 X'Z, G. E. P. Box and K. B. Wilson 1951 (from memory).</remarks>
    public static IReadOnlyList<PartialAlias> Of(Plan plan, IReadOnlyList<ModelTerm> terms)
    {
        List<ModelTerm> omitted = [.. ModelTerms.WithInteractions(plan.Factors.Count).Except(terms)];
        if (omitted.Count == 0 || plan.Runs.Count < terms.Count)
            return [];
        Matrix<double> Columns(IReadOnlyList<ModelTerm> of) =>
            Matrix<double>.Build.DenseOfColumns(of.Select(term => plan.Runs.Select(run => term.Value(run.Coded))));
        var shares = Columns(terms).QR(QRMethod.Thin).Solve(Columns(omitted));
        return [.. terms.Select((term, t) => new PartialAlias(term,
                [.. omitted.Select((other, o) => (other, shares[t, o])).Where(pair => Math.Abs(pair.Item2) > Least)]))
            .Where(alias => alias.Term.Order > 0 && alias.Interactions.Count > 0)];
    }
}
