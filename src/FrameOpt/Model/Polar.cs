namespace FrameOpt.Model;

/// <summary>A wing's polar: straight lines between two or more measured points.</summary>
/// <param name="ReferenceMassKilograms">All-up mass it was measured at.</param>
/// <param name="ReferenceDensity">Air density it was measured at, kg/m³.</param>
/// <param name="Points">From trim to fully accelerated, fraction and airspeed both increasing.</param>
public sealed record Polar(double ReferenceMassKilograms, double ReferenceDensity, IReadOnlyList<PolarPoint> Points)
{
    /// <summary>Airspeed in m/s at reference conditions against fraction.</summary>
    public LinearTable AirspeedAtFraction { get; } = new(
        [.. Points.Select(p => p.Fraction)], [.. Points.Select(p => p.AirspeedMetresPerSecond)]);

    /// <summary>Glide ratio against fraction.</summary>
    public LinearTable GlideAtFraction { get; } = new(
        [.. Points.Select(p => p.Fraction)], [.. Points.Select(p => p.GlideRatio)]);

    /// <summary>Fraction against airspeed in m/s at reference conditions.</summary>
    public LinearTable FractionAtAirspeed { get; } = new(
        [.. Points.Select(p => p.AirspeedMetresPerSecond)], [.. Points.Select(p => p.Fraction)]);
}
