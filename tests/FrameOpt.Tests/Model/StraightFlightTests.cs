using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Balance;
using FrameOpt.Studies;

namespace FrameOpt.Tests.Model;

/// <summary>How a wing flies straight, and turns, under moments at the hang points: each formula against plain geometry, the equations it
/// solves, or published slopes.</summary>
public class StraightFlightTests
{
    private const string Arithmetic = "arithmetic only";
    private static readonly Wing wing = WorkedMachine.Wing;

    // Source: H. Belloc, "Wind Tunnel Investigation of a Rigid Paraglider Reference Wing", J. Aircraft 52(2), 2015, 703-708,
    // doi 10.2514/1.C032513. The slopes are read from drawings, as in P. F. Heatwole's MSc thesis, 2022: per radian, body axes, about a
    // point 8 m below a wing of 13.64 m flat span.
    private static readonly (double AngleOfAttack, double Roll, double Yaw)[] published =
        [(0, -0.644, 0.141), (5, -0.667, 0.320), (10, -0.731, 0.499)];

    // A smaller angle of attack is a faster flight.
    [Fact]
    public void Leverage_of_the_published_wing_grows_with_speed_as_that_of_a_speed_factor_does()
    {
        double[] fasterAndFaster = [.. published.Reverse().Select(slopes =>
            StraightFlight.SideslipLeverage(new YawLeverage.FromSideslip(slopes.Roll, slopes.Yaw, 0.5), 10))];
        double[] ofSpeed = [.. new[] { 8.5, 10.5, 14 }.Select(speed =>
            StraightFlight.SideslipLeverage(new YawLeverage.FromSpeed(0.17, 0.5), speed))];
        Assert.All(fasterAndFaster.Zip(fasterAndFaster.Skip(1)), pair => Assert.True(pair.Second > pair.First));
        Assert.All(ofSpeed.Zip(ofSpeed.Skip(1)), pair => Assert.True(pair.Second > pair.First));
    }

    // By hand: 0.667/0.320.
    [Fact]
    public void Published_slopes_at_five_degrees_give_a_leverage_of_2_084_before_the_twist_of_the_wing()
    {
        foreach (var roll in new[] { -0.667, 0.667 })
        {
            Check.Close(2.084, StraightFlight.SideslipLeverage(new YawLeverage.FromSideslip(roll, 0.320, 1), 12), absolute: 5e-4,
                because: "four printed digits");
        }
    }

    // By hand: 0.17 x 10.7333 = 1.824661 and, for a number, the number.
    [Fact]
    public void Leverage_is_the_speed_factor_times_the_airspeed_or_the_number_given()
    {
        Check.Close(1.824661, StraightFlight.SideslipLeverage(new YawLeverage.FromSpeed(0.17, 1), 10.7333), absolute: 1e-9,
            because: Arithmetic);
        Check.Close(0, StraightFlight.SideslipLeverage(new YawLeverage.FromSpeed(0.17, 1), 1e-9), absolute: 1e-9, because: Arithmetic);
        Assert.Equal(0.6, StraightFlight.SideslipLeverage(new YawLeverage.Constant(0.6), 10.7333));
    }

    // By hand: 2 x 0.17 x 0.5 x (1.2 x 100/2) x 25 x 10.8/3.8 = 0.17 x 60 x 71.05263; at 8 m/s 0.17 x 38.4 x 71.05263.
    [Theory]
    [InlineData(8, 463.8316)]
    [InlineData(10, 724.7368)]
    [InlineData(14, 724.7368)]
    public void Twisted_wing_takes_the_pressure_of_the_phase_up_to_trim_speed_and_that_of_trim_above(double speed, double newtons) =>
        Check.Close(
            newtons,
            StraightFlight.TwistedWingNewtons(wing with { YawLeverage = new YawLeverage.FromSpeed(0.17, 0.5) }, 1.2, speed, 10),
            absolute: 5e-5, because: "seven printed digits");

    [Fact]
    public void Twisted_wing_counts_with_its_share_and_not_beside_a_leverage_given_as_a_number()
    {
        double Newtons(YawLeverage leverage) => StraightFlight.TwistedWingNewtons(wing with { YawLeverage = leverage }, 1.2, 10, 11);
        var half = Newtons(new YawLeverage.FromSpeed(0.17, 0.5));
        Assert.True(half > 0);
        Check.Close(2 * half, Newtons(new YawLeverage.FromSideslip(-0.7, 0.3, 1)), relative: 1e-12, because: Arithmetic);
        Assert.Equal(0, Newtons(new YawLeverage.FromSpeed(0.17, 0)));
        Assert.Equal(0, Newtons(new YawLeverage.Constant(0.6)));
    }

    // Law: lines keep their length, so the lines of one half-wing and its chord are a stiff triangle that turns about its hang point. With
    // the hang point carried aft and the wing where it was, the triangle leans forward: the half-wing pitches nose down.
    [Fact]
    public void Body_twisted_nose_right_pitches_the_right_half_of_the_wing_nose_down_and_the_left_half_nose_up() =>
        Gen.Select(Gen.Double[0.3, 0.6], Gen.Double[5, 9], Gen.Double[0.001, 0.02]).Sample((spacing, lines, twist) =>
        {
            foreach (var side in new[] { 1, -1 })
            {
                var hangPoint = new Vec(0, side * spacing / 2, 0).AboutZ(twist);
                Assert.True(side * hangPoint.X < 0, "the right hang point moves aft, the left one forward");
                var toChord = new Vec(0, 0, -lines) - new Vec(hangPoint.X, 0, 0);
                var noseUp = Math.Atan2(-toChord.X, -toChord.Z);
                Check.Close(-side * spacing * twist / (2 * lines), noseUp, relative: 1e-3, because: "small angles of up to 0.02 rad");
            }
        });

    // Law: air pushes each piece of an arched wing square to its surface, through the middle of the arc. The middle lies above the hang
    // points, because the arch is rounder than the lines are long. A right half pitched nose down is pushed less to the right and up, a
    // left half pitched nose up more to the left and up: the sum leans to the left above the hang points. A flat wing, the middle of whose
    // arc lies far below, would roll right.
    [Fact]
    public void Right_half_pitched_nose_down_turns_an_arched_wing_above_the_hang_points_left() =>
        Gen.Select(Gen.Double[3, 6], Gen.Double[0.2, 3]).Sample((radius, middleAboveHangPoints) =>
        {
            double Roll(double arcRadius, double middle) => Enumerable.Range(0, 20).Sum(i =>
            {
                var around = (i - 9.5) / 10 * 5.4 / arcRadius;
                var outwards = new Vec(0, Math.Sin(around), -Math.Cos(around));
                var place = new Vec(0, 0, -middle) + arcRadius * outwards;
                return Vec.Cross(place, -Math.Sign(around) * Math.Cos(around) * outwards).X;
            });

            Assert.True(Roll(radius, middleAboveHangPoints) < 0);
            Assert.True(Roll(100, radius + middleAboveHangPoints - 100) > 0);
        });

    // Law: bank and residual torque balance, R = q S b |Cl_phi| Phi, and a wing banked by Phi turns at g Phi/V.
    [Fact]
    public void Turn_rate_is_that_of_the_bank_that_holds_the_residual_at_trim_speed() =>
        Gen.Select(Gen.Double[7, 18], Gen.Double[0.9, 1.25], Gen.Double[0.02, 0.1], Gen.Double[0.01, 0.5]).Sample(
            (speed, density, restoring, rate) =>
            {
                var bank = rate * speed / 9.80665;
                var torque = density * speed * speed / 2 * 25 * 10.8 * restoring * bank;
                var found = torque * StraightFlight.TurnRatePerTorque(wing with { RollRestoring = restoring }, density, speed);
                Check.Close(rate, found, relative: 1e-12, because: Arithmetic);
            });

    // By hand: 9.80665/(10 x 60 x 25 x 10.8 x 0.05).
    [Fact]
    public void Turn_rate_of_one_newton_metre_at_10_metres_per_second_is_0_00121_radians_per_second() => Check.Close(
        0.001210698, StraightFlight.TurnRatePerTorque(wing, 1.2, 10), absolute: 5e-10, because: "seven printed digits");

    // Source: section 5 of docs/model.md. The factors are assumptions.
    [Fact]
    public void Least_certain_numbers_are_also_tried_low_and_high()
    {
        void Same(YawLeverage expected, YawLeverage found)
        {
            Assert.Equal(expected.GetType(), found.GetType());
            foreach (var speed in new[] { 8.0, 14 })
            {
                Check.Close(StraightFlight.SideslipLeverage(expected, speed), StraightFlight.SideslipLeverage(found, speed),
                    relative: 1e-12, because: Arithmetic);
                Assert.Equal(StraightFlight.TwistedWingNewtons(wing with { YawLeverage = expected }, 1.2, speed, 10),
                    StraightFlight.TwistedWingNewtons(wing with { YawLeverage = found }, 1.2, speed, 10));
            }
        }

        var (number, speed, slopes) =
            (new YawLeverage.Constant(0.6), new YawLeverage.FromSpeed(0.17, 0.5), new YawLeverage.FromSideslip(-0.667, 0.32, 0.5));
        Same(new YawLeverage.Constant(0.3), number.Low);
        Same(new YawLeverage.Constant(0.9), number.High);
        Same(new YawLeverage.FromSpeed(0.102, 1), speed.Low);
        Same(new YawLeverage.FromSpeed(0.272, 0), speed.High);
        Same(new YawLeverage.FromSideslip(-0.50025, 0.32, 1), slopes.Low);
        Same(new YawLeverage.FromSideslip(-0.88711, 0.32, 0), slopes.High);
        Assert.Equal(speed.Low, WingCase.LowLeverage.Of(wing with { YawLeverage = speed }).YawLeverage);
        Assert.Equal(speed.High, WingCase.HighLeverage.Of(wing with { YawLeverage = speed }).YawLeverage);
    }

    [Fact]
    public void Leverage_reads_as_its_own_numbers() => Assert.Equal(
        "FromSpeed { SpeedFactor = 0.17, TwistShare = 0.5 }", new YawLeverage.FromSpeed(0.17, 0.5).ToString());

    [Theory]
    [InlineData(WingCase.SoftCoupling, 0.05)]
    [InlineData(WingCase.StiffCoupling, 1)]
    public void Canopy_is_also_tried_soft_and_stiff_in_bending_at_every_spacing(WingCase wingCase, double metres)
    {
        var other = wingCase.Of(wing);
        Assert.Equal(wing.YawLeverage, other.YawLeverage);
        foreach (var spacing in new[] { 0.38, 0.44, 0.60 })
            Assert.Equal(metres, RiserStiffness.RollMetres(other, spacing));
        Assert.Same(wing, WingCase.AsGiven.Of(wing));
    }
}
