using CsCheck;
using FrameOpt.Analysis;
using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Analysis;

public class SelectionTests
{
    private static readonly double[][] grid = [
        .. from a in new[] { -2.0, -1, 0, 1, 2 } from b in new[] { -1.0, 0, 1 } from c in new[] { -1.0, 1 } select new[] { a, b, c }];

    [Fact]
    public void Planted_terms_are_found_and_no_others()
    {
        double[] y = [.. grid.Select(x => 5 + x[0] - (2 * x[1]) + (0.5 * x[0] * x[1]) + (0.3 * x[0] * x[0]))];
        var fit = StepwiseSelection.Fit(ModelTerms.Quadratic(3), grid, y, ErrorKind.Deterministic);
        Assert.Equal(["1", "x1", "x2", "x1x2", "x1^2"], fit.Terms.Select(term => term.Name));
    }

    [Fact]
    public void The_choice_is_hierarchical_and_no_single_step_betters_it() => Spread.Within(1).Array[30].Sample(y =>
    {
        var candidates = ModelTerms.Quadratic(3);
        var fit = StepwiseSelection.Fit(candidates, grid, y, ErrorKind.Measured);
        Assert.Empty(ModelTerms.Missing(fit.Terms));
        var score = Aicc.Of(30, fit.Terms.Count, fit.Anova.ResidualSumOfSquares);
        foreach (var term in candidates)
        {
            ModelTerm[] changed = fit.Terms.Contains(term) ? [.. fit.Terms.Where(other => !other.Equals(term))] : [.. fit.Terms, term];
            if (changed.Length == 0 || ModelTerms.Missing(changed).Count > 0)
                continue;
            var other = Regression.Fit(changed, grid, y, ErrorKind.Measured);
            Assert.True(Aicc.Of(30, changed.Length, other.Anova.ResidualSumOfSquares) >= score - 1e-9, $"{term.Name} would better it");
        }
    }, iter: 20);

    /// <summary>n ln(S/n) + 2k + 2k(k+1)/(n-k-1) with n = 10, S = 10, k = 3 (two terms and the error): 0 + 6 + 24/6.</summary>
    [Fact]
    public void The_criterion_is_that_worked_by_hand() =>
        Check.Close(10, Aicc.Of(10, 2, 10), relative: 1e-14, because: "rounding");

    [Fact]
    public void Candidates_without_hierarchy_are_refused() =>
        Assert.Throws<ArgumentException>(() => StepwiseSelection.Fit(
            ModelTerms.Parse(3, "1", "x1x2"), grid, [.. grid.Select(x => x[0])], ErrorKind.Measured));

    [Fact]
    public void Leaving_one_out_by_leverages_equals_fits_without_each_run() => Spread.Within(1).Array[30].Sample(y =>
    {
        var terms = ModelTerms.Quadratic(3).Where(term => term.Name != "x3^2").ToArray();
        var byLeverage = CrossValidation.LeaveOneOut(Regression.Fit(terms, grid, y, ErrorKind.Deterministic))!;
        double[] errors = [.. y.Select((value, left) => value - Regression.Fit(terms, [.. grid.Where((_, run) => run != left)],
            [.. y.Where((_, run) => run != left)], ErrorKind.Deterministic).Predict(grid[left]))];
        Check.Close(Math.Sqrt(errors.Average(error => error * error)), byLeverage.RootMeanSquare, relative: 1e-10, because: "rounding");
        Check.Close(errors.Max(Math.Abs), byLeverage.Worst, relative: 1e-10, because: "rounding");
    }, iter: 20);
}
