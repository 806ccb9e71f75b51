namespace FrameOpt.Model;

/// <summary>The thrust steady flight asks for.</summary>
public static class ThrustDemand
{
    /// <summary>Thrust in N to hold a climb along the line of flight with a thrust line turned and tilted away from it.</summary>
    /// <param name="conditions">Mass, glide ratio and airspeed of the phase.</param>
    /// <param name="loadFactor">n.</param>
    /// <param name="climbMetresPerSecond">Rate of climb; 0 in level flight.</param>
    /// <param name="angleRadians">Thrust-line angle psi.</param>
    /// <param name="tiltRadians">Thrust-line tilt tau.</param>
    /// <remarks>Source: balance of drag n m g / G and weight along the path m g v_climb / V with the thrust's part along it.</remarks>
    public static double Newtons(
        in PhaseConditions conditions, double loadFactor, double climbMetresPerSecond, double angleRadians, double tiltRadians) =>
        conditions.AllUpMassKilograms * Constants.StandardGravity
            * (loadFactor / conditions.GlideRatio + climbMetresPerSecond / conditions.AirspeedMetresPerSecond)
            / (Math.Cos(angleRadians) * Math.Cos(tiltRadians));
}
