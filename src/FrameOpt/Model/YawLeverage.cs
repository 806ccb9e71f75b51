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
