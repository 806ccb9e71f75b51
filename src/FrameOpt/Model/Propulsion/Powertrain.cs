using FrameOpt.Numerics;
using MathNet.Numerics.RootFinding;

namespace FrameOpt.Model.Propulsion;

/// <summary>Propeller and engine together at one airspeed and density: finds their operating points.</summary>
/// <param name="propeller">Coefficients and diameter.</param>
/// <param name="engine">Or null when what the engine gives is not described.</param>
/// <param name="airspeedMetresPerSecond">V, above 0.</param>
/// <param name="density">Of the air, kg/m³.</param>
/// <remarks>Source: propeller coefficients T = CT rho n² D⁴ and Q = CP rho n² D⁵ / 2 pi at advance ratio J = V / n D, n in rev/s.</remarks>
public sealed class Powertrain(Propeller propeller, Engine? engine, double airspeedMetresPerSecond, double density)
{
    private const double Accuracy = 1e-15;
    private const int MaxIterations = 100;
    private readonly PropellerCurve curve = propeller.Curve;
    private readonly double diameter = propeller.DiameterMetres;
    private readonly double toTheFourth = Elementary.Pow(propeller.DiameterMetres, 4);
    private readonly double toTheFifth = Elementary.Pow(propeller.DiameterMetres, 5);
    private readonly double firstThrustCoefficient = propeller.Curve.ThrustCoefficient(propeller.Curve.SmallestAdvanceRatio);
    private readonly double lastThrustCoefficient = propeller.Curve.ThrustCoefficient(propeller.Curve.LargestAdvanceRatio);

    /// <summary>The propeller speed that gives a thrust, checked against the engine; the slowest when a curve has several.</summary>
    public OperatingPoint ForThrust(double thrustNewtons)
    {
        // With n = V / J D the thrust equation reads CT(J) = k J².
        var k = thrustNewtons / (density * airspeedMetresPerSecond * airspeedMetresPerSecond * diameter * diameter);
        if (firstThrustCoefficient < k * curve.SmallestAdvanceRatio * curve.SmallestAdvanceRatio)
            return Failed(FailureKind.ThrustAbovePropeller, thrustNewtons);
        if (lastThrustCoefficient > k * curve.LargestAdvanceRatio * curve.LargestAdvanceRatio)
            return Failed(FailureKind.ThrustBelowPropeller, thrustNewtons);
        var ratio = curve.AdvanceRatioForThrust(k);
        if (!(ratio > 0))
            return Failed(FailureKind.ThrustAbovePropeller, thrustNewtons);
        var revolutions = airspeedMetresPerSecond / (ratio * diameter);
        return Checked(revolutions, thrustNewtons, Torque(ratio, revolutions));
    }

    /// <summary>The point at a given propeller speed, checked against the engine.</summary>
    public OperatingPoint AtRpm(double propellerRpm)
    {
        var revolutions = propellerRpm / 60;
        var ratio = PropellerLoads.AdvanceRatio(airspeedMetresPerSecond, revolutions, diameter);
        if (!(ratio >= curve.SmallestAdvanceRatio && ratio <= curve.LargestAdvanceRatio))
            return new OperatingPoint(propellerRpm, 0, 0, 0, FailureKind.RpmOutsidePropeller);
        return Checked(revolutions, Thrust(ratio, revolutions), Torque(ratio, revolutions));
    }

    /// <summary>The propeller speed at which the propeller takes all the engine gives. Where the tables have several, the one in the
    /// slowest
    /// stretch of the engine's table: a throttle that is opened gets no further.</summary>
    /// <exception cref="InvalidOperationException">No engine is described.</exception>
    public OperatingPoint FullThrottle()
    {
        if (engine is null)
            throw new InvalidOperationException("full throttle needs an engine");
        var perRpm = 1 / (60 * engine.Reduction);
        var low = Math.Max(engine.CrankTorque.Smallest * perRpm, airspeedMetresPerSecond / (diameter * curve.LargestAdvanceRatio));
        var high = Math.Min(engine.CrankTorque.Largest * perRpm, airspeedMetresPerSecond / (diameter * curve.SmallestAdvanceRatio));
        double Excess(double n) => Torque(Ratio(n), n) - Available(n);
        if (!(low < high))
            return new OperatingPoint(60 * high, 0, 0, 0, FailureKind.NoFullThrottleBalance);
        if (Excess(low) > 0)
            return Unbalanced(low, FailureKind.PropellerTooHeavy);
        var stretches = engine.CrankTorque.Arguments.Select(rpm => rpm * perRpm).Where(n => n > low && n < high).Append(high);
        foreach (var end in stretches)
        {
            if (Excess(end) >= 0 && Brent.TryFindRoot(Excess, low, end, Accuracy, MaxIterations, out var revolutions))
            {
                var ratio = Ratio(revolutions);
                var torque = Torque(ratio, revolutions);
                return new OperatingPoint(60 * revolutions, Thrust(ratio, revolutions), torque, torque, FailureKind.None);
            }

            low = end;
        }

        return Unbalanced(high, FailureKind.PropellerTooLight);
    }

    private static OperatingPoint Failed(FailureKind kind, double thrustNewtons) => new(0, thrustNewtons, 0, 0, kind);

    /// <summary>The end of the common range where the balance was sought, with both torques for the words.</summary>
    private OperatingPoint Unbalanced(double revolutions, FailureKind kind)
    {
        var ratio = Ratio(revolutions);
        return new OperatingPoint(60 * revolutions, Thrust(ratio, revolutions), Torque(ratio, revolutions), Available(revolutions), kind);
    }

    /// <summary>J, kept inside the curve against the last bit of rounding at its ends.</summary>
    private double Ratio(double revolutions) => Math.Clamp(
        PropellerLoads.AdvanceRatio(airspeedMetresPerSecond, revolutions, diameter), curve.SmallestAdvanceRatio, curve.LargestAdvanceRatio);

    private double Thrust(double ratio, double revolutions) =>
        PropellerLoads.ThrustOf(curve.ThrustCoefficient(ratio), density, revolutions, toTheFourth);

    private double Torque(double ratio, double revolutions) =>
        PropellerLoads.TorqueOf(curve.PowerCoefficient(ratio), density, revolutions, toTheFifth);

    /// <summary>The most torque at the propeller.</summary>
    private double Available(double revolutions)
    {
        var table = engine!.CrankTorque;
        var crankRpm = Math.Clamp(60 * revolutions * engine.Reduction, table.Smallest, table.Largest);
        return engine.AtPropeller(table.ValueAt(crankRpm), density);
    }

    private OperatingPoint Checked(double revolutions, double thrust, double torque)
    {
        var rpm = 60 * revolutions;
        if (engine is null)
            return new OperatingPoint(rpm, thrust, torque, double.PositiveInfinity, FailureKind.None);
        if (!engine.CrankTorque.Covers(rpm * engine.Reduction))
            return new OperatingPoint(rpm, thrust, torque, 0, FailureKind.RpmOutsideEngine);
        var available = Available(revolutions);
        var failure = torque <= available ? FailureKind.None : FailureKind.EngineTooWeak;
        return new OperatingPoint(rpm, thrust, torque, available, failure);
    }
}
