namespace FrameOpt.Model;

/// <summary>Thrust and power coefficients of a propeller against its advance ratio J = V/(n D).</summary>
/// <remarks>
/// CT = T/(rho n² D⁴), CP = P/(rho n³ D⁵), n in revolutions per second. A curve has no value outside
/// <see cref="SmallestAdvanceRatio"/> to <see cref="LargestAdvanceRatio"/>: callers check first, nothing is clamped.
/// </remarks>
public abstract record PropellerCurve
{
    private protected PropellerCurve() { }

    /// <summary>Smallest advance ratio with a value.</summary>
    public abstract double SmallestAdvanceRatio { get; }

    /// <summary>Largest advance ratio with a value.</summary>
    public abstract double LargestAdvanceRatio { get; }

    /// <summary>Thrust coefficient CT, dimensionless.</summary>
    /// <param name="advanceRatio">J, within the range of the curve.</param>
    /// <exception cref="ArgumentOutOfRangeException">J lies outside the range of the curve.</exception>
    public abstract double ThrustCoefficient(double advanceRatio);

    /// <summary>Power coefficient CP, dimensionless.</summary>
    /// <param name="advanceRatio">J, within the range of the curve.</param>
    /// <exception cref="ArgumentOutOfRangeException">J lies outside the range of the curve.</exception>
    public abstract double PowerCoefficient(double advanceRatio);

    /// <summary>The advance ratio at which CT(J) = k J², the largest at which the excess CT - k J² ends; exact but for rounding.</summary>
    /// <param name="k">T/(rho V² D²), such that there is an excess or none at the smallest J and none at the largest.</param>
    public abstract double AdvanceRatioForThrust(double k);

    /// <summary>The same propeller with every thrust and every torque times a factor.</summary>
    /// <param name="thrust">Above 0.</param>
    /// <param name="torque">Above 0.</param>
    public abstract PropellerCurve Scaled(double thrust, double torque);

    /// <summary>The same propeller as if of another pitch: the same coefficients at advance ratios times a factor.</summary>
    /// <param name="factor">Above 0.</param>
    public abstract PropellerCurve Stretched(double factor);
}
