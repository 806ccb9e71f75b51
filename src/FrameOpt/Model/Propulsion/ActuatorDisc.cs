namespace FrameOpt.Model.Propulsion;

/// <summary>The least power any propeller needs for its thrust: a bound, never an estimate.</summary>
/// <remarks>Source: actuator-disc theory of Rankine and Froude, from memory. Thrust forward only; a braking propeller is outside
/// it.</remarks>
public static class ActuatorDisc
{
    /// <summary>Ideal power P = T (V/2 + sqrt(V²/4 + T/(2 rho A))) [W].</summary>
    /// <param name="thrustNewtons">T [N], 0 or more.</param>
    /// <param name="airspeedMetresPerSecond">V [m/s], 0 or more.</param>
    /// <param name="densityKgPerM3">rho [kg/m³].</param>
    /// <param name="diameterMetres">Propeller diameter [m]; A is the area of its disc.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thrust is negative.</exception>
    public static double IdealPowerWatts(
        double thrustNewtons, double airspeedMetresPerSecond, double densityKgPerM3, double diameterMetres)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(thrustNewtons);
        var area = Math.PI / 4 * diameterMetres * diameterMetres;
        var half = airspeedMetresPerSecond / 2;
        return thrustNewtons * (half + Math.Sqrt(half * half + thrustNewtons / (2 * densityKgPerM3 * area)));
    }

    /// <summary>The same bound between coefficients: CP is never below CT (J/2 + sqrt(J²/4 + 2 CT/pi)).</summary>
    /// <param name="thrustCoefficient">CT, 0 or more.</param>
    /// <param name="advanceRatio">J, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thrust coefficient is negative.</exception>
    public static double IdealPowerCoefficient(double thrustCoefficient, double advanceRatio)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(thrustCoefficient);
        var half = advanceRatio / 2;
        return thrustCoefficient * (half + Math.Sqrt(half * half + 2 * thrustCoefficient / Math.PI));
    }

    /// <summary>
    /// Smallest ratio of a curve's power to the ideal power over the whole curve, wherever it pulls. Below 1 the figures
    /// behind the curve cannot all be right: no propeller is that good. Infinite when the curve pulls nowhere.
    /// </summary>
    /// <param name="curve">Sampled at 201 advance ratios, evenly over its range.</param>
    public static double SmallestPowerOverIdeal(PropellerCurve curve)
    {
        const int steps = 200;
        var smallest = double.PositiveInfinity;
        for (var i = 0; i <= steps; i++)
        {
            var share = (double)i / steps;
            var j = curve.SmallestAdvanceRatio * (1 - share) + curve.LargestAdvanceRatio * share;
            var ct = curve.ThrustCoefficient(j);
            if (ct > 0)
                smallest = Math.Min(smallest, curve.PowerCoefficient(j) / IdealPowerCoefficient(ct, j));
        }
        return smallest;
    }
}
