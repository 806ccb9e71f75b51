namespace FrameOpt.Model;

/// <summary>What propeller and engine do in a phase.</summary>
/// <param name="Rpm">Of the propeller.</param>
/// <param name="ThrustNewtons">T.</param>
/// <param name="TorqueNewtonMetres">Q, the aerodynamic torque at the propeller.</param>
/// <param name="AvailableTorqueNewtonMetres">What the engine can give there at the propeller; infinite when it is off or not described.</param>
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
