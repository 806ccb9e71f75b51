using FrameOpt.Numerics;

namespace FrameOpt.Model.Balance;

/// <summary>What both risers carry together, and how the lines lean.</summary>
/// <param name="Newtons">F.</param>
/// <param name="VerticalNewtons">F_v: weight, less what the thrust carries.</param>
/// <param name="ForwardNewtons">F_x: thrust less drag.</param>
/// <param name="LeanSine">sin(eps), eps the lean of the lines.</param>
/// <param name="LeanCosine">cos(eps).</param>
public readonly record struct RiserLoad(
    double Newtons, double VerticalNewtons, double ForwardNewtons, double LeanSine, double LeanCosine)
{
    /// <summary>eps, the lean of the lines: hang points forward of the wing +.</summary>
    public double LeanRadians => Elementary.Atan2(LeanSine, LeanCosine);

    /// <summary>Whether any load is left in the risers: thrust may carry all the weight.</summary>
    public FailureKind Failure => VerticalNewtons > 0 ? FailureKind.None : FailureKind.NoRiserLoad;

    /// <summary>F = hypot(F_v, F_x) with F_v = W + T t_z and F_x = T t_x - D.</summary>
    /// <param name="forces">Weight, drag and thrust.</param>
    /// <param name="thrust">After the swing in pitch.</param>
    /// <remarks>Source: sum of forces in the plane of symmetry.</remarks>
    public static RiserLoad Of(in BodyForces forces, in ThrustDirection thrust)
    {
        var Fv = forces.WeightNewtons + forces.ThrustNewtons * thrust.Down;
        var Fx = forces.ThrustNewtons * thrust.Forward - forces.DragNewtons;
        var F = Math.Sqrt(Fv * Fv + Fx * Fx);
        return new RiserLoad(F, Fv, Fx, Fx / F, Fv / F);
    }
}
