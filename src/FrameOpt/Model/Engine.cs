namespace FrameOpt.Model;

/// <summary>The engine and its reduction drive.</summary>
/// <param name="CrankTorque">Full-throttle torque at the crank in N·m against crank speed in rpm, at sea-level standard density.</param>
/// <param name="Reduction">Crank speed over propeller speed, above zero.</param>
/// <param name="Efficiency">Of the drive, above 0 to 1.</param>
public sealed record Engine(LinearTable CrankTorque, double Reduction, double Efficiency);
