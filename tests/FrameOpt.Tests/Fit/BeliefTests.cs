using FrameOpt.Fit;

namespace FrameOpt.Tests.Fit;

/// <summary>Normal beliefs and a linear reading have a closed form: weights by the inverse variances (A. Gelman et al., Bayesian Data
/// Analysis, section 2.5; from memory).</summary>
public sealed class BeliefTests
{
    [Fact]
    public void A_belief_moves_by_the_share_of_its_variance()
    {
        var after = LeastSquares.Of([new Unknown(0, 10)], null, off => off, [new Belief(20, 5)]).Unknowns[0];
        Check.Close(20 * 100.0 / 125, after.Value, relative: 1e-9, because: "100 / (100 + 25) of the way");
        Check.Close(Math.Sqrt(100.0 * 25 / 125), after.StandardDeviation, relative: 1e-9, because: "1 / (1/100 + 1/25)");
    }

    [Fact]
    public void A_sum_is_shared_by_variance_and_its_parts_hang_together()
    {
        var after = LeastSquares.Of(
            [new Unknown(0, 10), new Unknown(0, 5)], null, off => [off[0] + off[1]], [new Belief(15, 1e-4)]);
        Check.Close(12, after.Unknowns[0].Value, relative: 1e-6, because: "15 x 100 / 125; the reading has an error of 1e-4");
        Check.Close(3, after.Unknowns[1].Value, relative: 1e-6, because: "15 x 25 / 125");
        Check.Close(-1, after.Correlation(0, 1), relative: 1e-6, because: "what one has more the other has less");
    }

    [Fact]
    public void Beliefs_that_go_together_move_together()
    {
        double[,] together = { { 1, 0.8 }, { 0.8, 1 } };
        var after = LeastSquares.Of([new Unknown(0, 1), new Unknown(0, 1)], together, off => [off[0]], [new Belief(1, 1)]);
        Check.Close(0.5, after.Unknowns[0].Value, relative: 1e-9, because: "half way: equal variances");
        Check.Close(0.4, after.Unknowns[1].Value, relative: 1e-9, because: "0.8 of it, by regression on the first");
    }

    [Fact]
    public void A_curved_reading_is_followed_to_its_end()
    {
        var after = LeastSquares.Of([new Unknown(1.5, 1)], null, off => [off[0] * off[0]], [new Belief(4, 1e-7)]).Unknowns[0];
        Check.Close(2, after.Value, relative: 1e-6, because: "the square of 2 is 4, and the reading is all but exact");
    }
}
