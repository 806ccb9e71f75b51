using CsCheck;
using FrameOpt.Model;
using FrameOpt.Tests.Model.Derivation;
using MathNet.Numerics.Interpolation;
using MathNet.Numerics.LinearRegression;

namespace FrameOpt.Tests.Model;

/// <summary>Every measured point: UIUC Propeller Database, see References/README.md.</summary>
public class BenchPropellerTests
{
    public static TheoryData<PublishedPropeller> OtherBlades => [PublishedPropeller.FlatPitch, PublishedPropeller.Navy];

    // With x = J/J0, CT/CT0 = (1 - x)(1 + a x) and CP/CP0 = 1 + b x + c x² + d x³: least squares with a solver of others.
    [Fact]
    public void Shape_is_the_least_squares_fit_to_the_points_of_one_blade_and_its_errors_are_those_published()
    {
        var blade = PublishedPropeller.Fitted;
        Assert.Equal(19, blade.Rows.Count);
        double[] x = [.. blade.Rows.Select(row => row.AdvanceRatio / blade.ZeroThrustAdvanceRatio)];
        double[] thrust = [.. blade.Rows.Select(row => row.ThrustCoefficient / blade.Rows[0].ThrustCoefficient)];
        double[] power = [.. blade.Rows.Select(row => row.PowerCoefficient / blade.Rows[0].PowerCoefficient)];
        var a = MultipleRegression.QR(
            [.. x.Select(at => new[] { at * (1 - at) })], [.. thrust.Zip(x, (value, at) => value - (1 - at))])[0];
        var b = MultipleRegression.QR([.. x.Select(at => new[] { at, at * at, at * at * at })], [.. power.Select(value => value - 1)]);
        double Thrust(double at) => (1 - at) * (1 + a * at);
        double Power(double at) => 1 + at * (b[0] + at * (b[1] + at * b[2]));

        var shape = new BenchPropeller(1, 1, 1);
        foreach (var at in Enumerable.Range(0, 21).Select(i => i / 20.0))
        {
            Check.Close(Thrust(at), shape.ThrustCoefficient(at), absolute: 2e-5, because: "one coefficient of four decimals, times 1/4");
            Check.Close(Power(at), shape.PowerCoefficient(at), absolute: 1.5e-4, because: "three coefficients of four decimals");
        }

        const string digits = "published to four decimals";
        Check.Close(x.Zip(thrust, (at, value) => Math.Abs(value - Thrust(at))).Max(), BenchPropeller.LargestThrustShapeError,
            absolute: 1e-4, because: digits);
        Check.Close(x.Zip(power, (at, value) => Math.Abs(value - Power(at))).Max(), BenchPropeller.LargestPowerShapeError,
            absolute: 1.5e-4, because: digits);
    }

    // How far one measured blade is from another, point by point, is all that the shape of the one can be blamed for in the other. To it
    // comes
    // the distance of the shape from its own blade.
    [Theory]
    [MemberData(nameof(OtherBlades))]
    public void Shape_carries_over_to_another_blade_as_well_as_the_measured_curve_of_the_first(PublishedPropeller other)
    {
        var (shape, still) = (other.Rescaled, other.Rows[0]);
        var measured = MeasuredShape.Of(PublishedPropeller.Fitted);
        var points = other.Rows.Where(row => row.AdvanceRatio / other.ZeroThrustAdvanceRatio <= measured.Last).ToList();
        Assert.True(points.Count >= 12);
        double Largest(Func<PropellerRow, double> distance) => points.Max(row => Math.Abs(distance(row)));
        double Part(PropellerRow row) => row.AdvanceRatio / other.ZeroThrustAdvanceRatio;
        Assert.InRange(
            Largest(row => (row.ThrustCoefficient - shape.ThrustCoefficient(row.AdvanceRatio)) / still.ThrustCoefficient),
            0,
            Largest(row => row.ThrustCoefficient / still.ThrustCoefficient - measured.Thrust(Part(row)))
                + BenchPropeller.LargestThrustShapeError);
        Assert.InRange(
            Largest(row => (row.PowerCoefficient - shape.PowerCoefficient(row.AdvanceRatio)) / still.PowerCoefficient),
            0,
            Largest(row => row.PowerCoefficient / still.PowerCoefficient - measured.Power(Part(row)))
                + BenchPropeller.LargestPowerShapeError);
    }

    // What the balance lives on: the torque that goes with a demanded thrust at an airspeed, whatever the rpm.
    // T/(rho V² D²) = CT/J² and 2 pi Q/(rho V² D³) = CP/J². Beyond 0.8 J0 both vanish.
    [Theory]
    [MemberData(nameof(PublishedPropeller.All), MemberType = typeof(PublishedPropeller))]
    public void Torque_of_a_demanded_thrust_is_that_of_the_measured_curve(PublishedPropeller propeller)
    {
        var (shape, still, j0) = (propeller.Rescaled, propeller.Rows[0], propeller.ZeroThrustAdvanceRatio);
        var measured = MeasuredShape.Of(PublishedPropeller.Fitted);
        foreach (var row in propeller.Rows.Where(row => row.AdvanceRatio > 0 && row.AdvanceRatio <= 0.8 * j0))
        {
            var demand = row.ThrustCoefficient / (row.AdvanceRatio * row.AdvanceRatio);
            var j = AdvanceRatioForThrust(shape.ThrustCoefficient, j0, demand);
            var measuredJ = AdvanceRatioForThrust(at => still.ThrustCoefficient * measured.Thrust(at / j0), measured.Last * j0, demand);
            Check.Close(
                still.PowerCoefficient * measured.Power(measuredJ / j0) / (measuredJ * measuredJ),
                shape.PowerCoefficient(j) / (j * j),
                relative: 0.01,
                because: "the shape's error in CP is 0.008 of CP0 and CP at 0.8 J0 is above half of CP0; its error in CT shifts J by less");
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

    // The same with the measured curve in place of the shape, and with the J0/(p/D) of the three blades as measured.
    [Theory]
    [InlineData(0.5)]
    [InlineData(0.8)]
    public void Spread_of_zero_thrust_moves_the_torque_of_a_demanded_thrust_as_on_the_measured_curve(double share)
    {
        var measured = MeasuredShape.Of(PublishedPropeller.Fitted);
        double MeasuredTorque(double j0, double demand)
        {
            var j = AdvanceRatioForThrust(at => 0.105 * measured.Thrust(at / j0), measured.Last * j0, demand);
            return 0.05 * measured.Power(j / j0) / (j * j);
        }

        double[] ratios = [.. new[] { PublishedPropeller.Navy, PublishedPropeller.Fitted, PublishedPropeller.FlatPitch }
            .Select(blade => blade.ZeroThrustAdvanceRatio / blade.PitchOverDiameter)];
        var middle = new BenchPropeller(0.105, 0.05, BenchPropeller.PitchToZeroThrust * 0.65);
        var j = share * middle.ZeroThrustAdvanceRatio;
        var demand = middle.ThrustCoefficient(j) / (j * j);
        foreach (var (ratio, k) in new[]
        {
            (ratios[0], BenchPropeller.LowestPitchToZeroThrust),
            (ratios[2], BenchPropeller.HighestPitchToZeroThrust),
        })
        {
            var other = new BenchPropeller(0.105, 0.05, k * 0.65);
            var otherJ = AdvanceRatioForThrust(other.ThrustCoefficient, other.LargestAdvanceRatio, demand);
            var moved = other.PowerCoefficient(otherJ) / (otherJ * otherJ) / (middle.PowerCoefficient(j) / (j * j));
            Check.Close(MeasuredTorque(ratio * 0.65, demand) / MeasuredTorque(ratios.Average() * 0.65, demand), moved, absolute: 0.01,
                because: "as far as shape and measured curve differ in the torque of a demanded thrust");
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

    // CT/J² falls all the way from infinity at J = 0 to nothing at J0.
    private static double AdvanceRatioForThrust(Func<double, double> thrustCoefficient, double last, double thrustOverDynamicPressure) =>
        Root.Between(1e-3 * last, last, j => thrustCoefficient(j) / (j * j) - thrustOverDynamicPressure);

    /// <summary>CT/CT0 and CP/CP0 over x = J/J0 of a measured blade, straight between its points.</summary>
    private sealed record MeasuredShape(Func<double, double> Thrust, Func<double, double> Power, double Last)
    {
        public static MeasuredShape Of(PublishedPropeller blade)
        {
            double[] x = [.. blade.Rows.Select(row => row.AdvanceRatio / blade.ZeroThrustAdvanceRatio)];
            Func<double, double> Curve(Func<PropellerRow, double> coefficient) =>
                LinearSpline.InterpolateSorted(x, [.. blade.Rows.Select(row => coefficient(row) / coefficient(blade.Rows[0]))]).Interpolate;
            return new MeasuredShape(Curve(row => row.ThrustCoefficient), Curve(row => row.PowerCoefficient), x[^1]);
        }
    }
}
