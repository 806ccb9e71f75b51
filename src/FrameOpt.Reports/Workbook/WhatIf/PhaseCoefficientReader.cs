using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>Takes the coefficients of every phase from the model.</summary>
internal sealed class PhaseCoefficientReader(MissionModel mission)
{
    private readonly MissionRow rollAlone = new(mission.WithYawLeverage(0));
    private readonly MissionRow withYaw = new(mission.WithYawLeverage(1));

    /// <summary>The coefficients of every phase, exact at this spacing, height and angle, or null when some phase cannot be flown at any
    /// offset.</summary>
    public PhaseCoefficients[]? Evaluate(FrameGeometry geometry)
    {
        if (rollAlone.Prepare(geometry).Kind != FailureKind.None || withYaw.Prepare(geometry).Kind != FailureKind.None)
            return null;
        var phases = new PhaseCoefficients[mission.Phases.Count];
        for (var p = 0; p < phases.Length; p++)
        {
            var balance = rollAlone.Balances[p];
            var roll = PhaseResponses.WeightShiftAuthority(rollAlone, p);
            phases[p] = new PhaseCoefficients(
                balance.WingRollMoment, balance.WingYawMoment, roll, PhaseResponses.WeightShiftAuthority(withYaw, p) - roll,
                rollAlone.Bodies[p].Load.Newtons);
        }

        return phases;
    }
}

/// <summary>What one phase of one level of spacing, height and angle needs for any lateral offset and yaw leverage.</summary>
/// <param name="Roll">M_w, N·m, straight in the offset.</param>
/// <param name="Yaw">N_w, N·m, straight in the offset.</param>
/// <param name="AuthorityRoll">Weight-shift authority through roll alone, N·m.</param>
/// <param name="AuthorityYaw">What a yaw leverage of one adds to it, N·m.</param>
/// <param name="RiserLoadNewtons">Total load in both risers.</param>
internal readonly record struct PhaseCoefficients(
    LinearFunction Roll, LinearFunction Yaw, double AuthorityRoll, double AuthorityYaw, double RiserLoadNewtons)
{
    /// <summary>The residual torque, N·m, right +.</summary>
    public double Residual(double offsetMetres, double yawLeverage) => Roll.At(offsetMetres) + yawLeverage * Yaw.At(offsetMetres);

    /// <summary>The residual torque the pilot's largest lean can cancel, N·m.</summary>
    public double Authority(double yawLeverage) => AuthorityRoll + yawLeverage * AuthorityYaw;

    public static PhaseCoefficients operator +(PhaseCoefficients a, PhaseCoefficients b) => new(
        a.Roll + b.Roll, a.Yaw + b.Yaw, a.AuthorityRoll + b.AuthorityRoll, a.AuthorityYaw + b.AuthorityYaw,
            a.RiserLoadNewtons + b.RiserLoadNewtons);

    public static PhaseCoefficients operator *(double k, PhaseCoefficients a) => new(
        k * a.Roll, k * a.Yaw, k * a.AuthorityRoll, k * a.AuthorityYaw, k * a.RiserLoadNewtons);
}
