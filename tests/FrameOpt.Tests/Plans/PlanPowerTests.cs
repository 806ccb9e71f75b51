using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class PlanPowerTests
{
    // Two groups of 20, difference 1, standard deviation 1, two-sided 5 %: 0.8689528, the example of power.t.test in R's stats package
    // (from memory).
    [Fact]
    public void Power_of_two_groups_of_twenty_is_the_published_one()
    {
        var quality = PlanQuality.Of(Groups(20), PlanModel.Linear(1))!;
        Check.Close(0.8689528, PlanPower.Of(quality, 1, 0.5, 1), absolute: 5e-7,
            because: "printed digits; the other tail is far below them");
    }

    [Theory]
    [InlineData(2, 0.05)]
    [InlineData(3, 0.01)]
    [InlineData(40, 0.1)]
    public void Power_without_an_effect_is_the_significance_and_grows_with_the_effect(int groupSize, double significance)
    {
        var quality = PlanQuality.Of(Groups(groupSize), PlanModel.Linear(1))!;
        Check.Close(significance, PlanPower.Of(quality, 1, 0, 1, significance), absolute: 1e-9, because: "numerical integration");
        var powers = Enumerable.Range(0, 10).Select(step => PlanPower.Of(quality, 1, 0.2 * step, 1, significance)).ToArray();
        Assert.Equal(powers.Order(), powers);
        Assert.Equal(powers[4], PlanPower.Of(quality, 1, -0.8, 1, significance));
        Check.Close(1, PlanPower.Of(quality, 1, 1000, 1, significance), absolute: 1e-3, because: "a very large effect is always seen");
    }

    [Fact]
    public void Plan_without_a_spare_run_has_no_power_and_says_why()
    {
        var quality = PlanQuality.Of(Groups(1), PlanModel.Linear(1))!;
        Assert.Contains("no degrees of freedom", Assert.Throws<ArgumentException>(() => PlanPower.Of(quality, 1, 1, 1)).Message);
    }

    private static Plan Groups(int size) =>
        Plan.Numbered("two groups", ["a"], Plan.Points(PointKind.Factorial,
            Enumerable.Range(0, 2 * size).Select(run => (double[])[run < size ? -1 : 1])));
}
