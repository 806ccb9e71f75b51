using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class PlanQualityTests
{
    private const string Rounding = "rounding of the inverse";

    // By hand: X'X = 8 I, so every variance is 1/8, every leverage 4/8, and the mean variance over the cube (1 + 3/3) / 8, as the mean of
    // x^2 is 1/3.
    [Fact]
    public void Two_level_factorial_is_the_best_possible_for_main_effects()
    {
        var quality = PlanQuality.Of(FullFactorial.TwoLevel(["a", "b", "c"]), PlanModel.Linear(3))!;
        Assert.Equal(["constant", "a", "b", "c"], quality.Terms);
        Assert.All(quality.StandardErrors, error => Check.Close(Math.Sqrt(1 / 8.0), error, absolute: 1e-12, because: Rounding));
        Assert.All(quality.Leverages, leverage => Check.Close(0.5, leverage, absolute: 1e-12, because: Rounding));
        Assert.All(quality.VarianceInflation.Skip(1), inflation => Check.Close(1, inflation, absolute: 1e-12, because: Rounding));
        Assert.Equal(4, quality.ErrorDegreesOfFreedom);
        Check.Close(1, quality.DEfficiency, absolute: 1e-12, because: Rounding);
        Check.Close(1, quality.AEfficiency, absolute: 1e-12, because: Rounding);
        Check.Close(1, quality.GEfficiency, absolute: 1e-12, because: Rounding);
        Check.Close(0.25, quality.AverageVariance, absolute: 1e-12, because: Rounding);
    }

    // In the 12-run plan AB correlates with C by 1/3 and with nothing else of the model, so both inflate by 1 / (1 - 1/9) = 1.125.
    [Fact]
    public void Partial_aliasing_inflates_the_variance_by_one_over_one_minus_r_squared()
    {
        var plan = PlackettBurman.Build(["a", "b", "c"], 12);
        var quality = PlanQuality.Of(plan, new PlanModel([.. PlanModel.Linear(3).Terms, ModelTerm.Parse("x1x2", 3)]))!;
        double[] expected = [1, 1, 1.125, 1.125];
        for (var i = 0; i < 4; i++)
            Check.Close(expected[i], quality.VarianceInflation[i + 1], absolute: 1e-12, because: Rounding);
    }

    [Fact]
    public void Leverages_add_up_to_the_terms_and_blocks()
    {
        var plan = CentralComposite.Build(["a", "b", "c"], AxialRule.BlockOrthogonal, new CentrePoints(4, 2), inBlocks: true);
        var quality = PlanQuality.Of(plan, PlanModel.Quadratic(3))!;
        Check.Close(11, quality.Leverages.Sum(), absolute: 1e-9, because: Rounding);
        Assert.Equal("block 2", quality.Terms[^1]);
        Check.Close(1, quality.VarianceInflation[^1], absolute: 1e-9,
            because: "a block-orthogonal plan keeps the blocks apart from every term");
    }

    // J. Kiefer and J. Wolfowitz 1960: a third of the runs each at -1, 0 and 1 is best both for D and for G with a square in one factor.
    [Fact]
    public void Three_equal_thirds_have_the_least_worst_variance_for_a_square()
    {
        var plan = FullFactorial.Build(["a"], [3]);
        Check.Close(1, PlanQuality.Of(plan, PlanModel.Quadratic(1))!.GEfficiency, absolute: 1e-9, because: Rounding);
    }

    [Fact]
    public void Plan_that_cannot_estimate_the_model_has_no_quality()
    {
        Assert.Null(PlanQuality.Of(FullFactorial.TwoLevel(["a", "b"]), PlanModel.Quadratic(2)));
        Assert.Null(PlanQuality.Of(FullFactorial.TwoLevel(["a", "b", "c"]),
            new PlanModel([.. PlanModel.Linear(3).Terms, ModelTerm.Parse("x1^2", 3)])));
    }

    [Fact]
    public void Squares_that_never_differ_are_found_out_though_rounding_hides_it()
    {
        var corners = CodedLevels.Corners(5).Select(corner => corner.Select(value => (0.7 * value) + 0.1).ToArray());
        var plan = Plan.Numbered("corners off centre", PlanNames.Letters(5), Plan.Points(PointKind.Factorial, corners));
        Assert.NotNull(PlanQuality.Of(plan, PlanModel.Interactions(5)));
        Assert.Null(PlanQuality.Of(plan, PlanModel.Quadratic(5)));
    }

    [Fact]
    public void Rotatable_plan_predicts_equally_well_in_all_directions()
    {
        var plan = CentralComposite.Build(["a", "b"], AxialRule.Rotatable, new CentrePoints(5, 0));
        var model = PlanModel.Quadratic(2);
        var x = ModelMatrix.Of(plan, model);
        var v = x.TransposeThisAndMultiply(x).Inverse();
        double Variance(double angle)
        {
            var row = MathNet.Numerics.LinearAlgebra.Vector<double>.Build.Dense(model.At([0.8 * Math.Cos(angle), 0.8 * Math.Sin(angle)]));
            return row * v * row;
        }

        for (var angle = 0.1; angle < 6; angle += 0.3)
            Check.Close(Variance(0), Variance(angle), relative: 1e-10, because: Rounding);
    }
}
