using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>Takes the coefficients of every phase from the model.</summary>
internal sealed class PhaseCoefficientReader(MissionModel mission)
{
    private readonly MissionRow[] rows = [.. WingCases.All.Select(wingCase => new MissionRow(mission.With(wingCase.Of(mission.Wing))))];

    /// <summary>The coefficients of every phase, exact at this spacing, height and angle, or null when some phase cannot be flown at any
    /// offset.</summary>
    public PhaseCoefficients[]? Evaluate(FrameGeometry geometry)
    {
        if (rows.Any(row => row.Prepare(geometry).Kind != FailureKind.None))
            return null;
        var given = rows[(int)WingCase.AsGiven];
        return [.. Enumerable.Range(0, mission.Phases.Count).Select(p => new PhaseCoefficients(
            given.Balances[p].WingRollMoment,
            given.Balances[p].WingYawMoment,
            given.Bodies[p].Wing.Yaw,
            given.Bodies[p].Load.Newtons,
            [.. rows.Select(row => new CaseCoefficients(
                PhaseResponses.Residual(row, p), PhaseResponses.WeightShiftAuthority(row, p)))]))];
    }
}

/// <summary>What one phase of one level of spacing, height and angle needs for any lateral offset.</summary>
/// <param name="Roll">M_w with the wing as given, N·m, linear in the offset.</param>
/// <param name="Yaw">N_w with the wing as given, N·m, linear in the offset.</param>
/// <param name="YawLeverage">Gamma with the wing as given.</param>
/// <param name="RiserLoadNewtons">Total load in both risers.</param>
/// <param name="Cases">By <see cref="WingCase"/>.</param>
internal readonly record struct PhaseCoefficients(
    LinearFunction Roll, LinearFunction Yaw, double YawLeverage, double RiserLoadNewtons, IReadOnlyList<CaseCoefficients> Cases)
{
    public static PhaseCoefficients operator +(PhaseCoefficients a, PhaseCoefficients b) => new(
        a.Roll + b.Roll, a.Yaw + b.Yaw, a.YawLeverage + b.YawLeverage, a.RiserLoadNewtons + b.RiserLoadNewtons,
        [.. a.Cases.Zip(b.Cases, (one, other) => new CaseCoefficients(one.Residual + other.Residual, one.Authority + other.Authority))]);

    public static PhaseCoefficients operator *(double k, PhaseCoefficients a) => new(
        k * a.Roll, k * a.Yaw, k * a.YawLeverage, k * a.RiserLoadNewtons,
        [.. a.Cases.Select(each => new CaseCoefficients(k * each.Residual, k * each.Authority))]);
}

/// <summary>What a phase leaves with the wing of one case.</summary>
/// <param name="Residual">R, N·m, right +, linear in the offset.</param>
/// <param name="Authority">The residual torque the pilot's largest lean can cancel, N·m.</param>
internal readonly record struct CaseCoefficients(LinearFunction Residual, double Authority);
