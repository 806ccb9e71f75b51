using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>Fits a polynomial model by least squares.</summary>
public static class Regression
{
    /// <summary>The least-squares fit of a response.</summary>
    /// <param name="terms">Of the model, the constant first where there is one; a term that depends on earlier ones is left out and
    /// named.</param>
    /// <param name="x">The factors of each run.</param>
    /// <param name="y">The response of each run, finite.</param>
    /// <param name="errors">Whether the runs were measured or computed.</param>
    /// <param name="plots">The whole plot of each run; null where every run was set up by itself.</param>
    /// <remarks>Source: least squares by an orthogonal decomposition, G. H. Golub 1965 (from memory). With whole plots, generalised least
    /// squares: <see cref="WholePlotErrors"/>.</remarks>
    public static RegressionFit Fit(IReadOnlyList<ModelTerm> terms, IReadOnlyList<double[]> x, IReadOnlyList<double> y, ErrorKind errors,
        IReadOnlyList<string>? plots = null)
    {
        double[][] columns = [.. terms.Select(term => x.Select(term.Value).ToArray())];
        IReadOnlyList<double> response = y;
        WholePlotErrors? shared = null;
        if (plots is not null)
        {
            var means = new PlotMeans(plots);
            shared = WholePlotErrors.Of(terms, columns, y, means);
            columns = [.. columns.Select(column => means.Whitened(column, shared.Ratio))];
            response = means.Whitened(y, shared.Ratio);
        }

        var basis = new OrthogonalColumns(columns);
        var (along, rest) = basis.Project(response);
        ModelTerm[] kept = [.. basis.Kept.Select(index => terms[index])];
        var anova = Anova(terms, columns, basis, along, rest, errors);
        var values = basis.Coefficients(along);
        return new RegressionFit(basis)
        {
            Terms = kept,
            Aliased = [.. terms.Except(kept)],
            Anova = anova,
            WholePlots = shared,
            Coefficients = [.. kept.Select((term, j) => Coefficient(term, j, values[j], basis, columns[basis.Kept[j]],
                kept.Any(t => t.Order == 0), anova, shared))],
            Runs = [.. y.Select((observed, i) =>
                FittedRun.Of(observed, rest[i], basis.Leverage(i), anova.ResidualSumOfSquares, anova.ResidualDegreesOfFreedom,
                    kept.Length))],
            LackOfFit = errors == ErrorKind.Deterministic || shared is not null ? null
                : LackOfFit.Of(x, y, anova.ResidualSumOfSquares, anova.ResidualDegreesOfFreedom),
        };
    }

    private static AnovaTable Anova(IReadOnlyList<ModelTerm> terms, double[][] columns, OrthogonalColumns basis, double[] along,
        double[] rest,
        ErrorKind errors)
    {
        var groups = terms.Select((term, j) => new ColumnGroup(term.Name, [columns[j]], other => terms[other].Contains(term))).ToArray();
        var sums = ColumnGroup.SumsOf(groups, basis, along).Where((line, j) => terms[j].Order > 0 && line.DegreesOfFreedom > 0);
        return new AnovaTable(errors, [.. sums], rest.Sum(value => value * value), rest.Length - basis.Kept.Count);
    }

    private static Coefficient Coefficient(ModelTerm term, int index, double value, OrthogonalColumns basis, double[] column,
        bool hasConstant, AnovaTable anova, WholePlotErrors? shared)
    {
        var unit = new double[basis.Kept.Count];
        unit[index] = 1;
        var spread = basis.VarianceFactor(unit);
        var mean = hasConstant ? column.Average() : 0;
        double? inflation = term.Order > 0 && shared is null ? spread * column.Sum(entry => (entry - mean) * (entry - mean)) : null;
        var degrees = shared?.DegreesOfFreedom(basis.Kept[index]) ?? anova.ResidualDegreesOfFreedom;
        if (anova.NoTestsReason is not null || degrees == 0)
            return new Coefficient(term, value, null, null, null, inflation, 0);
        var error = anova.ResidualDeviation!.Value * Math.Sqrt(spread);
        var t = AnovaTable.Ratio(value, error);
        return new Coefficient(term, value, error, t, UpperTail.StudentTwoSided(t, degrees), inflation, degrees);
    }
}

/// <summary>Splits the residual sum of squares of measured runs into pure error and lack of fit.</summary>
/// <param name="PureErrorSumOfSquares">Of repeated runs about their mean.</param>
/// <param name="PureErrorDegreesOfFreedom">Degrees of freedom of it.</param>
/// <param name="SumOfSquares">Lack of fit.</param>
/// <param name="DegreesOfFreedom">Degrees of freedom of it; 0 when the model has a term for every distinct design.</param>
/// <param name="F">Mean square of lack of fit over that of pure error; null with no degrees of freedom.</param>
/// <param name="P">Probability of a larger F by chance.</param>
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
