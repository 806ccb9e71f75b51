using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;

namespace FrameOpt.Tests.Model.Mission;

public class BalancedBandsTests
{
    private const int Cruise = 2;
    private const string Halved = "some 10 rpm halved twenty times is 1e-5 rpm, which moves the residual by less than a millionth";

    /// <summary>Residual at any rpm at the airspeed of a phase, settled or not as it is, from the model itself.</summary>
    private static double Residual(Phase phase, FrameGeometry geometry, double rpm)
    {
        var at = phase with { Power = new PhasePower.AtRpm(rpm), PitchRateRadiansPerSecond = 0, Settled = phase.IsSettled };
        var design = new MissionModel(WorkedMachine.Machine with { Engine = null }, WorkedMachine.Wing, [at],
            ResponseReferences.None).Evaluate(geometry);
        return design.Failure is null ? design.Phases[0][PhaseQuantity.Residual] : double.NaN;
    }

    [Fact]
    public void Residual_meets_the_limit_at_the_ends_of_a_band_and_stays_within_it_between() =>
        Gen.Select(Gen.Double[5, 45], Gen.Double[100, 300], Gen.Int[0, 4], Gen.Double[0.01, 12]).Sample(
            (offset, height, index, limit) =>
            {
                var geometry = WorkedMachine.Geometry(440, offset, height, 0);
                var phase = WorkedMachine.Phases[index];
                var curve = new BalancedBands(WorkedMachine.Mission, index).Curve(geometry);
                var (low, high) = (curve[0].Rpm, curve[^1].Rpm);
                var bands = new BalancedBands(WorkedMachine.Mission, index).Find(geometry, limit);
                foreach (var band in bands)
                {
                    Assert.True(low <= band.FromRpm && band.FromRpm <= band.ToRpm && band.ToRpm <= high);
                    if (band.FromRpm > low)
                    {
                        Check.Close(limit, Math.Abs(Residual(phase, geometry, band.FromRpm)), absolute: 1e-6, because: Halved);
                        Assert.True(Math.Abs(Residual(phase, geometry, band.FromRpm - 0.1)) > limit);
                    }

                    if (band.ToRpm < high)
                    {
                        Check.Close(limit, Math.Abs(Residual(phase, geometry, band.ToRpm)), absolute: 1e-6, because: Halved);
                        Assert.True(Math.Abs(Residual(phase, geometry, band.ToRpm + 0.1)) > limit);
                    }

                    for (var i = 1; i < 10; i++)
                        Assert.True(Math.Abs(Residual(phase, geometry, band.FromRpm + i * (band.ToRpm - band.FromRpm) / 10)) <= limit);
                }

                foreach (var point in curve)
                    Assert.Equal(bands.Any(band => band.FromRpm <= point.Rpm && point.Rpm <= band.ToRpm),
                        Math.Abs(point.ResidualNewtonMetres) <= limit);
            },
            iter: 15);

    // The rpm of the cruise itself, 1645, and its residual of -0.4347 N·m stand in the worked balance (References/README.md).
    [Fact]
    public void Cruise_of_the_worked_balance_lies_in_the_band_of_its_own_residual()
    {
        var geometry = WorkedMachine.Geometry(440, 25, 150, 0);
        bool Within(double limit) => new BalancedBands(WorkedMachine.Mission, Cruise).Find(geometry, limit)
            .Any(band => band.FromRpm <= 1644.967 && 1644.967 <= band.ToRpm);
        Assert.True(Within(0.4348));
        Assert.False(Within(0.4346));
    }

    // Worked by hand: 100 kg (980.665 N) hung 10 mm to the left of the middle, risers that let nothing roll, no thrust: the residual is
    // Q - 9.80665 N·m with Q = CP rho n² D⁵ / 2 pi. With CP 0.05, D 1.3 m and 1.225 kg/m³: Q = 0.0361947 n², 5 N·m either way at
    // n = sqrt(4.80665 / 0.0361947) = 11.5239 and sqrt(14.80665 / 0.0361947) = 20.2259 revolutions per second.
    [Fact]
    public void Band_of_a_body_that_cannot_roll_is_where_torque_and_weight_differ_by_the_limit()
    {
        var bands = new BalancedBands(Stiff(largestRatio: 2, engine: null), 0).Find(StiffGeometry, 5);
        var band = Assert.Single(bands);
        Check.Close(60 * 11.5239, band.FromRpm, absolute: 0.01, because: "six printed digits");
        Check.Close(60 * 20.2259, band.ToRpm, absolute: 0.01, because: "six printed digits");
    }

    // The zero lies between two points of the scan. dQ/dn = 2 x 0.0361947 x 16.4604 = 1.19156 N·m s, so 0.001 N·m either way is 60 x 0.002
    // / 1.19156 = 0.1007 rpm.
    [Fact]
    public void Band_narrower_than_a_step_of_the_scan_is_found()
    {
        var band = Assert.Single(new BalancedBands(Stiff(largestRatio: 2, engine: null), 0).Find(StiffGeometry, 0.001));
        Check.Close(60 * Math.Sqrt(9.80665 / 0.0361947), (band.FromRpm + band.ToRpm) / 2, absolute: 0.01, because: "six printed digits");
        Check.Close(0.1007, band.ToRpm - band.FromRpm, absolute: 1e-4, because: "four printed digits");
    }

    // Range by hand: 60 x 10 / (1.3 x 0.5) = 923 rpm from the propeller; the engine's table ends at 3000 / 2.5 = 1200 rpm of the propeller.
    [Fact]
    public void Band_ends_with_the_propeller_and_with_the_engine_however_weak()
    {
        var weak = new Engine(new LinearTable([1000, 3000], [0.1, 0.1]), 2.5, 1);
        var mission = Stiff(largestRatio: 0.5, weak);
        var band = Assert.Single(new BalancedBands(mission, 0).Find(StiffGeometry, 1000));
        Check.Close(923.0769, band.FromRpm, absolute: 0.001, because: "printed digits");
        Check.Close(1200, band.ToRpm, absolute: 1e-6, because: "arithmetic only");
        Assert.Equal(241, new BalancedBands(mission, 0).Curve(StiffGeometry).Count);
    }

    // Without a smallest advance ratio and without an engine the tips set the end: 340 m/s over pi x 1.3 m is 4995 rpm.
    [Fact]
    public void Curve_ends_where_the_tips_reach_the_speed_of_sound() => Check.Close(
        4995.0, new BalancedBands(Stiff(largestRatio: 0.5, engine: null), 0).Curve(StiffGeometry)[^1].Rpm, absolute: 0.5,
            because: "four printed digits");

    // The engine's table ends at 800 rpm of the propeller, below the 923 rpm at which its curve begins.
    [Fact]
    public void No_band_is_found_where_engine_and_propeller_have_no_speed_in_common()
    {
        var mission = Stiff(largestRatio: 0.5, new Engine(new LinearTable([1000, 2000], [20, 20]), 2.5, 1));
        Assert.Empty(new BalancedBands(mission, 0).Find(StiffGeometry, 1000));
        Assert.Empty(new BalancedBands(mission, 0).Curve(StiffGeometry));
    }

    // Risers 22 mm apart hold 980.665 x 0.011 = 10.8 N·m of roll: beyond it one is slack and the band ends there.
    [Fact]
    public void Rpm_at_which_the_design_cannot_fly_is_outside_every_band()
    {
        var geometry = StiffGeometry with { SpacingMetres = 0.022 };
        var band = Assert.Single(new BalancedBands(Stiff(largestRatio: 2, engine: null), 0).Find(geometry, 1000));
        Check.Close(60 * Math.Sqrt((980.665 * 0.011 + 9.80665) / 0.0361947), band.ToRpm, absolute: 0.01, because: "six printed digits");
        Assert.True(double.IsNaN(new BalancedBands(Stiff(largestRatio: 2, engine: null), 0).Curve(geometry)[^1].ResidualNewtonMetres));
    }

    private static FrameGeometry StiffGeometry { get; } = FrameGeometry.On(Stiff(1, null).Machine, 0.44, 0.010, 0.15, 0);

    private static MissionModel Stiff(double largestRatio, Engine? engine)
    {
        var machine = new Machine(
            [new MassItem("pilot", 100, new FramePoint(0, 0, 0), true)],
            0,
            new Propeller(1.3, Rotation.CounterClockwise, new FramePoint(0, 0, 0), 0, 0.1,
                new PropellerTable([new(0, 0, 0.05), new(largestRatio, 0, 0.05)])),
            engine,
            new Pilot(0.08, 0, new FramePoint(0, 0, 0)));
        var wing = WorkedMachine.Wing with { RiserCoupling = new RiserCoupling.Measured(1e9, 0.44) };
        var phase = new Phase("stiff", 1, new FlightSpeed.AtAirspeed(10), new PhasePower.EngineOff(), PitchRateRadiansPerSecond: 1);
        return new MissionModel(machine, wing, [phase], ResponseReferences.None);
    }
}
