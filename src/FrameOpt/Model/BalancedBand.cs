namespace FrameOpt.Model;

/// <summary>A range of propeller speed in which the residual torque stays within a limit.</summary>
/// <param name="FromRpm">Lower end.</param>
/// <param name="ToRpm">Upper end.</param>
public sealed record BalancedBand(double FromRpm, double ToRpm);
