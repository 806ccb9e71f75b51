namespace FrameOpt.Model.Propulsion;

/// <summary>The thrust steady flight asks for.</summary>
public static class ThrustRequired
{
    /// <summary>The thrust along the line of flight that holds a climb, N. A thrust line that points away from it needs as much
    /// more as <see cref="ThrustDirection.Forward"/> is below one.</summary>
    /// <param name="conditions">Mass, glide ratio and airspeed of the phase.</param>
    /// <param name="loadFactor">n.</param>
    /// <param name="climbMetresPerSecond">Rate of climb; 0 in level flight.</param>
    /// <remarks>Source: balance of drag n m g / G and weight along the path m g v_climb / V.</remarks>
    public static double AlongPathNewtons(in PhaseConditions conditions, double loadFactor, double climbMetresPerSecond) =>
        conditions.AllUpMassKilograms * Constants.StandardGravity
            * (loadFactor / conditions.GlideRatio + climbMetresPerSecond / conditions.AirspeedMetresPerSecond);
}
