using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Model.Propulsion;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>What the trade says of such frames and the model must not contradict. Common practice, no source.</summary>
public class CommonPracticeTests
{
    private static readonly double[] heights = [0.10, 0.15, 0.20, 0.25, 0.30, 0.35, 0.40];

    // Common practice, no source: 25 mm of offset puts roughly 15 kgf more on one side; 2 x 120 kgf x 25 mm / 400 mm.
    [Fact]
    public void Offset_of_25_millimetres_puts_15_kgf_more_on_one_scale()
    {
        var machine = new Machine(
            [new MassItem("pilot", 120, new FramePoint(0, 0, 0), true)], 0, WorkedMachine.Machine.Propeller, null,
                WorkedMachine.Machine.Pilot);
        var check = HangCheck.Of(machine, FrameGeometry.On(machine, 0.400, 0.025, 0.15, 0));
        Check.Close(-15, check.DifferenceNewtons / Constants.NewtonsPerKilogramForce, absolute: 1e-9, because: "arithmetic only");
    }

    // Common practice, no source: about 25 mm of offset suits an average pilot and engine in level flight. A millimetre of one-sided line
    // trim is about 1.2 N·m (own estimate), so within 3 N·m the wing's own trim decides.
    [Fact]
    public void Offset_of_25_millimetres_suits_level_flight()
    {
        double Cruise(double offset) =>
            WorkedMachine.Mission.Evaluate(WorkedMachine.Geometry(440, offset, 150, 0)).Phases[2][PhaseQuantity.Residual];
        Assert.InRange(Cruise(25), -3, 3);
        Assert.True(Cruise(10) > 3);
        Assert.True(Cruise(40) < -3);
    }

    // Common practice, no source. Exact at one advance ratio; at one airspeed the advance ratio moves and with it the coefficient.
    [Fact]
    public void Torque_grows_with_the_square_of_rpm()
    {
        double Torque(double rpm, double speed) =>
            new Powertrain(WorkedMachine.Machine.Propeller, null, speed, 1.2).AtRpm(rpm).TorqueNewtonMetres;
        Check.Close(4, Torque(2400, 16) / Torque(1200, 8), relative: 1e-12, because: "the same advance ratio");
        Check.Close(
            Math.Pow(2400.0 / 1800, 2), Torque(2400, 10) / Torque(1800, 10), relative: 0.1,
                because: "at one airspeed the square is a rule of thumb");
    }

    // Common practice, no source: a fixed offset is right at one power only; more power turns it with the reaction, none the other way.
    [Fact]
    public void Fixed_offset_is_right_at_one_power_only()
    {
        double Residual(double offsetMillimetres, int phase) =>
            WorkedMachine.Mission.Evaluate(WorkedMachine.Geometry(440, offsetMillimetres, 150, 0)).Phases[phase][PhaseQuantity.Residual];
        const int climb = 1, cruise = 2, accelerated = 3, glide = 4;
        double none = Residual(0, cruise), some = Residual(20, cruise);
        var right = 20 * none / (none - some);
        Check.Close(0, Residual(right, cruise), absolute: 1e-9, because: "the residual is straight in the offset");
        Assert.InRange(right, 15, 40);
        Assert.True(Residual(right, climb) > PhaseResult.StraightWithinNewtonMetres);
        Assert.True(Residual(right, accelerated) > PhaseResult.StraightWithinNewtonMetres);
        Assert.True(Residual(right, glide) < -PhaseResult.StraightWithinNewtonMetres);
        Assert.True(Residual(0, climb) > Residual(0, cruise));
    }

    // Common practice, no source: the higher the suspension, the more it balances itself and the less weight shift does.
    [Fact]
    public void Higher_suspension_balances_itself_more_and_leaves_less_to_weight_shift()
    {
        var designs = heights.Select(height => WorkedMachine.Mission.Evaluate(WorkedMachine.Geometry(440, 25, 1000 * height, 0))).ToList();
        Assert.All(designs, design => Assert.Null(design.Failure));
        for (var p = 0; p < 5; p++)
        {
            foreach (var (low, high) in designs.Zip(designs.Skip(1)))
            {
                Assert.True(high.Phases[p][PhaseQuantity.PendulumShare] < low.Phases[p][PhaseQuantity.PendulumShare]);
                Assert.True(high.Phases[p][PhaseQuantity.WeightShiftAuthority] < low.Phases[p][PhaseQuantity.WeightShiftAuthority]);
            }
        }
    }
}
