using FrameOpt.Numerics;

namespace FrameOpt.Model;

/// <summary>Where the thrust of a design points in the body, a vector of length one.</summary>
/// <param name="Forward">cos(tau) cos(psi).</param>
/// <param name="Right">cos(tau) sin(psi).</param>
/// <param name="Down">-sin(tau).</param>
public readonly record struct ThrustDirection(double Forward, double Right, double Down)
{
    /// <summary>From thrust-line angle psi, to the right +, and tilt tau, upward +.</summary>
    public static ThrustDirection Of(in FrameGeometry design)
    {
        var (sinPsi, cosPsi) = Elementary.SinCos(design.AngleRadians);
        var (sinTau, cosTau) = Elementary.SinCos(design.TiltRadians);
        return new ThrustDirection(cosTau * cosPsi, cosTau * sinPsi, -sinTau);
    }

    /// <summary>The direction after the body has swung in pitch.</summary>
    /// <param name="sine">Of the pitch, nose up +.</param>
    /// <param name="cosine">Of the pitch.</param>
    public ThrustDirection Swung(double sine, double cosine) =>
        new(Forward * cosine + Down * sine, Right, Down * cosine - Forward * sine);
}
