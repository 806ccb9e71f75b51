using FrameOpt.Studies.Noise;

namespace FrameOpt.Tests.Uncertainty;

/// <summary>Quantiles of the spreads: closed forms, and the normal distribution of another program (NormalDist of Python 3).</summary>
public class SpreadTests
{
    [Theory]
    [InlineData(0.5, 0)]
    [InlineData(0.975, 0.01959963984540)]
    [InlineData(0.1, -0.01281551565545)]
    public void Normal_is_the_table_s_times_its_standard_deviation(double probability, double expected) =>
        Check.Close(expected, new Spread.Normal(0.010).Quantile(probability), relative: 1e-11, absolute: 1e-16, because: "printed digits");

    [Theory]
    [InlineData(0.9, -1, 1, 0.7490145989695701)]
    [InlineData(0.25, -0.5, 2, -0.06090955207738298)]
    public void Normal_cut_at_both_ends_is_that_of_another_program(double probability, double from, double to, double expected) =>
        Check.Close(expected, new Spread.Normal(1, from, to).Quantile(probability), absolute: 2e-9, because: "printed digits");

    [Fact]
    public void Normal_cut_at_an_end_never_goes_beyond_it()
    {
        var spread = new Spread.Normal(1, -1, 2);
        Assert.All(new[] { 1e-15, 0.5, 1 - 1e-15 }, probability => Assert.InRange(spread.Quantile(probability), -1, 2));
    }

    [Theory]
    [InlineData(0.1, -2.4)]
    [InlineData(0.5, 0)]
    [InlineData(0.75, 1.5)]
    public void Uniform_is_a_straight_line(double probability, double expected) =>
        Check.Close(expected, new Spread.Uniform(-3, 3).Quantile(probability), absolute: 1e-15, because: "rounding");

    // Closed form: a + sqrt(p (b - a)(c - a)) below the peak c, b - sqrt((1 - p)(b - a)(b - c)) above it.
    [Fact]
    public void Triangle_has_the_closed_form_on_both_sides_of_its_peak()
    {
        Check.Close(-1 + Math.Sqrt(0.2), new Spread.Triangle(-1, 0, 1).Quantile(0.1), absolute: 1e-14, because: "rounding");
        Check.Close(4 - Math.Sqrt(1.2), new Spread.Triangle(0, 1, 4).Quantile(0.9), absolute: 1e-14, because: "rounding");
        Check.Close(Math.Sqrt(0.4), new Spread.Triangle(0, 1, 4).Quantile(0.1), absolute: 1e-14, because: "rounding");
    }

    [Theory]
    [InlineData(0.1, -2)]
    [InlineData(0.4, -1)]
    [InlineData(0.9, 3)]
    public void Table_has_each_of_its_deviations_equally_often(double probability, double expected) =>
        Assert.Equal(expected, new Spread.Table([-2, -1, 3]).Quantile(probability));

    [Fact]
    public void Usual_spreads_leave_the_study_s_value_in_the_middle() => Assert.All(NoiseSource.All, source =>
        Check.Close(0, source.Usual.Quantile(0.5), absolute: 1e-15, because: "rounding"));
}
