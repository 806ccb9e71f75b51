using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>The two errors of runs in whole plots (sets of runs for which the factors that are hard to change were set once): that of a
/// setting, which all runs of a whole plot share, and that of a run.</summary>
/// <param name="Plots">Number of whole plots.</param>
/// <param name="Ratio">Variance of a setting over the variance of a run; below 0 where whole plots differ less than their runs let
/// expect.</param>
/// <param name="PlotDegreesOfFreedom">Whole plots less the terms that are constant within each of them.</param>
/// <param name="RunDegreesOfFreedom">Runs less whole plots less the other terms.</param>
/// <param name="Strata">The two analyses of variance, between and within whole plots; null where the runs are not balanced.</param>
/// <remarks>Sources: F. Yates 1935, Complex experiments; H. D. Patterson and R. Thompson 1971, Recovery of inter-block information when
/// block sizes are unequal (REML); P. Goos, I. Langhans and M. Vandebroek 2006, Practical inference from industrial split-plot designs;
/// degrees of freedom by the level at which a term changes, J. C. Pinheiro and D. M. Bates 2000, section 2.4.2 (all from
/// memory).</remarks>
public sealed record WholePlotErrors(
    int Plots, double Ratio, int PlotDegreesOfFreedom, int RunDegreesOfFreedom, PlotStrata? Strata)
{
    private const double Tolerance = 1e-9;
    private const double LeastPart = 1e-3;
    private const double MostPart = 1e6;
    private const int GridSteps = 40;
    private const int Halvings = 40;

    /// <summary>For each term of the model, whether it is constant within each whole plot.</summary>
    public required IReadOnlyList<bool> IsOfPlots { get; init; }

    /// <summary>Degrees of freedom that a term of the model is judged by; 0 for none.</summary>
    public int DegreesOfFreedom(int term) => IsOfPlots[term] ? PlotDegreesOfFreedom : RunDegreesOfFreedom;

    /// <summary>The errors of some runs.</summary>
    /// <param name="terms">Of the model.</param>
    /// <param name="columns">Of the terms, one value for each run.</param>
    /// <param name="y">The response.</param>
    /// <param name="plots">Of each run.</param>
    internal static WholePlotErrors Of(
        IReadOnlyList<ModelTerm> terms, double[][] columns, IReadOnlyList<double> y, PlotMeans plots)
    {
        var isOfPlots = columns.Select(plots.IsConstant).ToArray();
        var between = new OrthogonalColumns(columns.Where((_, j) => isOfPlots[j]));
        var within = new OrthogonalColumns(columns.Where((_, j) => !isOfPlots[j]).Select(plots.Within));
        var (plotDegrees, runDegrees) = (plots.Count - between.Kept.Count, plots.Runs - plots.Count - within.Kept.Count);
        var isBalanced = plots.Size is not null && columns.Where((_, j) => !isOfPlots[j])
            .All(column => Norm(between.Project(plots.Between(column)).Residual) <= Tolerance * Norm(column));
        var strata = !isBalanced ? null : new PlotStrata(
            Anova(terms, columns, isOfPlots, between, plots.Between(y), plotDegrees),
            Anova(terms, [.. columns.Select(plots.Within)], [.. isOfPlots.Select(of => !of)], within, plots.Within(y), runDegrees));
        double Ratio()
        {
            if (plotDegrees <= 0 || runDegrees <= 0)
                return plotDegrees <= 0 && !isBalanced ? MostPart : 0;
            if (strata is null)
                return ByLikelihood(columns, y, plots);
            var (plot, run) = (strata.Plots.ResidualDeviation!.Value, strata.Runs.ResidualDeviation!.Value);
            var part = run == 0 ? plot == 0 ? 1 : MostPart : plot / run * (plot / run);
            return (Math.Clamp(part, LeastPart, MostPart) - 1) / plots.Size!.Value;
        }

        return new WholePlotErrors(plots.Count, Ratio(), Math.Max(0, plotDegrees), Math.Max(0, runDegrees), strata)
        {
            IsOfPlots = isOfPlots,
        };
    }

    private static AnovaTable Anova(IReadOnlyList<ModelTerm> terms, double[][] columns, bool[] isHere, OrthogonalColumns basis,
        double[] y, int degrees)
    {
        int[] here = [.. Enumerable.Range(0, terms.Count).Where(j => isHere[j])];
        var groups = here.Select(j => new ColumnGroup(terms[j].Name, [columns[j]], other => terms[here[other]].Contains(terms[j])))
            .ToArray();
        var (along, rest) = basis.Project(y);
        var sums = ColumnGroup.SumsOf(groups, basis, along).Where((line, g) => terms[here[g]].Order > 0 && line.DegreesOfFreedom > 0);
        return new AnovaTable(ErrorKind.Measured, [.. sums], rest.Sum(value => value * value), Math.Max(0, degrees));
    }

    /// <summary>The ratio by residual maximum likelihood: a grid on the logarithm of 1 + runs of a plot x ratio, then golden
    /// section.</summary>
    private static double ByLikelihood(double[][] columns, IReadOnlyList<double> y, PlotMeans plots)
    {
        double RatioAt(double log) => (Elementary.Exp(log) - 1) / plots.LargestSize;
        double Deviance(double log)
        {
            var ratio = RatioAt(log);
            var basis = new OrthogonalColumns(columns.Select(column => plots.Whitened(column, ratio)));
            var rest = basis.Project(plots.Whitened(y, ratio)).Residual.Sum(value => value * value);
            return rest == 0 ? 0 : plots.LogDeterminant(ratio) + basis.LogDeterminant
                + ((plots.Runs - basis.Kept.Count) * Elementary.Log(rest));
        }

        var (from, to) = (Elementary.Log(LeastPart), Elementary.Log(MostPart));
        var step = (to - from) / GridSteps;
        var best = Enumerable.Range(0, GridSteps + 1).Select(i => from + (i * step)).MinBy(Deviance);
        var (low, high) = (Math.Max(from, best - step), Math.Min(to, best + step));
        var golden = (Math.Sqrt(5) - 1) / 2;
        for (var i = 0; i < Halvings; i++)
        {
            var (left, right) = (high - (golden * (high - low)), low + (golden * (high - low)));
            if (Deviance(left) <= Deviance(right))
                high = right;
            else
                low = left;
        }

        return RatioAt((low + high) / 2);
    }

    private static double Norm(double[] values) => Math.Sqrt(values.Sum(value => value * value));
}

/// <summary>The analyses of variance of balanced runs in whole plots.</summary>
/// <param name="Plots">Terms that are constant within whole plots, against the differences between whole plots that they leave.</param>
/// <param name="Runs">All other terms, against what is left within whole plots.</param>
public sealed record PlotStrata(AnovaTable Plots, AnovaTable Runs);

/// <summary>Columns taken apart into means of whole plots and what is left.</summary>
internal sealed class PlotMeans
{
    private readonly int[] plotOf;
    private readonly int[] sizes;

    /// <param name="names">The whole plot of each run.</param>
    public PlotMeans(IReadOnlyList<string> names)
    {
        var distinct = names.Distinct().ToList();
        plotOf = [.. names.Select(name => distinct.IndexOf(name))];
        sizes = [.. distinct.Select((_, plot) => plotOf.Count(own => own == plot))];
    }

    /// <summary>Number of whole plots.</summary>
    public int Count => sizes.Length;

    public int Runs => plotOf.Length;

    public int LargestSize => sizes.Max();

    /// <summary>Runs of every whole plot; null where they differ.</summary>
    public int? Size => sizes.Distinct().Count() == 1 ? sizes[0] : null;

    public double[] Between(IReadOnlyList<double> column)
    {
        var means = new double[Count];
        for (var i = 0; i < plotOf.Length; i++)
            means[plotOf[i]] += column[i] / sizes[plotOf[i]];
        return [.. plotOf.Select(plot => means[plot])];
    }

    public double[] Within(IReadOnlyList<double> column) => [.. Between(column).Zip(column, (mean, value) => value - mean)];

    public bool IsConstant(IReadOnlyList<double> column) => plotOf.Zip(column).GroupBy(run => run.First, run => run.Second)
        .All(plot => plot.Max() - plot.Min() <= 1e-9 * Math.Max(1, plot.Max(Math.Abs)));

    /// <summary>A column by which errors that whole plots share become independent ones of variance one.</summary>
    public double[] Whitened(IReadOnlyList<double> column, double ratio)
    {
        var means = Between(column);
        return [.. column.Select((value, i) => value - ((1 - (1 / Math.Sqrt(1 + (sizes[plotOf[i]] * ratio)))) * means[i]))];
    }

    /// <summary>Logarithm of the determinant of the covariance, for runs of variance one.</summary>
    public double LogDeterminant(double ratio) => sizes.Sum(size => Elementary.Log(1 + (size * ratio)));
}
