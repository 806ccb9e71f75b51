using FrameOpt.Model;

namespace FrameOpt.Reports;

/// <summary>What one phase of one level of spacing, height and angle needs for any lateral offset and yaw leverage.</summary>
/// <param name="Roll">M_w, N·m, straight in the offset.</param>
/// <param name="Yaw">N_w, N·m, straight in the offset.</param>
/// <param name="AuthorityRoll">Weight-shift authority through roll alone, N·m.</param>
/// <param name="AuthorityYaw">What a yaw leverage of one adds to it, N·m.</param>
/// <param name="RiserLoadNewtons">Total load in both risers.</param>
internal readonly record struct PhaseCoefficients(OffsetLine Roll, OffsetLine Yaw, double AuthorityRoll, double AuthorityYaw, double RiserLoadNewtons)
{
    /// <summary>The residual torque, N·m, right +.</summary>
    public double Residual(double offsetMetres, double yawLeverage) => Roll.At(offsetMetres) + yawLeverage * Yaw.At(offsetMetres);

    /// <summary>The residual torque the pilot's largest lean can cancel, N·m.</summary>
    public double Authority(double yawLeverage) => AuthorityRoll + yawLeverage * AuthorityYaw;

    public static PhaseCoefficients operator +(PhaseCoefficients a, PhaseCoefficients b) => new(
        a.Roll + b.Roll, a.Yaw + b.Yaw, a.AuthorityRoll + b.AuthorityRoll, a.AuthorityYaw + b.AuthorityYaw, a.RiserLoadNewtons + b.RiserLoadNewtons);

    public static PhaseCoefficients operator *(double k, PhaseCoefficients a) => new(
        k * a.Roll, k * a.Yaw, k * a.AuthorityRoll, k * a.AuthorityYaw, k * a.RiserLoadNewtons);
}
