using FrameOpt.Numerics;

namespace FrameOpt.Model;

/// <summary>The wing as the model sees it.</summary>
/// <param name="MassKilograms">Canopy and lines.</param>
/// <param name="AreaSquareMetres">Flat area S.</param>
/// <param name="SpanMetres">Flat span b.</param>
/// <param name="LineLengthMetres">Hang line to wing, L.</param>
/// <param name="LineSpreadMetres">Distance between the centroids of the two half-wings' line attachments, b_top.</param>
/// <param name="Polar">Airspeed and glide ratio.</param>
/// <param name="RiserCoupling">Measured, or from the lines.</param>
/// <param name="RollRestoring">|Cl_phi| per radian of bank; used for the indicative turn rate.</param>
/// <param name="YawLeverage">From the airspeed, from two slopes, or a number.</param>
public sealed record Wing(
    double MassKilograms,
    double AreaSquareMetres,
    double SpanMetres,
    double LineLengthMetres,
    double LineSpreadMetres,
    Polar Polar,
    RiserCoupling RiserCoupling,
    double RollRestoring,
    YawLeverage YawLeverage);

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
    public LinearTable GlideAtFraction { get; private init; } = new(
        [.. Points.Select(p => p.Fraction)], [.. Points.Select(p => p.GlideRatio)]);

    /// <summary>The same polar with every glide ratio times a factor.</summary>
    /// <param name="factor">Above 0.</param>
    public Polar WithGlide(double factor) => this with
    {
        Points = [.. Points.Select(point => point with { GlideRatio = point.GlideRatio * factor })],
        GlideAtFraction = GlideAtFraction.Scaled(factor),
    };

    /// <summary>Fraction against airspeed in m/s at reference conditions.</summary>
    public LinearTable FractionAtAirspeed { get; } = new(
        [.. Points.Select(p => p.AirspeedMetresPerSecond)], [.. Points.Select(p => p.Fraction)]);
}

/// <summary>One measured point of a wing's polar.</summary>
/// <param name="Fraction">Of the speed range: 0 trim, 1 fully accelerated.</param>
/// <param name="AirspeedMetresPerSecond">At the polar's reference mass and density.</param>
/// <param name="GlideRatio">Distance over height lost, engine off.</param>
public sealed record PolarPoint(double Fraction, double AirspeedMetresPerSecond, double GlideRatio);

/// <summary>How strongly the risers couple the roll of the body to the wing.</summary>
public abstract record RiserCoupling
{
    /// <summary>A canopy soft in bending.</summary>
    /// <remarks>Source: a chain of panels on two fans of lines gives 0.03, 0.19 and 0.75 m for a bending stiffness of 10, 100 and
    /// 1000 N·m²: an estimate.</remarks>
    public static readonly Constant Soft = new(0.05);

    /// <summary>A canopy stiff in bending.</summary>
    public static readonly Constant Stiff = new(1);

    private RiserCoupling()
    {
    }

    /// <summary>A measured coupling length, which grows with the square of the spacing.</summary>
    /// <param name="LengthMetres">c_phi at the reference spacing.</param>
    /// <param name="AtSpacingMetres">The hang-point spacing it was measured at.</param>
    public sealed record Measured(double LengthMetres, double AtSpacingMetres) : RiserCoupling;

    /// <summary>One length at every spacing.</summary>
    /// <param name="LengthMetres">c_phi.</param>
    public sealed record Constant(double LengthMetres) : RiserCoupling;

    /// <summary>From the geometry of two straight lines to a rigid wing, at the design's own spacing: an assumption with the range
    /// <see cref="Soft"/> to <see cref="Stiff"/>, because it is the canopy's bending stiffness that decides.</summary>
    public sealed record FromLines : RiserCoupling;

    /// <summary>Part of the way from one coupling to a length, in equal ratios.</summary>
    /// <param name="From">Where it begins.</param>
    /// <param name="EndMetres">Where it ends, above 0.</param>
    /// <param name="Share">0 for the beginning, 1 for the end.</param>
    public sealed record Between(RiserCoupling From, double EndMetres, double Share) : RiserCoupling;
}
