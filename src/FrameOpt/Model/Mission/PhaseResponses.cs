using FrameOpt.Numerics;

namespace FrameOpt.Model.Mission;

/// <summary>The formulas of the quantities of a phase, and the ways to turn one into values over a row of lateral offsets.</summary>
public static class PhaseResponses
{
    /// <summary>Below this pendulum share a lean cures nothing: lean and effort are without bound.</summary>
    public const double LeastPendulumShare = 0.2;

    /// <summary>R: the roll moment at the hang points that is left for the pilot, N·m, turns right +.</summary>
    public static LinearFunction Residual(MissionRow row, int phase) => row.Balances[phase].Residual;

    /// <summary>Gamma N_w, the part of R from the yaw moment, N·m.</summary>
    public static LinearFunction YawPart(MissionRow row, int phase) =>
        row.Bodies[phase].Wing.Yaw * row.Balances[phase].WingYawMoment;

    /// <summary>n m_w g L Phi, the part of R from the wing's own weight, N·m; 0 in a phase that has not settled.</summary>
    public static LinearFunction WingWeightPart(MissionRow row, int phase) =>
        row.Bodies[phase].Wing.BankNewtonMetres * row.Balances[phase].WingBank;

    /// <summary>The lean in m that cancels the residual: -R / (kappa W_pilot), right +; infinite where kappa is below
    /// <see cref="LeastPendulumShare"/>.</summary>
    public static LinearFunction Lean(MissionRow row, int phase)
    {
        var kappa = row.Balances[phase].PendulumShare;
        return kappa < LeastPendulumShare
            ? new LinearFunction(double.PositiveInfinity, 0)
            : (-1 / (kappa * PilotWeightNewtons(row, phase))) * Residual(row, phase);
    }

    /// <summary>Lean over the largest lean; its magnitude is the effort.</summary>
    public static LinearFunction Effort(MissionRow row, int phase) =>
        (1 / row.Mission.Machine.Pilot.LeanMetres) * Lean(row, phase);

    /// <summary>kappa W_pilot times the largest lean, N·m.</summary>
    public static double WeightShiftAuthority(MissionRow row, int phase) =>
        row.Balances[phase].PendulumShare * PilotWeightNewtons(row, phase) * row.Mission.Machine.Pilot.LeanMetres;

    /// <summary>The turn rate that the residual alone gives, rad/s, right +.</summary>
    public static LinearFunction TurnRate(MissionRow row, int phase)
    {
        ref readonly var conditions = ref row.Conditions[phase];
        var perTorque = StraightFlight.TurnRatePerTorque(row.Mission.Wing, conditions.Density, conditions.TrimMetresPerSecond);
        return perTorque * Residual(row, phase);
    }

    /// <summary>K_psi / |N_w|.</summary>
    public static void TwistMargin(MissionRow row, int phase, ReadOnlySpan<double> offsets, Span<double> values) =>
        RowVectors.Margin(row.Balances[phase].YawStiffness, row.Balances[phase].WingYawMoment, offsets, values);

    /// <summary>Right and left riser load in N: hypot(F/2 +- M_w/s, N_w/s).</summary>
    /// <remarks>Source: statics of a beam on two supports, with the yaw moment as a fore-aft pair.</remarks>
    public static (double Right, double Left) RiserLoads(MissionRow row, int phase, double offsetMetres)
    {
        var half = row.Bodies[phase].Load.Newtons / 2;
        var roll = row.Balances[phase].WingRollMoment.At(offsetMetres) / row.Geometry.SpacingMetres;
        var yaw = row.Balances[phase].WingYawMoment.At(offsetMetres) / row.Geometry.SpacingMetres;
        return (double.Hypot(half + roll, yaw), double.Hypot(half - roll, yaw));
    }

    /// <summary>A quantity that does not depend on the offset.</summary>
    internal static PhaseFormula Same(Func<MissionRow, int, double> of) =>
        (row, phase, _, values) => values.Fill(of(row, phase));

    /// <summary>A quantity that is linear in the offset.</summary>
    internal static PhaseFormula Linear(Func<MissionRow, int, LinearFunction> of) =>
        (row, phase, offsets, values) => RowVectors.Linear(of(row, phase), offsets, values);

    /// <summary>The magnitude of such a quantity.</summary>
    internal static PhaseFormula Magnitude(Func<MissionRow, int, LinearFunction> of) =>
        (row, phase, offsets, values) => RowVectors.Magnitude(of(row, phase), offsets, values);

    /// <summary>A quantity of the right and left riser load.</summary>
    internal static PhaseFormula Loads(Func<double, double, double> of) => (row, phase, offsets, values) =>
    {
        for (var i = 0; i < offsets.Length; i++)
        {
            var (right, left) = RiserLoads(row, phase, offsets[i]);
            values[i] = of(right, left);
        }
    };

    /// <summary>W_pilot in N: n c g times the mass of what leans.</summary>
    private static double PilotWeightNewtons(MissionRow row, int phase) =>
        row.Phases[phase].LoadFactor * row.Phases[phase].CarriedShare
            * Constants.StandardGravity * row.Mission.Machine.BodyMassKilograms;
}

/// <summary>Fills the values of a quantity of one phase over a row of lateral offsets.</summary>
/// <param name="row">Prepared, without failure.</param>
/// <param name="phase">Index in the mission.</param>
/// <param name="offsets">Lateral offsets in m.</param>
/// <param name="values">As many as offsets.</param>
public delegate void PhaseFormula(MissionRow row, int phase, ReadOnlySpan<double> offsets, Span<double> values);
