namespace FrameOpt.Model;

/// <summary>How roll and yaw moments at the risers turn a wing in steady flight.</summary>
public static class TurnEquivalence
{
    /// <summary>Gamma: the roll moment that turns the wing as much as a yaw moment of one.</summary>
    /// <remarks>Source: steady turn, roll balance M = q S b |Cl_phi| Phi with r = g Phi / V, yaw balance r = 2 V N / (q S b² |Cn_r|);
    /// equal turn rates give Gamma = 2 V² |Cl_phi| / (g b |Cn_r|). An upper estimate.</remarks>
    public static double YawLeverage(Wing wing, double airspeedMetresPerSecond) => wing.YawLeverage switch
    {
        YawLeverage.Constant constant => constant.Value,
        YawLeverage.FromCoefficients c => 2 * airspeedMetresPerSecond * airspeedMetresPerSecond * c.RollRestoring
            / (Constants.StandardGravity * wing.SpanMetres * c.YawDamping),
        _ => throw new InvalidOperationException(),
    };

    /// <summary>Indicated turn rate in rad/s for each N·m of residual torque.</summary>
    /// <remarks>Source: the same steady turn, r = R g / (V q S b |Cl_phi|) with q = rho V² / 2.</remarks>
    public static double TurnRatePerTorque(Wing wing, double density, double airspeedMetresPerSecond) =>
        Constants.StandardGravity / (airspeedMetresPerSecond * 0.5 * density * airspeedMetresPerSecond
            * airspeedMetresPerSecond * wing.AreaSquareMetres * wing.SpanMetres * wing.RollRestoring);
}
