namespace FrameOpt.Model.Balance;

/// <summary>How the moments on the body change as it rolls and yaws: the left-hand side of the balance without the risers.</summary>
/// <param name="PendulumNewtonMetres">W Z_c, roll moment of the weight for each radian of roll.</param>
/// <param name="DragDownNewtonMetres">D Z_d.</param>
/// <param name="DragForwardNewtonMetres">D X_d.</param>
/// <param name="ThrustPitchNewtonMetres">M_T, pitching moment of thrust and reaction torque.</param>
public readonly record struct AttitudeStiffness(
    double PendulumNewtonMetres, double DragDownNewtonMetres, double DragForwardNewtonMetres, double ThrustPitchNewtonMetres)
{
    /// <summary>From arms and thrust after the swing in pitch, M_T = T (Z_p t_x - X_p t_z) + sigma Q t_y.</summary>
    /// <remarks>Source: the moments of <see cref="BodyMoments"/> after a small rotation in roll and yaw.</remarks>
    public static AttitudeStiffness Of(in BodyForces forces, in BodyArms arms, in ThrustDirection thrust) => new(
        forces.WeightNewtons * arms.Weight.Z,
        forces.DragNewtons * arms.Drag.Z,
        forces.DragNewtons * arms.Drag.X,
        forces.ThrustNewtons * (arms.Hub.Z * thrust.Forward - arms.Hub.X * thrust.Down) + forces.ReactionNewtonMetres * thrust.Right);
}

/// <summary>How the wing banks under the thrust's side force: Phi = PerRoll phi + PerYaw psi_b + AtZeroAttitude.</summary>
/// <param name="PerRoll">For each radian of body roll: T t_z / F.</param>
/// <param name="PerYaw">For each radian of body yaw: -T t_x / F.</param>
/// <param name="AtZeroAttitude">With neither roll nor yaw, rad: -T t_y / F.</param>
public readonly record struct BankCoupling(double PerRoll, double PerYaw, double AtZeroAttitude)
{
    /// <summary>From T (t_x psi_b - t_z phi) + F Phi = -T t_y, the third row of the balance.</summary>
    /// <param name="thrustNewtons">T.</param>
    /// <param name="thrust">After the swing in pitch.</param>
    /// <param name="loadNewtons">F.</param>
    /// <remarks>Source: sum of side forces, small angles.</remarks>
    public static BankCoupling Of(double thrustNewtons, in ThrustDirection thrust, double loadNewtons) => new(
        thrustNewtons * thrust.Down / loadNewtons,
        -thrustNewtons * thrust.Forward / loadNewtons,
        -thrustNewtons * thrust.Right / loadNewtons);
}
