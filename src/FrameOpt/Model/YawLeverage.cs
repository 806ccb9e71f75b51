namespace FrameOpt.Model;

/// <summary>How much a yaw moment at the risers turns the wing, beside a roll moment (Gamma of the model).</summary>
public abstract record YawLeverage
{
    /// <summary>The value taken when a study gives neither the leverage nor the two coefficients: an assumption.</summary>
    public const double Assumed = 0.6;

    /// <summary>The lower end of the range of the assumption.</summary>
    public const double AssumedLowest = 0.2;

    /// <summary>The upper end of the range of the assumption.</summary>
    public const double AssumedHighest = 1.6;

    private YawLeverage()
    {
    }

    /// <summary>One value for every phase.</summary>
    /// <param name="Value">Roll moment that turns the wing as much as a yaw moment of one; 0 or more.</param>
    public sealed record Constant(double Value) : YawLeverage;

    /// <summary>Grows with the square of the airspeed, from steady turning flight.</summary>
    /// <param name="RollRestoring">|Cl_phi|, per radian of bank.</param>
    /// <param name="YawDamping">|Cn_r|, on r b / 2V.</param>
    public sealed record FromCoefficients(double RollRestoring, double YawDamping) : YawLeverage;
}

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
