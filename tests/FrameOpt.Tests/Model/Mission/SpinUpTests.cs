using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;

namespace FrameOpt.Tests.Model.Mission;

/// <summary>How quickly the throttle may be opened, on a body whose yaw moment can be worked by hand: no thrust, no drag, 100 kg hung
/// 100 mm behind and 150 mm below the hang points, which reclines until its weight is below them.</summary>
/// <remarks>
/// By hand: K_psi = 980.665 N x 0.44 m x 3.8 m / (4 x 7 m) = 58.5597 N·m. The shaft points up by the recline, whose sine is
/// 100/hypot(100, 150) = 0.554700, so a torque Q yaws the body with 0.5547 Q; with no thrust the risers hold all of it. At 40 N·m the twist
/// margin is 58.5597/22.188 = 2.6392. It is 2 at 52.785 N·m, 12.785 more. At 2000 rpm the propeller of 0.085 kg·m² holds
/// 0.085 x 209.4395 = 17.8024 N·m·s, which 12.785 N·m give in 1.3924 s.
/// </remarks>
public class SpinUpTests
{
    private const double Steady = 40, Rpm = 2000, Speed = 10, Diameter = 1.3, Inertia = 0.085;
    private const string Digits = "figures by hand to the last printed digit";

    [Fact]
    public void Shortest_time_is_the_momentum_of_the_propeller_over_the_torque_the_risers_still_hold()
    {
        var spin = Opened(Inertia, null, 2);
        Check.Close(2.6392, spin.SteadyMargin, absolute: 5e-4, because: Digits);
        Check.Close(12.785, spin.ExtraNewtonMetres, absolute: 5e-3, because: Digits);
        Check.Close(1.3924, spin.ShortestSeconds, absolute: 5e-4, because: Digits);
    }

    // Law: a propeller that takes that much more torque at the same speed leaves just the bound.
    [Fact]
    public void Whole_model_with_the_torque_so_raised_is_at_the_bound()
    {
        var spin = Opened(Inertia, null, 2);
        var raised = Steady + Inertia * 2 * Math.PI * Rpm / 60 / spin.ShortestSeconds;
        var design = Flight(raised, 0, null).Evaluate(Geometry);
        Check.Close(2, design.Phases[0][PhaseQuantity.TwistMargin], relative: 1e-9, because: "found by halving to the last digits");
    }

    // By hand: 48 N·m at most at the propeller leave 58.5597/(0.5547 x 48) = 2.1994, above 2; 60 N·m would leave 1.7595.
    [Theory]
    [InlineData(48, 2.1994, 0)]
    [InlineData(60, 1.7595, 1.3924)]
    public void Engine_that_cannot_give_the_torque_may_be_opened_in_any_time(double most, double margin, double seconds)
    {
        var spin = Opened(Inertia, most, 2);
        Check.Close(most, spin.EngineTorqueNewtonMetres, relative: 1e-12, because: "arithmetic only");
        Check.Close(margin, spin.EngineMargin, absolute: 5e-4, because: Digits);
        Check.Close(seconds, spin.ShortestSeconds, absolute: 5e-4, because: Digits);
    }

    [Fact]
    public void Bound_that_the_steady_torque_breaks_is_kept_by_no_time() =>
        Assert.True(double.IsPositiveInfinity(Opened(Inertia, null, 3).ShortestSeconds));

    [Fact]
    public void Propeller_of_unknown_inertia_has_no_time_unless_the_engine_cannot_give_the_torque()
    {
        Assert.True(double.IsNaN(Opened(0, null, 2).ShortestSeconds));
        Assert.True(double.IsNaN(Opened(0, 60, 2).ShortestSeconds));
        Assert.Equal(0, Opened(0, 48, 2).ShortestSeconds);
    }

    [Fact]
    public void It_is_judged_in_the_launch_and_without_one_where_the_torque_is_largest()
    {
        var mission = WorkedMachine.Mission;
        Assert.Equal(0, SpinUp.PhaseOf(mission.Evaluate(WorkedMachine.Geometry(440, 25, 150, 0))));
        var settled = new MissionModel(mission.Machine, mission.Wing, [.. mission.Phases.Skip(1)], ResponseReferences.None);
        Assert.Equal("climb", settled.Phases[SpinUp.PhaseOf(settled.Evaluate(WorkedMachine.Geometry(440, 25, 150, 0)))!.Value].Name);
        var glide = new MissionModel(mission.Machine, mission.Wing, [mission.Phases[^1]], ResponseReferences.None);
        Assert.Null(SpinUp.PhaseOf(glide.Evaluate(WorkedMachine.Geometry(440, 25, 150, 0))));
    }

    private static FrameGeometry Geometry => FrameGeometry.On(Flight(Steady, 0, null).Machine, 0.44, 0, 0.15, 0);

    private static SpinUp Opened(double inertia, double? most, double least) =>
        SpinUp.Of(Flight(Steady, inertia, most), Geometry, 0, least);

    private static MissionModel Flight(double torque, double inertia, double? most)
    {
        var density = Atmosphere.DensityKgPerM3(0, 0);
        var power = torque * 2 * Math.PI / (density * Math.Pow(Rpm / 60, 2) * Math.Pow(Diameter, 5));
        var machine = new Machine(
            [new MassItem("pilot", 100, new FramePoint(-0.1, 0, 0), true)],
            0,
            new Propeller(Diameter, Rotation.CounterClockwise, new FramePoint(0, 0, 0), 0, inertia,
                new PropellerTable([new(0, 0, power), new(1, 0, power)])),
            most is { } given ? new Engine(new LinearTable([1000, 9000], [given * Atmosphere.SeaLevelDensityKgPerM3 / density,
                given * Atmosphere.SeaLevelDensityKgPerM3 / density]), 1, 1) : null,
            new Pilot(0.08, 0, new FramePoint(0, 0, 0)));
        var phase = new Phase("run", 1, new FlightSpeed.AtAirspeed(Speed), new PhasePower.AtRpm(Rpm));
        return new MissionModel(machine, WorkedMachine.Wing, [phase], ResponseReferences.None);
    }
}
