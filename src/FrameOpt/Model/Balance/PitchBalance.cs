using FrameOpt.Numerics;

namespace FrameOpt.Model.Balance;

/// <summary>How far the body swings in pitch under the hang points.</summary>
/// <param name="Sine">sin(theta), nose up +.</param>
/// <param name="Cosine">cos(theta).</param>
/// <param name="MomentNewtonMetres">M, pitching moment of thrust and reaction torque.</param>
/// <param name="CapacityNewtonMetres">hypot(A, B), the largest moment that weight and drag can balance.</param>
/// <param name="Failure">Why there is no upright equilibrium, or none.</param>
public readonly record struct PitchBalance(
    double Sine, double Cosine, double MomentNewtonMetres, double CapacityNewtonMetres, FailureKind Failure)
{
    /// <summary>theta, nose up +.</summary>
    public double Radians => Elementary.Atan2(Sine, Cosine);

    /// <summary>theta = asin(M / hypot(A, B)) - atan2(B, A), the stable solution of A sin(theta) + B cos(theta) = M.</summary>
    /// <param name="forces">Weight, drag, thrust and reaction.</param>
    /// <param name="arms">Before the swing.</param>
    /// <param name="thrust">Before the swing.</param>
    /// <remarks>Source: moments of a rigid body about its pitch axis, A = W h - D x_d, B = W x_c + D z_d,
    /// M = T (z_p cos tau cos psi + x_p sin tau) + sigma Q cos tau sin psi. Sine and cosine of the difference are written out.</remarks>
    public static PitchBalance Of(in BodyForces forces, in BodyArms arms, in ThrustDirection thrust)
    {
        double W = forces.WeightNewtons, D = forces.DragNewtons, T = forces.ThrustNewtons, sigmaQ = forces.ReactionNewtonMetres;
        double A = W * arms.Weight.Z - D * arms.Drag.X, B = W * arms.Weight.X + D * arms.Drag.Z;
        var M = T * (arms.Hub.Z * thrust.Forward - arms.Hub.X * thrust.Down) + sigmaQ * thrust.Right;
        double square = A * A + B * B, capacity = Math.Sqrt(square);
        if (!(Math.Abs(M) <= capacity))
            return new PitchBalance(0, 0, M, capacity, FailureKind.NoPitchEquilibrium);
        var rest = Math.Sqrt((capacity - M) * (capacity + M));
        double sine = (A * M - B * rest) / square, cosine = (A * rest + B * M) / square;
        return new PitchBalance(sine, cosine, M, capacity, cosine > 0 ? FailureKind.None : FailureKind.TurnedOver);
    }
}
