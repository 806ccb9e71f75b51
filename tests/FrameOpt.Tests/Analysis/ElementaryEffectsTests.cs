using FrameOpt.Analysis;

namespace FrameOpt.Tests.Analysis;

public class ElementaryEffectsTests
{
    private const string Exact = "differences of a linear function, exact but for rounding";

    [Fact]
    public void A_linear_function_has_its_slopes_everywhere()
    {
        var effects = Of(3, x => 5 + (3 * x[0]) - (2 * x[1]));
        Check.Close(3, effects[0].Mean, absolute: 1e-12, because: Exact);
        Check.Close(-2, effects[1].Mean, absolute: 1e-12, because: Exact);
        Check.Close(2, effects[1].MeanMagnitude, absolute: 1e-12, because: Exact);
        Check.Close(0, effects[2].MeanMagnitude, absolute: 1e-12, because: Exact);
        Assert.All(effects, effect => Check.Close(0, effect.Deviation, absolute: 1e-12, because: Exact));
        Assert.All(effects, effect => Assert.Equal(400, effect.Steps));
    }

    // By hand, with levels 0, 1/3, 2/3, 1 and steps of 2/3: x1² changes by 2/3 (from 0 or back) or 4/3 (from 1/3 or back) per unit, so
    // mean 1 and deviation 1/3. x1 x2 changes with x1 by x2, which is any of the four levels: mean 1/2, deviation root of 5/36.
    [Fact]
    public void A_square_and_a_product_have_the_moments_worked_by_hand()
    {
        var square = Of(1, x => x[0] * x[0])[0];
        Check.Close(1, square.Mean, absolute: 0.07, because: "four standard errors of 1/3 over the root of 400 paths");
        Check.Close(1 / 3.0, square.Deviation, absolute: 0.01, because: "two values, equally likely to about the same error");
        var product = Of(2, x => x[0] * x[1])[0];
        Check.Close(0.5, product.Mean, absolute: 0.075, because: "four standard errors of 0.373 over the root of 400 paths");
        Check.Close(Math.Sqrt(5 / 36.0), product.Deviation, absolute: 0.03, because: "a standard deviation from 400 paths");
    }

    [Fact]
    public void A_change_of_sign_is_seen_in_the_magnitudes()
    {
        // |x - 1/2| changes by 1/6 - 1/2 = -1/3 over 2/3 from 0 to 2/3, and by as much upwards from 1/3 to 1: -1/2 or 1/2 per unit.
        var effect = Of(1, x => Math.Abs(x[0] - 0.5))[0];
        Check.Close(0.5, effect.MeanMagnitude, absolute: 1e-12, because: Exact);
        Check.Close(0, effect.Mean, absolute: 0.1, because: "four standard errors of 1/2 over the root of 400 paths");
    }

    [Fact]
    public void Steps_to_places_without_a_result_do_not_count()
    {
        var effects = ElementaryEffects.Of(2, 1, 400, 1, 2, x => x[0] > 0.9 ? null : [x[0] + x[1]])[0];
        Assert.InRange(effects[0].Steps, 1, 399);
        Check.Close(1, effects[0].Mean, absolute: 1e-12, because: Exact);
    }

    private static IReadOnlyList<ElementaryEffect> Of(int inputs, Func<double[], double> function)
    {
        var one = ElementaryEffects.Of(inputs, 1, 400, 7, 1, x => [function(x)])[0];
        Assert.Equal(one, ElementaryEffects.Of(inputs, 1, 400, 7, 2, x => [function(x)])[0]);
        return one;
    }
}
