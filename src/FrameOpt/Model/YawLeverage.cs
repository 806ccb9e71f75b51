using System.Text;

namespace FrameOpt.Model;

/// <summary>How much a yaw moment at the hang points counts beside a roll moment (Gamma of the model), as the study gives it.</summary>
/// <remarks>Source: straight flight of an arched wing in a sideslip (docs/model.md, section 5). Ranges and factors are
/// assumptions.</remarks>
public abstract record YawLeverage
{
    /// <summary>The speed factor taken when a study gives none, s/m: an assumption.</summary>
    public const double AssumedSpeedFactor = 0.17;

    /// <summary>The lower end of its range, s/m.</summary>
    public const double LowestSpeedFactor = 0.1;

    /// <summary>The upper end of its range, s/m.</summary>
    public const double HighestSpeedFactor = 0.27;

    /// <summary>The twist share taken when a study gives none: an assumption, range 0 (wing rigid in torsion) to 1 (each half follows
    /// its riser).</summary>
    public const double AssumedTwistShare = 0.5;

    private YawLeverage()
    {
    }

    /// <summary>As text it is its own numbers only: low and high are leverages with a low and a high of their own, without end.</summary>
    protected virtual bool PrintMembers(StringBuilder builder) => false;

    /// <summary>As low as it may well be.</summary>
    public YawLeverage Low => this switch
    {
        Constant constant => new Constant(0.5 * constant.Value),
        FromSpeed speed => new FromSpeed(0.6 * speed.SpeedFactor, 1),
        FromSideslip sideslip => new FromSideslip(0.75 * sideslip.Roll, sideslip.Yaw, 1),
        _ => throw new InvalidOperationException(),
    };

    /// <summary>As high as it may well be.</summary>
    public YawLeverage High => this switch
    {
        Constant constant => new Constant(1.5 * constant.Value),
        FromSpeed speed => new FromSpeed(1.6 * speed.SpeedFactor, 0),
        FromSideslip sideslip => new FromSideslip(1.33 * sideslip.Roll, sideslip.Yaw, 0),
        _ => throw new InvalidOperationException(),
    };

    /// <summary>Part of the way to <see cref="Low"/> or <see cref="High"/>, in equal steps of each of its numbers.</summary>
    /// <param name="part">-1 low, 0 as it is, +1 high.</param>
    public YawLeverage Towards(double part)
    {
        var (end, share) = (part < 0 ? Low : High, Math.Abs(part));
        double Mix(double here, double there) => here + share * (there - here);
        return (this, end) switch
        {
            (Constant here, Constant there) => new Constant(Mix(here.Value, there.Value)),
            (FromSpeed here, FromSpeed there) =>
                new FromSpeed(Mix(here.SpeedFactor, there.SpeedFactor), Mix(here.TwistShare, there.TwistShare)),
            (FromSideslip here, FromSideslip there) =>
                new FromSideslip(Mix(here.Roll, there.Roll), Mix(here.Yaw, there.Yaw), Mix(here.TwistShare, there.TwistShare)),
            _ => throw new InvalidOperationException(),
        };
    }

    /// <summary>One value for every phase, the twist of the wing included.</summary>
    /// <param name="Value">Roll moment that counts as much as a yaw moment of one; 0 or more.</param>
    public sealed record Constant(double Value) : YawLeverage;

    /// <summary>In proportion to the airspeed, less the part of the wing that its risers twist.</summary>
    /// <param name="SpeedFactor">a, s/m; above 0.</param>
    /// <param name="TwistShare">eta, the share of the risers' twist that each half of the wing follows; 0 to 1.</param>
    public sealed record FromSpeed(double SpeedFactor, double TwistShare) : YawLeverage;

    /// <summary>From the two slopes of a sideslip about the hang points, less the part of the wing that its risers twist.</summary>
    /// <param name="Roll">Cl_beta per radian; its magnitude counts.</param>
    /// <param name="Yaw">Cn_beta per radian; above 0.</param>
    /// <param name="TwistShare">eta; 0 to 1.</param>
    public sealed record FromSideslip(double Roll, double Yaw, double TwistShare) : YawLeverage;
}

/// <summary>How a wing flies straight, and turns, under moments at the hang points.</summary>
public static class StraightFlight
{
    /// <summary>Roll moment of an arched wing over q S b, seen from the hang points, for each radian by which its halves are pitched to
    /// either side of the middle.</summary>
    /// <remarks>Source: own lifting-line calculation of the worked wing: an estimate.</remarks>
    private const double RollPerPitchOfHalves = 0.17;

    /// <summary>|Cl_beta|/Cn_beta: the roll moment that comes with the sideslip that holds a yaw moment of one.</summary>
    /// <remarks>Source: Cn_beta beta q S b + N_w = 0 gives beta, and Cl_beta beta q S b the roll moment. Cl_beta is nearly constant and
    /// Cn_beta grows with the lift coefficient, so the ratio grows with the airspeed.</remarks>
    public static double SideslipLeverage(YawLeverage leverage, double airspeedMetresPerSecond) => leverage switch
    {
        YawLeverage.Constant constant => constant.Value,
        YawLeverage.FromSpeed speed => speed.SpeedFactor * airspeedMetresPerSecond,
        YawLeverage.FromSideslip sideslip => Math.Abs(sideslip.Roll) / sideslip.Yaw,
        _ => throw new InvalidOperationException(),
    };

    /// <summary>What the wing twisted by its risers takes from the leverage, times the riser load: 0.34 eta min(q, q0) S b/b_top,
    /// N.</summary>
    /// <param name="wing">Its area, span, line spread and twist share.</param>
    /// <param name="density">kg/m³.</param>
    /// <param name="airspeedMetresPerSecond">V of the phase.</param>
    /// <param name="trimMetresPerSecond">V0: above it the effect falls, so its pressure is taken.</param>
    /// <remarks>Source: a body twisted nose right by k carries its right hang point aft by s k/2; the right half of the wing pitches nose
    /// down by eta s k/(2 L) and the wing rolls left by 0.17 q S b per radian; with N_w = K_psi k and K_psi = F s b_top/(4 L) spacing and
    /// line length cancel.</remarks>
    public static double TwistedWingNewtons(Wing wing, double density, double airspeedMetresPerSecond, double trimMetresPerSecond)
    {
        var eta = wing.YawLeverage switch
        {
            YawLeverage.FromSpeed speed => speed.TwistShare,
            YawLeverage.FromSideslip sideslip => sideslip.TwistShare,
            _ => 0,
        };
        var V = Math.Min(airspeedMetresPerSecond, trimMetresPerSecond);
        var q = density * V * V / 2;
        return 2 * RollPerPitchOfHalves * eta * q * wing.AreaSquareMetres * wing.SpanMetres / wing.LineSpreadMetres;
    }

    /// <summary>Indicated turn rate in rad/s for each N·m of residual torque: g/(V0 q0 S b |Cl_phi|).</summary>
    /// <remarks>Source: bank from R = q S b |Cl_phi| Phi and turn rate r = g Phi/V, at trim speed: the turn per N·m hardly depends on
    /// speed.</remarks>
    public static double TurnRatePerTorque(Wing wing, double density, double trimMetresPerSecond) =>
        Constants.StandardGravity / (trimMetresPerSecond * 0.5 * density * trimMetresPerSecond
            * trimMetresPerSecond * wing.AreaSquareMetres * wing.SpanMetres * wing.RollRestoring);
}
