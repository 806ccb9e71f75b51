using CsCheck;
using FrameOpt.Analysis;
using FrameOpt.Tests.Plans;

namespace FrameOpt.Tests.Analysis;

public class FactorialAnovaTests
{
    private static readonly string[][] balanced =
        [.. from a in new[] { "low", "middle", "high" } from b in new[] { "red", "blue" } from repeat in new[] { 1, 2 } select new[] { a,
            b }];

    [Fact]
    public void A_two_level_plan_gives_the_sums_of_its_contrasts()
    {
        var table = ReferenceTable.Read("plan-filtration-rate.csv");
        string[][] levels = [.. table.Rows.Select(row => row[..4].Select(level => level < 0 ? "low" : "high").ToArray())];
        var anova = FactorialAnova.Of(["A", "B", "C", "D"], levels, table.Column("y"), 2, ErrorKind.Measured);
        Check.Close(1314.0625, anova.Lines.Single(line => line.Source == "A × C").AdjustedSumOfSquares, relative: 1e-12,
            because: "exact but for rounding");
        Check.Close(855.5625, anova.Lines.Single(line => line.Source == "D").AdjustedSumOfSquares, relative: 1e-12,
            because: "exact but for rounding");
        Assert.Equal(5, anova.ResidualDegreesOfFreedom);
    }

    [Fact]
    public void In_a_balanced_plan_the_sums_add_up_and_the_order_of_factors_does_not_matter() => Spread.Within(10).Array[12].Sample(y =>
    {
        var anova = FactorialAnova.Of(["a", "b"], balanced, y, 2, ErrorKind.Measured);
        var turned = FactorialAnova.Of(["b", "a"], [.. balanced.Select(run => run.Reverse().ToArray())], y, 2, ErrorKind.Measured);
        var mean = y.Average();
        Check.Close(y.Sum(value => (value - mean) * (value - mean)),
            anova.Lines.Sum(line => line.AdjustedSumOfSquares) + anova.ResidualSumOfSquares,
            relative: 1e-12, because: "rounding");
        Check.Close(anova.Lines[0].F!.Value, turned.Lines[1].F!.Value, relative: 1e-9, absolute: 1e-12, because: "rounding");
        Assert.Equal([2, 1, 2], anova.Lines.Select(line => line.DegreesOfFreedom));
        Assert.Equal(6, anova.ResidualDegreesOfFreedom);

        // By hand: the residual is that of the pairs about their means.
        Check.Close(Enumerable.Range(0, 6).Sum(pair => Math.Pow(y[2 * pair] - y[(2 * pair) + 1], 2) / 2), anova.ResidualSumOfSquares,
            absolute: 1e-11, because: "rounding");
    }, iter: 50);

    [Fact]
    public void Computed_runs_get_contributions_and_no_tests()
    {
        var anova = FactorialAnova.Of(["a", "b"], balanced, [.. balanced.Select(run => run[0].Length + (2.0 * run[1].Length))], 2,
            ErrorKind.Deterministic);
        Assert.All(anova.Lines, line => Assert.Null(line.P));
        Assert.NotNull(anova.NoTestsReason);
        Check.Close(100, anova.Lines.Sum(line => line.ContributionPercent), relative: 1e-12, because: "rounding");
        Check.Close(0, anova.Lines[2].ContributionPercent, absolute: 1e-12, because: "the response has no interaction");
    }
}
