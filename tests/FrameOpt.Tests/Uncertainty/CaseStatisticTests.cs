using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.Uncertainty;

/// <summary>One number for the values of many cases.</summary>
public class CaseStatisticTests
{
    // Source: worked by hand on 1, 2, 4, 8: mean 15/4; sum of squares about it (121 + 49 + 1 + 289)/16 = 28.75, over 3, the root 3.0957.
    [Fact]
    public void Mean_and_standard_deviation_are_those_of_the_hand()
    {
        Check.Close(3.75, new CaseStatistic.Mean().Of([1, 2, 4, 8], false), relative: 1e-15, because: "arithmetic only");
        Check.Close(3.0957, new CaseStatistic.StandardDeviation().Of([1, 2, 4, 8], false), absolute: 5e-5, because: "printed digits");
    }

    // Source: Hyndman and Fan 1996, definition 1: the least value whose share of values at or below it is at least the percentage.
    [Theory]
    [InlineData(10, 1)]
    [InlineData(25, 1)]
    [InlineData(26, 2)]
    [InlineData(50, 2)]
    [InlineData(90, 8)]
    public void Percentile_is_a_step_of_the_empirical_distribution(double percent, double expected) =>
        Assert.Equal(expected, new CaseStatistic.Percentile(percent).Of([8, 1, 4, 2], false));

    // Source: Rockafellar and Uryasev 2000 for equally likely cases: the mean of the worst quarter of eight is that of the worst two.
    [Fact]
    public void Mean_of_the_worst_takes_the_end_that_is_worse()
    {
        double[] values = [3, 1, 4, 1, 5, 9, 2, 6];
        Assert.Equal(7.5, new CaseStatistic.MeanOfWorst(25).Of([.. values], isHigherBetter: false));
        Assert.Equal(1, new CaseStatistic.MeanOfWorst(25).Of([.. values], isHigherBetter: true));
        Assert.Equal(9, new CaseStatistic.Worst().Of([.. values], isHigherBetter: false));
        Assert.Equal(1, new CaseStatistic.Worst().Of([.. values], isHigherBetter: true));
    }

    [Fact]
    public void Case_that_does_not_fly_is_the_worst_of_all_and_no_part_of_a_mean()
    {
        double[] values = [2, double.NaN, 4, 3];
        Assert.Equal(3, new CaseStatistic.Mean().Of([.. values], false));
        Assert.Equal(double.PositiveInfinity, new CaseStatistic.Worst().Of([.. values], isHigherBetter: false));
        Assert.Equal(double.NegativeInfinity, new CaseStatistic.Worst().Of([.. values], isHigherBetter: true));
        Assert.Equal(double.PositiveInfinity, new CaseStatistic.MeanOfWorst(50).Of([.. values], isHigherBetter: false));
        Assert.Equal(4, new CaseStatistic.Percentile(75).Of([.. values], isHigherBetter: false));
        Assert.Equal(2, new CaseStatistic.Percentile(50).Of([.. values], isHigherBetter: true));
        Assert.Equal(0.5, new CaseStatistic.Share(3, double.PositiveInfinity, "at least 3").Of([.. values], false));
    }

    [Fact]
    public void Equal_values_give_that_value_to_the_last_bit_and_no_spread()
    {
        double[] values = [.. Enumerable.Repeat(0.1, 256)];
        Assert.Equal(0.1, new CaseStatistic.Mean().Of([.. values], false));
        Assert.Equal(0, new CaseStatistic.StandardDeviation().Of([.. values], false));
        Assert.Equal(0.1, new CaseStatistic.MeanOfWorst(10).Of([.. values], false));
    }
}
