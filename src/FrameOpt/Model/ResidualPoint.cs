namespace FrameOpt.Model;

/// <summary>What is left to the pilot at one propeller speed.</summary>
/// <param name="Rpm">Of the propeller.</param>
/// <param name="ResidualNewtonMetres">Residual torque, turns right +; NaN where the design cannot fly.</param>
/// <param name="TorqueNewtonMetres">Torque the propeller takes there; NaN where the design cannot fly.</param>
public sealed record ResidualPoint(double Rpm, double ResidualNewtonMetres, double TorqueNewtonMetres);
