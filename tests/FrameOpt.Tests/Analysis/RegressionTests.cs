using CsCheck;
using FrameOpt.Analysis;
using FrameOpt.Numerics;
using FrameOpt.Plans;
using FrameOpt.Tests.Plans;
using MathNet.Numerics.LinearRegression;

namespace FrameOpt.Tests.Analysis;

public class RegressionTests
{
    private const string Rounding = "rounding of the arithmetic";

    private static readonly Gen<(double[][] X, double[] Y)> runs = Gen.Select(
        Spread.Within(1).Array[3].Array[20], Spread.Within(10).Array[20]);

    [Fact]
    public void Coefficients_agree_with_an_independent_solver() => runs.Sample(run =>
    {
        var terms = ModelTerms.Quadratic(3);
        var fit = Regression.Fit(terms, run.X, run.Y, ErrorKind.Measured);
        var rows = run.X.Select(x => terms.Select(term => term.Value(x)).ToArray()).ToArray();
        var other = MultipleRegression.QR(rows, run.Y);
        var size = other.Max(Math.Abs);
        for (var j = 0; j < terms.Count; j++)
            Check.Close(other[j], fit.Coefficients[j].Value, absolute: 1e-9 * size, because: Rounding);
    }, iter: 100);

    [Fact]
    public void Straight_lines_agree_with_an_independent_solver() => runs.Sample(run =>
    {
        double[] x = [.. run.X.Select(row => row[0])];
        var (intercept, slope) = MathNet.Numerics.Fit.Line(x, run.Y);
        var fit = Regression.Fit(ModelTerms.Linear(1), [.. x.Select(value => new[] { value })], run.Y, ErrorKind.Measured);
        Check.Close(intercept, fit.Coefficients[0].Value, absolute: 1e-11, because: Rounding);
        Check.Close(slope, fit.Coefficients[1].Value, absolute: 1e-11, because: Rounding);
        var r = MathNet.Numerics.GoodnessOfFit.RSquared(fit.Runs.Select(fitted => fitted.Fitted), run.Y);
        Check.Close(r, fit.Anova.RSquared, absolute: 1e-11, because: Rounding);
    }, iter: 100);

    /// <summary>The definitions themselves: fit again without the run.</summary>
    [Fact]
    public void Diagnostics_of_a_run_are_what_leaving_it_out_gives() => runs.Sample(run =>
    {
        var terms = ModelTerms.Linear(3);
        var fit = Regression.Fit(terms, run.X, run.Y, ErrorKind.Measured);
        var without = Regression.Fit(terms, run.X[1..], run.Y[1..], ErrorKind.Measured);
        var first = fit.Runs[0];
        Check.Close(run.Y[0] - without.Predict(run.X[0]), first.PressResidual!.Value, absolute: 1e-9, because: Rounding);
        var outside = first.Residual / (without.Anova.ResidualDeviation!.Value * Math.Sqrt(1 - first.Leverage));
        Check.Close(outside, first.ExternallyStudentised!.Value, relative: 1e-9, absolute: 1e-9, because: Rounding);
        var moved = run.X.Sum(x => Math.Pow(fit.Predict(x) - without.Predict(x), 2));
        Check.Close(moved / (4 * Math.Pow(fit.Anova.ResidualDeviation!.Value, 2)), first.CookDistance!.Value, relative: 1e-8,
            absolute: 1e-10, because: Rounding);
        Check.Close(4, fit.Runs.Sum(each => each.Leverage), relative: 1e-12, because: "leverages add up to the number of terms");
    }, iter: 50);

    /// <summary>The definition: a factor against all others, 1/(1 - R²).</summary>
    [Fact]
    public void Variance_inflation_is_that_of_each_factor_against_the_others() => runs.Sample(run =>
    {
        var fit = Regression.Fit(ModelTerms.Linear(3), run.X, run.Y, ErrorKind.Measured);
        var against = Regression.Fit(ModelTerms.Linear(2), [.. run.X.Select(x => x[1..])], [.. run.X.Select(x => x[0])],
            ErrorKind.Measured);
        Check.Close(1 / (1 - against.Anova.RSquared), fit.Coefficients[1].VarianceInflation!.Value, relative: 1e-10, because: Rounding);
        Assert.Null(fit.Coefficients[0].VarianceInflation);
    }, iter: 50);

    [Fact]
    public void A_change_of_units_and_zero_points_changes_no_contribution() =>
        Gen.Select(runs, Gen.Double[0.001, 1000].Array[3], Spread.Within(3).Array[3], Gen.Double[0.01, 100]).Sample(
            (run, scale, shift, unit) =>
        {
            var terms = ModelTerms.Quadratic(3);
            var plain = Regression.Fit(terms, run.X, run.Y, ErrorKind.Deterministic);
            double[][] x = [.. run.X.Select(row => row.Select((value, f) => scale[f] * (value + shift[f])).ToArray())];
            var changed = Regression.Fit(terms, x, [.. run.Y.Select(y => (unit * y) + 7)], ErrorKind.Deterministic);
            Assert.All(plain.Anova.Lines.Zip(changed.Anova.Lines), pair =>
                Check.Close(pair.First.ContributionPercent, pair.Second.ContributionPercent, absolute: 1e-6,
                    because: "rounding, raised by shifts of three ranges"));
        }, iter: 50);

    [Fact]
    public void Permuting_factors_permutes_the_results() => runs.Sample(run =>
    {
        var plain = Regression.Fit(ModelTerms.Quadratic(3), run.X, run.Y, ErrorKind.Measured);
        var turned = Regression.Fit(ModelTerms.Quadratic(3), [.. run.X.Select(x => (double[])[x[2], x[0], x[1]])], run.Y,
            ErrorKind.Measured);
        foreach (var coefficient in plain.Coefficients)
        {
            var powers = coefficient.Term.Powers;
            var term = new ModelTerm(powers[2], powers[0], powers[1]);
            Check.Close(coefficient.Value, turned.CoefficientOf(term), absolute: 1e-8, because: Rounding);
            if (term.Order == 0)
                continue;
            var line = plain.Anova.Lines.Single(line => line.Source == coefficient.Term.Name);
            Check.Close(line.ContributionPercent, turned.Anova.Lines.Single(other => other.Source == term.Name).ContributionPercent,
                absolute: 1e-8, because: Rounding);
        }
    }, iter: 50);

    [Fact]
    public void Sequential_sums_add_up_to_the_total_about_the_mean() => runs.Sample(run =>
    {
        var anova = Regression.Fit(ModelTerms.Quadratic(3), run.X, run.Y, ErrorKind.Measured).Anova;
        var mean = run.Y.Average();
        var total = run.Y.Sum(y => (y - mean) * (y - mean));
        Check.Close(total, anova.Lines.Sum(line => line.SequentialSumOfSquares) + anova.ResidualSumOfSquares, relative: 1e-12,
            because: Rounding);
    }, iter: 50);

    [Fact]
    public void Computed_runs_get_no_tests_and_say_why()
    {
        var table = ReferenceTable.Read("plan-cvd-tungsten.csv");
        var fit = Regression.Fit(ModelTerms.Quadratic(2), table.Columns("x1", "x2"), table.Column("stress"), ErrorKind.Deterministic);
        Assert.True(fit.IsDeterministic);
        Assert.StartsWith("the runs are computed", fit.NoTestsReason);
        Assert.All(fit.Coefficients, coefficient =>
            Assert.Equal((null, null, null), (coefficient.StandardError, coefficient.T, coefficient.P)));
        Assert.All(fit.Anova.Lines, line => Assert.Equal((null, null), (line.F, line.P)));
        // A term's part of the total is (b/se)² SSE/df over SST; coefficients and errors as in WorkedRegressionTests.
        (string Term, double B, double Se)[] published =
            [("x1x2", 0.0694306685, 0.0764427299), ("x1^2", -0.5287277041, 0.0646911715), ("x2^2", -0.1187277041, 0.0646911715)];
        foreach (var (term, b, se) in published)
            Check.Close(100 * b * b / (se * se) * 0.02969858562 / 5 / 3.600054545,
                fit.Anova.Lines.Single(line => line.Source == term).ContributionPercent, relative: 1e-7, because: "ten printed digits");
        Assert.Equal((null, null), (fit.Anova.F, fit.Anova.P));
        Assert.Null(fit.LackOfFit);
        Assert.Null(fit.ConfidenceInterval([0, 0], 0.95));
        Assert.Null(fit.PredictionInterval([0, 0], 0.95));
        Assert.NotNull(CrossValidation.LeaveOneOut(fit));
    }

    [Fact]
    public void A_saturated_fit_says_why_it_has_no_tests()
    {
        var fit = Regression.Fit(ModelTerms.WithInteractions(2), [[-1, -1], [1, -1], [-1, 1], [1, 1]], [1, 2, 3, 5], ErrorKind.Measured);
        Assert.StartsWith("as many terms as runs", fit.NoTestsReason);
        Assert.Null(fit.Anova.ResidualDeviation);
        Assert.Null(fit.Anova.F);
        Assert.Null(fit.Press);
        Assert.Null(CrossValidation.LeaveOneOut(fit));
        Check.Close(5, fit.Predict([1, 1]), relative: 1e-14, because: Rounding);
    }

    [Fact]
    public void More_terms_than_runs_leaves_out_the_last_and_names_them()
    {
        var fit = Regression.Fit(ModelTerms.Quadratic(2), [[-1, -1], [1, -1], [-1, 1], [1, 1]], [1, 2, 3, 5], ErrorKind.Measured);
        Assert.Equal(["x1^2", "x2^2"], fit.Aliased.Select(term => term.Name));
        Assert.Equal(0, fit.Anova.ResidualDegreesOfFreedom);
    }

    [Fact]
    public void Runs_that_do_not_differ_are_fitted_by_their_mean()
    {
        var fit = Regression.Fit(ModelTerms.Linear(1), [[0], [1], [2]], [4, 4, 4], ErrorKind.Measured);
        Assert.Equal(1, fit.Anova.RSquared);
        Assert.Equal(0, fit.Anova.F);
        Assert.Equal(1, fit.Anova.P);
        Assert.All(fit.Anova.Lines, line => Assert.Equal(0, line.ContributionPercent));
    }

    /// <summary>By hand: y = 1, 3, 2 at x = -1, 0, 1 gives 2 + 0.5x, residuals -0.5, 1, -0.5, s² = 1.5; at 0 the mean has variance s²/3;
    /// t(0.975, 1) = tan(0.475 pi) = 12.7062047362.</summary>
    [Fact]
    public void Intervals_are_those_worked_by_hand()
    {
        var fit = Regression.Fit(ModelTerms.Linear(1), [[-1], [0], [1]], [1, 3, 2], ErrorKind.Measured);
        var t = Math.Tan(0.475 * Math.PI);
        Check.Close(2 + (t * Math.Sqrt(1.5 / 3)), fit.ConfidenceInterval([0], 0.95)!.Value.High, relative: 1e-11, because: Rounding);
        Check.Close(2 - (t * Math.Sqrt(1.5 * 4 / 3)), fit.PredictionInterval([0], 0.95)!.Value.Low, relative: 1e-11, because: Rounding);
    }

    [Fact]
    public void A_model_without_constant_is_judged_about_zero()
    {
        var fit = Regression.Fit(ModelTerms.Parse(1, "x1"), [[1], [2]], [1, 3], ErrorKind.Measured);
        Check.Close(1.4, fit.Coefficients[0].Value, relative: 1e-14, because: "(1 + 6)/(1 + 4)");
        Check.Close(10, fit.Anova.TotalSumOfSquares, relative: 1e-14, because: "1 + 9");
    }
}
