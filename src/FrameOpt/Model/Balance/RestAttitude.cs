namespace FrameOpt.Model.Balance;

/// <summary>How the body hangs against a level wing when no moment acts on it: not straight, if its hang points are at unequal height or
/// its straps of unequal length.</summary>
/// <param name="Roll">About the line-normal, rad, right side down +.</param>
/// <param name="Twist">About the lines, rad, nose right +.</param>
public readonly record struct RestAttitude(double Roll, double Twist)
{
    /// <summary>Roll = (d_h cos(theta - eps) + d_s) / s and twist = -d_h sin(theta - eps) / s: the right side hangs lower by what its
    /// hang point is higher on the frame, and by what its strap is longer.</summary>
    /// <param name="design">Spacing s, and the two differences d_h and d_s.</param>
    /// <param name="pitch">theta: the hang points swing with the body.</param>
    /// <param name="load">eps: straps and lines lean with the load.</param>
    /// <remarks>Source: geometry, small angles. The line through the hang points, (0, s, -d_h) in the body, turned by theta; the upper
    /// ends of the straps lie a strap further up along the lines.</remarks>
    public static RestAttitude Of(in FrameGeometry design, in PitchBalance pitch, in RiserLoad load)
    {
        var height = design.HangHeightDifferenceMetres / design.SpacingMetres;
        var strap = design.StrapDifferenceMetres / design.SpacingMetres;
        double sin = load.LeanSine, cos = load.LeanCosine;
        return new RestAttitude(
            height * (pitch.Cosine * cos + pitch.Sine * sin) + strap, height * (pitch.Cosine * sin - pitch.Sine * cos));
    }
}
