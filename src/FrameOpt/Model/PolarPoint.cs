namespace FrameOpt.Model;

/// <summary>One measured point of a wing's polar.</summary>
/// <param name="Fraction">Of the speed range: 0 trim, 1 fully accelerated.</param>
/// <param name="AirspeedMetresPerSecond">At the polar's reference mass and density.</param>
/// <param name="GlideRatio">Distance over height lost, engine off.</param>
public sealed record PolarPoint(double Fraction, double AirspeedMetresPerSecond, double GlideRatio);
