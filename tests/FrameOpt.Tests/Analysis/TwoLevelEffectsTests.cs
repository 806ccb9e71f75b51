using CsCheck;
using FrameOpt.Analysis;
using FrameOpt.Numerics;
using FrameOpt.Plans;
using FrameOpt.Tests.Plans;

namespace FrameOpt.Tests.Analysis;

public class TwoLevelEffectsTests
{
    private const string Exact = "contrasts of whole numbers, exact but for rounding";
    private const string Published = "ten printed digits, recomputed from the published data";

    /// <summary>Box and Bisgaard, Quality Progress, June 1987, p. 56; effects recomputed outside this project.</summary>
    [Fact]
    public void Spring_cracks_give_the_effects_worked_by_hand()
    {
        var effects = Of("plan-spring-cracks.csv", 3, 3);
        Has(effects, "x1", 23, 1058);
        Has(effects, "x2", -5, 50);
        Has(effects, "x3", 1.5, 4.5);
        Has(effects, "x1x2", 1.5, 4.5);
        Has(effects, "x1x3", 10, 200);
        Has(effects, "x2x3", 0, 0);
        Has(effects, "x1x2x3", 0.5, 0.5);
    }

    /// <summary>Montgomery, Design and Analysis of Experiments, unreplicated 2^4 example.</summary>
    [Fact]
    public void Filtration_rate_gives_the_published_effects_and_their_sums_of_squares()
    {
        var effects = Of("plan-filtration-rate.csv", 4, 4);
        Assert.Equal(15, effects.Count);
        Has(effects, "x1", 21.625, 1870.5625);
        Has(effects, "x2", 3.125, 39.0625);
        Has(effects, "x3", 9.875, 390.0625);
        Has(effects, "x4", 14.625, 855.5625);
        Has(effects, "x1x2", 0.125, 0.0625);
        Has(effects, "x1x3", -18.125, 1314.0625);
        Has(effects, "x1x4", 16.625, 1105.5625);
        Has(effects, "x2x3", 2.375, 22.5625);
        Has(effects, "x2x4", -0.375, 0.5625);
        Has(effects, "x3x4", -1.125, 5.0625);
        Has(effects, "x1x2x3", 1.875, 14.0625);
        Has(effects, "x1x2x4", 4.125, 68.0625);
        Has(effects, "x1x3x4", -1.625, 10.5625);
        Has(effects, "x2x3x4", -2.625, 27.5625);
        Has(effects, "x1x2x3x4", 1.375, 7.5625);
        Check.Close(5730.9375, effects.Sum(effect => effect.SumOfSquares), relative: 1e-12, because: Exact);
        Check.Close(100, effects.Sum(effect => effect.ContributionPercent), relative: 1e-12, because: Exact);
        Check.Close(100 * 1870.5625 / 5730.9375, effects[0].ContributionPercent, relative: 1e-12, because: Exact);
    }

    /// <summary>Lenth 1989 on the effects of Montgomery's example; recomputed outside this project.</summary>
    [Fact]
    public void Lenths_margins_of_the_filtration_rate_are_those_published()
    {
        var margins = LenthMargins.Of([.. Of("plan-filtration-rate.csv", 4, 4).Select(effect => effect.Value)]);
        Check.Close(3.9375, margins.InitialError, relative: 1e-12, because: Exact);
        Check.Close(2.625, margins.PseudoStandardError, relative: 1e-12, because: Exact);
        Check.Close(6.747777321, margins.MarginOfError, relative: 1e-9, because: Published);
        Check.Close(13.698959563, margins.SimultaneousMargin, relative: 1e-10, because: Published);
    }

    /// <summary>The half fraction I = ABCD of the same example.</summary>
    [Fact]
    public void A_half_fraction_names_what_it_mixes()
    {
        var table = ReferenceTable.Read("plan-filtration-rate.csv");
        var half = table.Rows.Where(row => row[0] * row[1] * row[2] * row[3] == 1).ToArray();
        var effects = TwoLevelEffects.Of([.. half.Select(row => row[..4])], [.. half.Select(row => row[4])], 4);
        (string, string, double)[] expected =
        [
            ("x1", "x2x3x4", 19), ("x2", "x1x3x4", 1.5), ("x3", "x1x2x4", 14), ("x4", "x1x2x3", 16.5),
            ("x1x2", "x3x4", -1), ("x1x3", "x2x4", -18.5), ("x1x4", "x2x3", 19),
        ];
        Assert.Equal(expected, effects.Select(effect => (effect.Term.Name, Assert.Single(effect.Aliases).Term.Name, effect.Value)));
        Assert.All(effects, effect => Assert.False(effect.Aliases[0].IsNegative));
    }

    /// <summary>Box, Hunter and Hunter 1978, p. 391: eight runs, seven factors.</summary>
    [Fact]
    public void A_saturated_plan_of_eight_runs_gives_seven_effects_each_mixed_with_three_interactions()
    {
        var effects = Of("plan-bicycle.csv", 7, 2);
        Assert.Equal([3.5, 12, 1, 22.5, 0.5, 1, 2.5], effects.Select(effect => effect.Value));
        Assert.All(effects, effect => Assert.Equal(3, effect.Aliases.Count));
    }

    /// <summary>D = -AB written out by hand: AB enters D with a minus.</summary>
    [Fact]
    public void An_alias_with_a_minus_is_told()
    {
        double[][] runs = [[-1, -1, -1], [1, -1, 1], [-1, 1, 1], [1, 1, -1]];
        var effects = TwoLevelEffects.Of(runs, [1, 2, 3, 4], 2);
        Assert.Equal("x1x2", effects[2].Aliases[0].Term.Name);
        Assert.True(effects[2].Aliases[0].IsNegative);
    }

    [Fact]
    public void A_plan_that_is_not_orthogonal_is_refused() =>
        Assert.Throws<ArgumentException>(() => TwoLevelEffects.Of([[-1, -1], [1, 1], [1, -1]], [1, 2, 3], 2));

    [Fact]
    public void Effects_are_twice_the_coefficients_of_the_regression() =>
        Spread.Within(100).Array[16].Sample(y =>
        {
            var x = ReferenceTable.Read("plan-filtration-rate.csv").Columns("x1", "x2", "x3", "x4");
            var effects = TwoLevelEffects.Of(x, y, 2);
            var fit = Regression.Fit(ModelTerms.WithInteractions(4), x, y, ErrorKind.Deterministic);
            foreach (var effect in effects)
            {
                Check.Close(effect.Value, 2 * fit.CoefficientOf(effect.Term), absolute: 1e-11, because: "rounding of numbers up to 100");
                var line = fit.Anova.Lines.Single(line => line.Source == effect.Term.Name);
                Check.Close(effect.SumOfSquares, line.SequentialSumOfSquares, absolute: 1e-8, because: "rounding of squares up to 100");
                Check.Close(effect.SumOfSquares, line.AdjustedSumOfSquares, absolute: 1e-8, because: "rounding of squares up to 100");
            }
        }, iter: 20);

    /// <summary>Quantiles of the plotting positions (i - 1/2)/m, from the normal table: 0.5 + 0.5 x 0.95 = 0.975.</summary>
    [Fact]
    public void Half_normal_points_rise_and_stand_at_their_quantiles()
    {
        var points = HalfNormal.Points([-3, 1, 2, 0.5, 9, -4, 5, 6, -7, 8]);
        Assert.Equal([3, 1, 2, 0, 5, 6, 7, 8, 9, 4], points.Select(point => point.Index));
        Check.Close(1.959963984540, points[^1].Quantile, relative: 1e-11, because: "twelve printed digits of the normal table");
        Assert.Equal(9, points[^1].Magnitude);
    }

    private static IReadOnlyList<Effect> Of(string file, int factors, int order)
    {
        var table = ReferenceTable.Read(file);
        return TwoLevelEffects.Of([.. table.Rows.Select(row => row[..factors])], table.Column("y"), order);
    }

    private static void Has(IReadOnlyList<Effect> effects, string name, double value, double sum)
    {
        var effect = effects.Single(effect => effect.Term.Name == name);
        Check.Close(value, effect.Value, absolute: 1e-12, because: Exact);
        Check.Close(sum, effect.SumOfSquares, relative: 1e-12, absolute: 1e-12, because: Exact);
    }
}
