using FrameOpt.Analysis;
using FrameOpt.Plans;
using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Tests.Analysis;

/// <summary>Runs in whole plots: corrosion resistance of bars, furnace heats as whole plots (360, 370, 380 degrees twice) with four
/// coatings in each. G. E. P. Box, W. G. Hunter and J. S. Hunter, Statistics for Experimenters; G. E. P. Box 1996, Split plot experiments,
/// Quality Engineering 8. The readings are those of both; that they are right the sums of squares say, which close to 49,638.6.</summary>
public class WholePlotTests
{
    private const string Rounded = "printed to whole numbers";
    private const string Exact = "the same formula, exact but for rounding";

    private static readonly (int Heat, double Temperature, double[] Coatings)[] heats =
    [
        (1, 360, [67, 73, 83, 89]), (2, 370, [65, 91, 87, 86]), (3, 380, [155, 127, 147, 212]),
        (4, 380, [108, 100, 90, 153]), (5, 370, [140, 142, 121, 150]), (6, 360, [33, 8, 46, 54]),
    ];

    // Two factors at -1 and 1 and their product stand for the three differences of four coatings.
    private static readonly string[] all =
        ["1", "x1", "x1^2", "x2", "x3", "x2x3", "x1x2", "x1x3", "x1x2x3", "x1^2x2", "x1^2x3", "x1^2x2x3"];

    [Fact]
    public void Two_strata_have_the_published_sums_of_squares_and_errors()
    {
        var plots = Fit(all, _ => true).WholePlots!;
        Assert.Equal((6, 3, 9), (plots.Plots, plots.PlotDegreesOfFreedom, plots.RunDegreesOfFreedom));
        var (between, within) = (plots.Strata!.Plots, plots.Strata.Runs);
        Check.Close(26519, between.ModelSumOfSquares, absolute: 0.5, because: Rounded);
        Check.Close(14440, between.ResidualSumOfSquares, absolute: 0.5, because: Rounded);
        Check.Close(4289, within.Lines.Take(3).Sum(line => line.SequentialSumOfSquares), absolute: 0.5, because: Rounded);
        Check.Close(3270, within.Lines.Skip(3).Sum(line => line.SequentialSumOfSquares), absolute: 0.5, because: Rounded);
        Check.Close(1121, within.ResidualSumOfSquares, absolute: 0.5, because: Rounded);
        Check.Close(49638.6, between.TotalSumOfSquares + within.TotalSumOfSquares, absolute: 0.05, because: "printed to a decimal");
        // The book: 34.2 of a heat, 11.1 of a bar, from (4813 - 125) / 4 = 1172 and 125.
        var run = Fit(all, _ => true).Anova.ResidualDeviation!.Value;
        Check.Close(11.1, run, absolute: 0.07, because: "printed to a decimal, from a rounded mean square");
        Check.Close(34.2, run * Math.Sqrt(plots.Ratio), absolute: 0.07, because: "printed to a decimal, from a rounded mean square");
    }

    [Fact]
    public void Terms_of_whole_plots_are_judged_by_whole_plots_and_all_others_by_runs()
    {
        var fit = Fit(all, _ => true);
        var (between, within) = (fit.WholePlots!.Strata!.Plots, fit.WholePlots.Strata.Runs);
        var temperature = fit.Coefficients.Single(one => one.Term.Name == "x1");
        // By hand: temperature changes the mean by 2 x 39.9375, sum of squares 16 x 39.9375² = 25520.06, over 14439.6 / 3 = 4813.2.
        Check.Close(39.9375, temperature.Value, relative: 1e-12, because: Exact);
        Check.Close(25520.0625 / (14439.625 / 3), temperature.T!.Value * temperature.T.Value, relative: 1e-9, because: Exact);
        Assert.Equal(3, temperature.ErrorDegreesOfFreedom);
        Check.Close(between.Lines[0].F!.Value, temperature.T.Value * temperature.T.Value, relative: 1e-9, because: Exact);
        var coating = fit.Coefficients.Single(one => one.Term.Name == "x1^2x2x3");
        Assert.Equal(9, coating.ErrorDegreesOfFreedom);
        Check.Close(within.Lines[^1].P!.Value, coating.P!.Value, relative: 1e-6, because: Exact);
        // One further run, in a heat of its own, is at least as uncertain as one heat.
        var interval = fit.PredictionInterval([0, 1, 1], 0.95)!.Value;
        Assert.True(interval.High - interval.Low > 2 * 3.18 * 34.2);
    }

    [Fact]
    public void Unbalanced_runs_have_the_most_likely_ratio_of_variances()
    {
        // Without the first heat's second bar and the last two: no published figures, so the likelihood is written out as matrices.
        string[] names = ["1", "x1", "x2", "x3"];
        var kept = Runs(run => run is not (1 or 22 or 23));
        var plots = Fit(names, run => run is not (1 or 22 or 23)).WholePlots!;
        Assert.Null(plots.Strata);
        double Likelihood(double ratio) => Restricted(names, kept, ratio);
        var best = Likelihood(plots.Ratio);
        Assert.True(plots.Ratio > 1);
        foreach (var factor in new[] { 0.5, 0.95, 0.99, 1.01, 1.05, 2 })
            Assert.True(Likelihood(plots.Ratio * factor) < best);
    }

    [Fact]
    public void As_many_terms_as_whole_plots_leave_nothing_to_judge_them_by()
    {
        var fit = Fit(["1", "x1", "x1^2", "x2"], run => run < 12);
        Assert.Equal((0, 8), (fit.WholePlots!.PlotDegreesOfFreedom, fit.WholePlots.RunDegreesOfFreedom));
        Assert.Null(fit.Coefficients[1].P);
        Assert.Equal(8, fit.Coefficients[3].ErrorDegreesOfFreedom);
        Assert.Null(fit.PredictionInterval([0, 0, 0], 0.95));
    }

    /// <summary>Logarithm of the restricted likelihood, but for a constant: -(ln|V| + ln|X'V^-1 X| + (n - p) ln r'V^-1 r) / 2.</summary>
    private static double Restricted(string[] names, IReadOnlyList<(string Plot, double[] X, double Y)> runs, double ratio)
    {
        var x = Matrix<double>.Build.DenseOfColumns(ModelTerms.Parse(3, names).Select(term => runs.Select(run => term.Value(run.X))));
        var y = Vector<double>.Build.DenseOfEnumerable(runs.Select(run => run.Y));
        var v = Matrix<double>.Build.Dense(runs.Count, runs.Count,
            (i, j) => (i == j ? 1 : 0) + (runs[i].Plot == runs[j].Plot ? ratio : 0));
        var inverse = v.Inverse();
        var information = x.Transpose() * inverse * x;
        var rest = y - (x * information.Solve(x.Transpose() * inverse * y));
        return -(Math.Log(v.Determinant()) + Math.Log(information.Determinant())
            + ((runs.Count - names.Length) * Math.Log(rest * inverse * rest))) / 2;
    }

    private static RegressionFit Fit(string[] names, Func<int, bool> isKept)
    {
        var runs = Runs(isKept);
        return Regression.Fit(ModelTerms.Parse(3, names), [.. runs.Select(run => run.X)], [.. runs.Select(run => run.Y)],
            ErrorKind.Measured, [.. runs.Select(run => run.Plot)]);
    }

    private static List<(string Plot, double[] X, double Y)> Runs(Func<int, bool> isKept) => [.. heats.SelectMany(heat =>
        heat.Coatings.Select((y, c) => ($"{heat.Heat}",
            new[] { (heat.Temperature - 370) / 10, (c & 1) == 0 ? -1.0 : 1, (c & 2) == 0 ? -1.0 : 1 }, y)))
        .Where((_, run) => isKept(run))];
}
