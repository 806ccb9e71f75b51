using CsCheck;
using FrameOpt.Model;

namespace FrameOpt.Tests.Model;

/// <summary>Every measured point: UIUC Propeller Database, see References/README.md.</summary>
public class BenchPropellerTests
{
    public static TheoryData<PublishedPropeller, double> DemandedTorque => new()
    {
        { PublishedPropeller.Fitted, 0.005 },
        { PublishedPropeller.FlatPitch, 0.018 },
        { PublishedPropeller.Navy, 0.073 },
    };

    [Fact]
    public void Shape_meets_all_points_it_is_fitted_to_within_the_published_error()
    {
        Assert.Equal(19, PublishedPropeller.Fitted.Rows.Count);
        AssertDistance(PublishedPropeller.Fitted, BenchPropeller.LargestThrustShapeError, BenchPropeller.LargestPowerShapeError,
            "the largest error of the fit, as the class publishes it");
    }

    [Fact]
    public void Shape_carries_over_to_the_flat_pitch_of_the_same_family() =>
        AssertDistance(PublishedPropeller.FlatPitch, 0.021, 0.056, "distance the documentation states for a blade of the same family");

    [Fact]
    public void Shape_is_rougher_for_another_blade() =>
        AssertDistance(PublishedPropeller.Navy, 0.071, 0.139, "distance the documentation states for an unrelated blade");

    // What the balance lives on: the torque that goes with a demanded thrust at an airspeed, whatever the rpm.
    // T/(rho V² D²) = CT/J² and 2 pi Q/(rho V² D³) = CP/J². Beyond 0.8 J0 both vanish.
    [Theory]
    [MemberData(nameof(DemandedTorque))]
    public void Torque_of_a_demanded_thrust_follows_every_blade_within_the_stated_part(PublishedPropeller propeller, double part)
    {
        var shape = propeller.Rescaled;
        foreach (var row in propeller.Rows.Where(row => row.AdvanceRatio > 0 && row.AdvanceRatio <= 0.8 * shape.ZeroThrustAdvanceRatio))
        {
            var j = AdvanceRatioForThrust(shape, row.ThrustCoefficient / (row.AdvanceRatio * row.AdvanceRatio));
            Check.Close(row.PowerCoefficient / (row.AdvanceRatio * row.AdvanceRatio), shape.PowerCoefficient(j) / (j * j),
                relative: part, because: "distance the documentation states");
        }
    }

    [Fact]
    public void Pitch_gives_the_zero_thrust_of_the_published_blades()
    {
        var ratios = new[] { PublishedPropeller.Navy, PublishedPropeller.Fitted, PublishedPropeller.FlatPitch }
            .Select(propeller => propeller.ZeroThrustAdvanceRatio / propeller.PitchOverDiameter).ToArray();
        const string rounding = "published to three decimals";
        Check.Close(ratios[0], BenchPropeller.LowestPitchToZeroThrust, absolute: 0.5e-3, because: rounding);
        Check.Close(ratios[2], BenchPropeller.HighestPitchToZeroThrust, absolute: 0.5e-3, because: rounding);
        Check.Close(ratios.Average(), BenchPropeller.PitchToZeroThrust, absolute: 0.5e-3, because: rounding);
        Check.Close(1.064 * 0.85 / 1.30, BenchPropeller.ZeroThrustFromPitch(0.85, 1.30), relative: 1e-12, because: "arithmetic only");
    }

    [Theory]
    [InlineData(0.5, 0.04)]
    [InlineData(0.8, 0.07)]
    public void Spread_of_zero_thrust_moves_the_torque_of_a_demanded_thrust_by_less_than_stated(double share, double part)
    {
        var middle = new BenchPropeller(0.105, 0.05, BenchPropeller.PitchToZeroThrust * 0.65);
        var j = share * middle.ZeroThrustAdvanceRatio;
        foreach (var k in new[] { BenchPropeller.LowestPitchToZeroThrust, BenchPropeller.HighestPitchToZeroThrust })
        {
            var other = new BenchPropeller(0.105, 0.05, k * 0.65);
            var otherJ = AdvanceRatioForThrust(other, middle.ThrustCoefficient(j) / (j * j));
            Check.Close(middle.PowerCoefficient(j) / (j * j), other.PowerCoefficient(otherJ) / (otherJ * otherJ),
                relative: part, because: "spread the documentation states");
        }
    }

    // Source: worked from CT 0.105 and CP 0.0505 at 2600 rpm, 1.25 m, 1.225 kg/m³: T 589.7 N, Q 56.42 N·m.
    [Fact]
    public void Bench_figures_give_back_the_coefficients_they_were_worked_from()
    {
        var propeller = BenchPropeller.FromStaticBench(2600, 589.7, 56.42, 1.225, 1.25, zeroThrustAdvanceRatio: 0.7);
        Check.Close(0.105, propeller.ThrustCoefficient(0), relative: 2e-4, because: "four printed digits");
        Check.Close(0.0505, propeller.PowerCoefficient(0), relative: 2e-4, because: "four printed digits");
        Assert.Equal((0, 0.7), (propeller.SmallestAdvanceRatio, propeller.LargestAdvanceRatio));
    }

    // Laws: thrust falls to exactly nothing at J0; power falls too but never below nothing.
    [Fact]
    public void Thrust_and_power_fall_all_the_way_to_zero_thrust() =>
        Gen.Select(Gen.Double[0.02, 0.2], Gen.Double[0.01, 0.1], Gen.Double[0.3, 1.2], Gen.Double[0, 1], Gen.Double[0, 1])
            .Where((_, _, _, a, b) => Math.Abs(a - b) > 1e-6)
            .Sample((ct0, cp0, j0, a, b) =>
            {
                var propeller = new BenchPropeller(ct0, cp0, j0);
                var (slow, fast) = (Math.Min(a, b) * j0, Math.Max(a, b) * j0);
                Assert.True(propeller.ThrustCoefficient(fast) < propeller.ThrustCoefficient(slow));
                Assert.True(propeller.PowerCoefficient(fast) < propeller.PowerCoefficient(slow));
                Assert.True(propeller.PowerCoefficient(fast) > 0);
                Assert.Equal(0, propeller.ThrustCoefficient(j0));
                Assert.Equal((ct0, cp0), (propeller.ThrustCoefficient(0), propeller.PowerCoefficient(0)));
            });

    [Theory]
    [InlineData(-0.001)]
    [InlineData(0.701)]
    [InlineData(double.NaN)]
    public void Backwards_or_beyond_zero_thrust_there_is_no_value(double j)
    {
        var propeller = new BenchPropeller(0.1, 0.05, 0.7);
        Assert.Throws<ArgumentOutOfRangeException>(() => propeller.ThrustCoefficient(j));
        Assert.Throws<ArgumentOutOfRangeException>(() => propeller.PowerCoefficient(j));
    }

    [Fact]
    public void Figures_that_are_not_above_zero_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new BenchPropeller(0, 0.05, 0.7));
        Assert.Throws<ArgumentOutOfRangeException>(() => BenchPropeller.FromStaticBench(2600, 590, -56, 1.225, 1.25, 0.7));
        Assert.Throws<ArgumentOutOfRangeException>(() => BenchPropeller.FromStaticBench(0, 590, 56, 1.225, 1.25, 0.7));
    }

    // Bisection: CT/J² falls all the way from infinity at J = 0 to nothing at J0.
    private static double AdvanceRatioForThrust(BenchPropeller shape, double thrustOverDynamicPressure)
    {
        var (low, high) = (0.0, shape.LargestAdvanceRatio);
        for (var i = 0; i < 60; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = shape.ThrustCoefficient(middle) / (middle * middle) > thrustOverDynamicPressure ? (middle, high) : (low, middle);
        }
        return low;
    }

    private static void AssertDistance(PublishedPropeller propeller, double thrust, double power, string because)
    {
        var shape = propeller.Rescaled;
        var still = propeller.Rows[0];
        foreach (var row in propeller.Rows.Where(row => row.AdvanceRatio <= shape.LargestAdvanceRatio))
        {
            Check.Close(row.ThrustCoefficient / still.ThrustCoefficient,
                shape.ThrustCoefficient(row.AdvanceRatio) / still.ThrustCoefficient,
                absolute: thrust, because: because);
            Check.Close(row.PowerCoefficient / still.PowerCoefficient, shape.PowerCoefficient(row.AdvanceRatio) / still.PowerCoefficient,
                absolute: power, because: because);
        }
    }
}
