namespace FrameOpt.Studies;

/// <summary>The band of propeller speed in which a design is called balanced.</summary>
/// <param name="PhaseIndex">The phase whose airspeed it is reckoned at.</param>
/// <param name="WithinNewtonMetres">Largest residual torque called balanced.</param>
public sealed record BandSetting(int PhaseIndex, double WithinNewtonMetres);
