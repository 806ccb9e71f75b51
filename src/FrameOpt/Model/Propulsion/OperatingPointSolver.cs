namespace FrameOpt.Model.Propulsion;

/// <summary>What a phase asks of propeller and engine. What no design changes is found once, here: the whole operating point, unless
/// the phase asks for a thrust.</summary>
public sealed class OperatingPointSolver
{
    private readonly OperatingPoint always;
    private readonly Powertrain? asked;
    private readonly double alongPathNewtons;

    /// <summary>Of one phase.</summary>
    /// <param name="phase">Power and load factor.</param>
    /// <param name="conditions">Of that phase; when they have failed, so have all its operating points.</param>
    /// <param name="machine">Propeller and engine.</param>
    /// <exception cref="InvalidOperationException">Full throttle without an engine.</exception>
    public OperatingPointSolver(Phase phase, in PhaseConditions conditions, Machine machine)
    {
        if (conditions.Failure != FailureKind.None)
        {
            always = new OperatingPoint(0, 0, 0, 0, conditions.Failure);
            return;
        }

        var drive = new Powertrain(machine.Propeller, machine.Engine, conditions.AirspeedMetresPerSecond, conditions.Density);
        switch (phase.Power)
        {
            case PhasePower.EngineOff: always = OperatingPoint.Off; break;
            case PhasePower.FullThrottle: always = drive.FullThrottle(); break;
            case PhasePower.AtRpm rpm: always = drive.AtRpm(rpm.PropellerRpm); break;
            case PhasePower.Level or PhasePower.Climb:
                asked = drive;
                var climb = phase.Power is PhasePower.Climb given ? given.MetresPerSecond : 0;
                alongPathNewtons = ThrustRequired.AlongPathNewtons(conditions, phase.LoadFactor, climb);
                break;
            default: throw new InvalidOperationException();
        }
    }

    /// <summary>The operating point of the phase for a design's thrust line.</summary>
    public OperatingPoint For(in ThrustDirection thrust) =>
        asked is null ? always : asked.ForThrust(alongPathNewtons / thrust.Forward);
}

/// <summary>What propeller and engine do in a phase.</summary>
/// <param name="Rpm">Of the propeller.</param>
/// <param name="ThrustNewtons">T.</param>
/// <param name="TorqueNewtonMetres">Q, the aerodynamic torque at the propeller.</param>
/// <param name="AvailableTorqueNewtonMetres">What the engine can give there at the propeller; infinite when it is off or not
/// described.</param>
/// <param name="Failure">Why there is no such point, or none; the figures known by then are kept for the words.</param>
public readonly record struct OperatingPoint(
    double Rpm,
    double ThrustNewtons,
    double TorqueNewtonMetres,
    double AvailableTorqueNewtonMetres,
    FailureKind Failure)
{
    /// <summary>Engine off: no thrust, no torque.</summary>
    public static OperatingPoint Off => new(0, 0, 0, double.PositiveInfinity, FailureKind.None);

    /// <summary>Available over needed torque; infinite with the engine off or not described.</summary>
    public double TorqueMargin => AvailableTorqueNewtonMetres / TorqueNewtonMetres;
}
