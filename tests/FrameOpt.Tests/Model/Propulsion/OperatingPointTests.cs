using CsCheck;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Model.Propulsion;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Model.Propulsion;

/// <summary>Operating points of the worked machine against the definitions, written out again.</summary>
public class OperatingPointTests
{
    private const double Diameter = 1.30;
    private const string Arithmetic = "arithmetic only; roots are found to the last digits";

    private static readonly PhasePower[] powers =
        [new PhasePower.Level(), new PhasePower.Climb(1.2), new PhasePower.FullThrottle(), new PhasePower.AtRpm(2100),
            new PhasePower.EngineOff()];

    /// <summary>Altitude, temperature offset, load factor, fraction, thrust-line angle and tilt, power.</summary>
    private static readonly Gen<(Phase Phase, PhaseConditions Conditions, FrameGeometry Design, OperatingPoint Point)> flights =
        Gen.Select(Gen.Double[0, 2500], Gen.Double[-15, 25], Gen.Double[0.9, 1.2], Gen.Double[0, 1], Gen.Double[-0.1, 0.1],
            Gen.Double[-0.1, 0.2], Gen.Int[0, powers.Length - 1])
            .Select((altitude, warmer, load, fraction, angle, tilt, power) =>
            {
                var phase = new Phase("any", 1, new FlightSpeed.AtFraction(fraction), powers[power], altitude, warmer, load);
                var conditions = PhaseConditions.Of(phase, WorkedMachine.Machine, WorkedMachine.Wing);
                var design = WorkedMachine.Geometry(440, 25, 150, 0) with { AngleRadians = angle, TiltRadians = tilt };
                return (phase, conditions, design, new OperatingPointSolver(phase, conditions, WorkedMachine.Machine).For(
                    ThrustDirection.Of(design)));
            })
            .Where(flight => flight.Item4.Failure == FailureKind.None);

    // Source: constant lift coefficient, and the two straight lines of the polar: 10.4 to 13.6 m/s and 6.2 to 5.0 at 115 kg and 1.225
    // kg/m³.
    [Fact]
    public void Airspeed_and_glide_ratio_follow_the_polar() => flights.Sample(
        flight =>
        {
            var (phase, conditions, _, _) = flight;
            var fraction = ((FlightSpeed.AtFraction)phase.Speed).Fraction;
            var density = 101325 * Math.Pow(1 - 0.0065 * phase.AltitudeMetres / 288.15, 9.80665 / (287.05287 * 0.0065))
                / (287.05287 * (288.15 - 0.0065 * phase.AltitudeMetres + phase.TemperatureOffsetKelvin));
            Check.Close(density, conditions.Density, relative: 1e-12, because: Arithmetic);
            Check.Close(
                (10.4 + 3.2 * fraction) * Math.Sqrt(phase.LoadFactor * 119 / 115 * 1.225 / density),
                conditions.AirspeedMetresPerSecond,
                relative: 1e-12,
                because: Arithmetic);
            Check.Close(6.2 - 1.2 * fraction, conditions.GlideRatio, relative: 1e-12, because: Arithmetic);
        },
        iter: 500);

    [Fact]
    public void Airspeed_given_in_metres_per_second_has_the_glide_ratio_of_its_fraction()
    {
        var byFraction = new Phase("any", 1, new FlightSpeed.AtFraction(0.37), new PhasePower.Level(), 800, 10, 1.1);
        var conditions = PhaseConditions.Of(byFraction, WorkedMachine.Machine, WorkedMachine.Wing);
        var bySpeed = byFraction with { Speed = new FlightSpeed.AtAirspeed(conditions.AirspeedMetresPerSecond) };
        Check.Close(
            conditions.GlideRatio,
            PhaseConditions.Of(bySpeed, WorkedMachine.Machine, WorkedMachine.Wing).GlideRatio,
            relative: 1e-12,
            because: Arithmetic);
    }

    // Source: balance along the path, T cos psi cos tau = m g (n / G + v_climb / V).
    [Fact]
    public void Demand_phases_reproduce_the_thrust_asked() => flights.Sample(
        flight =>
        {
            var (phase, conditions, design, point) = flight;
            if (phase.Power is not (PhasePower.Level or PhasePower.Climb))
                return;
            var climb = phase.Power is PhasePower.Climb given ? given.MetresPerSecond : 0;
            var along = 119 * 9.80665 * (phase.LoadFactor / conditions.GlideRatio + climb / conditions.AirspeedMetresPerSecond);
            Check.Close(along, point.ThrustNewtons * Math.Cos(design.AngleRadians) * Math.Cos(design.TiltRadians), relative: 1e-12,
                because: Arithmetic);
        },
        iter: 500);

    [Fact]
    public void Thrust_and_torque_are_those_of_the_coefficients_at_the_rpm_found() => flights.Sample(
        flight =>
        {
            var (phase, conditions, _, point) = flight;
            if (phase.Power is PhasePower.EngineOff)
                return;
            var n = point.Rpm / 60;
            var (ct, cp) = Coefficients(conditions.AirspeedMetresPerSecond / (n * Diameter));
            Check.Close(ct * conditions.Density * n * n * Math.Pow(Diameter, 4), point.ThrustNewtons, relative: 1e-11, because: Arithmetic);
            Check.Close(cp * conditions.Density * n * n * Math.Pow(Diameter, 5) / (2 * Math.PI), point.TorqueNewtonMetres, relative: 1e-11,
                because: Arithmetic);
        },
        iter: 500);

    // Source: inner torques cancel; the propeller's torque is the crank's through reduction 2.9 at 0.96, in proportion to the density.
    [Fact]
    public void Full_throttle_balances_the_engine() => flights.Sample(
        flight =>
        {
            var (phase, conditions, _, point) = flight;
            if (phase.Power is PhasePower.EngineOff)
                return;
            var given = 2.9 * 0.96 * EngineTorque(2.9 * point.Rpm) * conditions.Density / 1.225;
            Check.Close(given, point.AvailableTorqueNewtonMetres, relative: 1e-11, because: Arithmetic);
            if (phase.Power is PhasePower.FullThrottle)
                Check.Close(given, point.TorqueNewtonMetres, relative: 1e-11, because: Arithmetic);
            else
                Assert.True(point.TorqueNewtonMetres <= given);
        },
        iter: 500);

    // Source: actuator disc (Rankine, Froude), from memory.
    [Fact]
    public void No_operating_point_needs_less_than_the_ideal_power() => flights.Sample(
        flight =>
        {
            var (_, conditions, _, point) = flight;
            var power = 2 * Math.PI * point.Rpm / 60 * point.TorqueNewtonMetres;
            var area = Math.PI * Diameter * Diameter / 4;
            var v = conditions.AirspeedMetresPerSecond;
            Assert.True(power >= point.ThrustNewtons * (
                v / 2 + Math.Sqrt(v * v / 4 + point.ThrustNewtons / (2 * conditions.Density * area))));
        },
        iter: 500);

    [Fact]
    public void Engine_off_leaves_neither_thrust_nor_torque_and_a_margin_without_bound()
    {
        var glide = WorkedMachine.Mission.Evaluate(WorkedMachine.Geometry(440, 25, 150, 0)).Phases[4];
        Assert.Equal(0, glide[PhaseQuantity.Thrust]);
        Assert.Equal(0, glide[PhaseQuantity.Torque]);
        Assert.Equal(double.PositiveInfinity, glide[PhaseQuantity.TorqueMargin]);
    }

    private static (double Ct, double Cp) Coefficients(double j)
    {
        double[] ct = [0.1050, 0.0959, 0.0856, 0.0741, 0.0614, 0.0475, 0.0324],
            cp = [0.05200, 0.05245, 0.05140, 0.04885, 0.04480, 0.03925, 0.03220];
        var i = Math.Min((int)(j / 0.1), 5);
        var share = j / 0.1 - i;
        return (ct[i] + share * (ct[i + 1] - ct[i]), cp[i] + share * (cp[i + 1] - cp[i]));
    }

    private static double EngineTorque(double crankRpm) => crankRpm switch
    {
        < 5000 => 14 + (crankRpm - 4000) * 4.5 / 1000,
        < 6000 => 18.5 + (crankRpm - 5000) * 3.0 / 1000,
        < 7000 => 21.5 + (crankRpm - 6000) / 1000,
        < 7800 => 22.5 - (crankRpm - 7000) / 800,
        _ => 21.5 - (crankRpm - 7800) * 3.5 / 700,
    };
}
