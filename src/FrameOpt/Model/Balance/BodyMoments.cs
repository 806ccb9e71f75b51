using FrameOpt.Numerics;

namespace FrameOpt.Model.Balance;

/// <summary>Roll and yaw moment about H of everything but the risers, N·m, each linear in the lateral offset.</summary>
/// <param name="Roll">R0, right side down +.</param>
/// <param name="Yaw">N, nose right +.</param>
public readonly record struct BodyMoments(LinearFunction Roll, LinearFunction Yaw)
{
    /// <summary>R0 = sigma Q t_x + W y_c + T (y_p t_z - Z_p t_y) + H_q t_z and
    /// N = T (X_p t_y - y_p t_x) + y_d D + sigma Q t_z - H_q t_x; every y is reduced by the offset e.</summary>
    /// <param name="forces">All that acts on the body.</param>
    /// <param name="arms">After the swing in pitch.</param>
    /// <param name="thrust">After the swing in pitch.</param>
    /// <param name="load">Of the same phase: what the risers carry is what the moments change by for each metre of offset.</param>
    /// <remarks>Source: sum of arm x force in axes x forward, y right, z down (ISO 1151).</remarks>
    public static BodyMoments Of(in BodyForces forces, in BodyArms arms, in ThrustDirection thrust, in RiserLoad load)
    {
        double W = forces.WeightNewtons, D = forces.DragNewtons, T = forces.ThrustNewtons;
        double sigmaQ = forces.ReactionNewtonMetres, Hq = forces.GyroscopicNewtonMetres;
        double tx = thrust.Forward, ty = thrust.Right, tz = thrust.Down;
        var R0 = sigmaQ * tx + W * arms.Weight.Y + T * (arms.Hub.Y * tz - arms.Hub.Z * ty) + Hq * tz;
        var N = T * (arms.Hub.X * ty - arms.Hub.Y * tx) + arms.Drag.Y * D + sigmaQ * tz - Hq * tx;
        return new BodyMoments(new LinearFunction(R0, -load.VerticalNewtons), new LinearFunction(N, load.ForwardNewtons));
    }
}
