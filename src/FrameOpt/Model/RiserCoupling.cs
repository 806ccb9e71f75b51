namespace FrameOpt.Model;

/// <summary>How strongly the risers couple the roll of the body to the wing.</summary>
public abstract record RiserCoupling
{
    private RiserCoupling()
    {
    }

    /// <summary>A measured coupling length, which grows with the square of the spacing.</summary>
    /// <param name="LengthMetres">c_phi at the reference spacing.</param>
    /// <param name="AtSpacingMetres">The hang-point spacing it was measured at.</param>
    public sealed record Measured(double LengthMetres, double AtSpacingMetres) : RiserCoupling;

    /// <summary>From the geometry of two straight lines to a rigid wing, at the design's own spacing: an assumption.</summary>
    public sealed record FromLines : RiserCoupling;
}
