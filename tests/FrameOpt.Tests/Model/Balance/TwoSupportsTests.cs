using FrameOpt.Model;
using FrameOpt.Model.Mission;

namespace FrameOpt.Tests.Model.Balance;

/// <summary>Riser loads and the bench check as a bar on two supports.</summary>
public class TwoSupportsTests
{
    // Source: worked by hand, right/left = W/2 +- (W y + M)/s with W 1176.8 N (120 kg) and M 50 N·m.
    [Theory]
    [InlineData(0.40, 713.40, 463.40)]
    [InlineData(0.45, 699.51, 477.29)]
    [InlineData(0.55, 679.31, 497.49)]
    public void Riser_loads_of_a_body_that_cannot_roll_are_those_of_a_bar_on_two_supports(double spacing, double right, double left)
    {
        var phase = Loads(spacing, offset: 0);
        const string digits = "two printed digits; W printed with one";
        Check.Close(right, phase[PhaseQuantity.LoadRight], absolute: 0.011, because: digits);
        Check.Close(left, phase[PhaseQuantity.LoadLeft], absolute: 0.011, because: digits);
    }

    // Source: the same arithmetic, M = -W y at y = -42.5 mm: the weight hangs that far to the left of the middle.
    [Fact]
    public void Riser_loads_are_equal_with_the_weight_42_5_millimetres_to_the_side() => Check.Close(
        0, Loads(0.40, offset: 0.0425)[PhaseQuantity.LoadDifference], absolute: 2 * 1176.8 * 0.00005 / 0.40,
            because: "half of the last printed digit of 42.5 mm");

    // Law: the two riser forces together carry the load and both moments, whatever the design.
    [Theory]
    [InlineData(440, 25, 150, 0)]
    [InlineData(420, 22, 230, 1.5)]
    public void Riser_loads_carry_the_load_and_the_moments_of_every_phase(double spacing, double offset, double height, double angle)
    {
        var design = WorkedMachine.Mission.Evaluate(WorkedMachine.Geometry(spacing, offset, height, angle));
        var s = spacing / 1000;
        foreach (var phase in design.Phases)
        {
            // Each riser: the load along the line, and one half of the yaw couple across it.
            var across = phase[PhaseQuantity.WingYawMoment] / s;
            var right = Math.Sqrt(Math.Pow(phase[PhaseQuantity.LoadRight], 2) - across * across);
            var left = Math.Sqrt(Math.Pow(phase[PhaseQuantity.LoadLeft], 2) - across * across);
            Check.Close(phase[PhaseQuantity.RiserLoad], right + left, relative: 1e-12, because: "arithmetic only");
            Check.Close(phase[PhaseQuantity.WingRollMoment], (right - left) * s / 2, absolute: 1e-9, because: "difference of two loads");
            Check.Close(
                phase[PhaseQuantity.LoadDifference], phase[PhaseQuantity.LoadRight] - phase[PhaseQuantity.LoadLeft], absolute: 1e-9,
                    because: "arithmetic only");
        }
    }

    // Source: 78 kg moved 1 mm along a bar 440 mm long: 2 x 78 x 9.80665 x 0.001 / 0.44 = 3.4769 N, by hand.
    [Fact]
    public void A_pilot_who_sits_a_millimetre_to_the_side_moves_the_difference_by_twice_his_share_of_the_bar()
    {
        var (machine, geometry) = (WorkedMachine.Machine, WorkedMachine.Geometry(440, 25, 150, 0));
        var check = HangCheck.Of(machine, geometry);
        Check.Close(3.4769, check.PerSeatMillimetreNewtons, absolute: 5e-5, because: "half of the last printed digit");
        var moved = new Machine([.. machine.Masses.Select(item => item.IsBody
            ? item with { At = item.At with { RightMetres = item.At.RightMetres + 0.001 } } : item)],
            machine.HangLineForwardMetres, machine.Propeller, machine.Engine, machine.Pilot);
        Check.Close(check.PerSeatMillimetreNewtons, HangCheck.Of(moved, geometry).DifferenceNewtons - check.DifferenceNewtons,
            relative: 1e-9, because: "the readings are linear in the place of a mass");
    }

    // Source: the same bar, hung with no couple: moments about each strap by hand.
    [Fact]
    public void Hang_check_reads_what_two_scales_under_a_bar_read()
    {
        var machine = WorkedMachine.Machine;
        var check = HangCheck.Of(machine, WorkedMachine.Geometry(440, 25, 150, 0));
        double weight = 113 * 9.80665, arm = 0.0011946903 - 0.025;
        Check.Close(weight, check.RightNewtons + check.LeftNewtons, relative: 1e-12, because: "arithmetic only");
        Check.Close(weight * (0.22 + arm), check.RightNewtons * 0.44, relative: 1e-9,
            because: "moments about the left strap; arm has eight digits");
        Check.Close(weight * (0.22 - arm), check.LeftNewtons * 0.44, relative: 1e-9,
            because: "moments about the right strap; arm has eight digits");
        Check.Close(2 * weight * arm / 0.44, check.DifferenceNewtons, relative: 1e-7, because: "arm has eight digits");
    }

    // Law: a strap d longer on the right lets the beam of two straps, and the body with it, lean by d/s; the centre of gravity h below
    // swings
    // sideways by h d/s, and both scales move by that share of the weight.
    [Fact]
    public void Hang_check_warns_how_far_unequal_straps_move_the_reading()
    {
        var check = HangCheck.Of(WorkedMachine.Machine, WorkedMachine.Geometry(440, 25, 150, 0));
        double weight = 113 * 9.80665, height = 0.150 - 0.0084070796, lean = Math.Asin(0.005 / 0.44);
        var swung = 2 * weight * height * Math.Sin(lean) / 0.44;
        Check.Close(swung, check.PerFiveMillimetresNewtons, relative: 1e-3, because: "a lean of 0.01 rad taken as small");
    }

    /// <summary>120 kg hung from risers too stiff to let it roll, 50 N·m of reaction to the right and no thrust.</summary>
    private static PhaseResult Loads(double spacing, double offset)
    {
        const double speed = 10, rpm = 1800, diameter = 1.3;
        var powerCoefficient = 50 * 2 * Math.PI / (Atmosphere.DensityKgPerM3(0, 0) * Math.Pow(rpm / 60, 2) * Math.Pow(diameter, 5));
        var machine = new Machine(
            [new MassItem("pilot", 120, new FramePoint(0, 0, 0), true)],
            0,
            new Propeller(diameter, Rotation.CounterClockwise, new FramePoint(0, 0, 0), 0, 0,
                new PropellerTable([new(0, 0, powerCoefficient), new(1, 0, powerCoefficient)])),
            null,
            new Pilot(0.08, 0, new FramePoint(0, 0, 0)));
        var wing = WorkedMachine.Wing with { RiserCoupling = new RiserCoupling.Measured(1e9, 0.44) };
        var phase = new Phase("bar", 1, new FlightSpeed.AtAirspeed(speed), new PhasePower.AtRpm(rpm));
        var design = new MissionModel(machine, wing, [phase], ResponseReferences.None).Evaluate(
            FrameGeometry.On(machine, spacing, offset, 0.15, 0));
        Assert.Null(design.Failure);
        return design.Phases[0];
    }
}
