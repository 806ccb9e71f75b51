using FrameOpt.Numerics;

namespace FrameOpt.Model.Propulsion;

/// <summary>Thrust, torque and power of a propeller from its coefficients. Torque is the aerodynamic torque at the propeller.</summary>
/// <remarks>Source: the definitions J = V/(n D), CT = T/(rho n² D⁴), CP = P/(rho n³ D⁵), as in the UIUC Propeller Database.</remarks>
public static class PropellerLoads
{
    /// <summary>Advance ratio J = V/(n D), dimensionless.</summary>
    /// <param name="airspeedMetresPerSecond">V [m/s].</param>
    /// <param name="revolutionsPerSecond">n [1/s], above 0.</param>
    /// <param name="diameterMetres">D [m], above 0.</param>
    public static double AdvanceRatio(double airspeedMetresPerSecond, double revolutionsPerSecond, double diameterMetres) =>
        airspeedMetresPerSecond / (revolutionsPerSecond * diameterMetres);

    /// <summary>Thrust T = CT rho n² D⁴ [N].</summary>
    /// <param name="thrustCoefficient">CT.</param>
    /// <param name="densityKgPerM3">rho [kg/m³].</param>
    /// <param name="revolutionsPerSecond">n [1/s].</param>
    /// <param name="diameterMetres">D [m].</param>
    public static double ThrustNewtons(
        double thrustCoefficient, double densityKgPerM3, double revolutionsPerSecond, double diameterMetres) =>
        ThrustOf(thrustCoefficient, densityKgPerM3, revolutionsPerSecond, Elementary.Pow(diameterMetres, 4));

    /// <summary>Torque Q = CP rho n² D⁵/(2 pi) [N·m].</summary>
    /// <param name="powerCoefficient">CP.</param>
    /// <param name="densityKgPerM3">rho [kg/m³].</param>
    /// <param name="revolutionsPerSecond">n [1/s].</param>
    /// <param name="diameterMetres">D [m].</param>
    public static double TorqueNewtonMetres(
        double powerCoefficient, double densityKgPerM3, double revolutionsPerSecond, double diameterMetres) =>
        TorqueOf(powerCoefficient, densityKgPerM3, revolutionsPerSecond, Elementary.Pow(diameterMetres, 5));

    /// <summary>The same thrust for D⁴ [m⁴], for callers who ask many times.</summary>
    internal static double ThrustOf(double thrustCoefficient, double density, double revolutions, double diameterToTheFourth) =>
        thrustCoefficient * density * revolutions * revolutions * diameterToTheFourth;

    /// <summary>The same torque for D⁵ [m⁵].</summary>
    internal static double TorqueOf(double powerCoefficient, double density, double revolutions, double diameterToTheFifth) =>
        powerCoefficient * density * revolutions * revolutions * diameterToTheFifth / (2 * Math.PI);

    /// <summary>Shaft power P = 2 pi n Q [W].</summary>
    /// <param name="torqueNewtonMetres">Q [N·m].</param>
    /// <param name="revolutionsPerSecond">n [1/s].</param>
    public static double PowerWatts(double torqueNewtonMetres, double revolutionsPerSecond) =>
        2 * Math.PI * revolutionsPerSecond * torqueNewtonMetres;

    /// <summary>Torque Q = P/(2 pi n) [N·m].</summary>
    /// <param name="powerWatts">Shaft power at the propeller [W].</param>
    /// <param name="revolutionsPerSecond">n [1/s], above 0.</param>
    public static double TorqueFromPower(double powerWatts, double revolutionsPerSecond) =>
        powerWatts / (2 * Math.PI * revolutionsPerSecond);
}
