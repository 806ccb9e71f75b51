using FrameOpt.Numerics;

namespace FrameOpt.Model.Mission;

/// <summary>Each quantity of a phase over a row of lateral offsets.</summary>
public static class PhaseResponses
{
    private const double Degrees = 180 / Math.PI;
    private const double Millimetres = 1000;

    /// <summary>Fills one quantity, in the unit of its <see cref="ResponseEntry"/>.</summary>
    /// <param name="row">Prepared, without failure.</param>
    /// <param name="quantity">Which.</param>
    /// <param name="phase">Index in the mission.</param>
    /// <param name="offsets">Lateral offsets in m.</param>
    /// <param name="values">As many as offsets.</param>
    public static void Fill(MissionRow row, PhaseQuantity quantity, int phase, ReadOnlySpan<double> offsets, Span<double> values)
    {
        ref readonly var balance = ref row.Balances[phase];
        ref readonly var body = ref row.Bodies[phase];
        switch (quantity)
        {
            case PhaseQuantity.RollMoment: RowVectors.Linear(body.RollMoment, offsets, values); break;
            case PhaseQuantity.YawMoment: RowVectors.Linear(body.YawMoment, offsets, values); break;
            case PhaseQuantity.BodyRoll: RowVectors.Linear(Degrees * balance.BodyRoll, offsets, values); break;
            case PhaseQuantity.BodyYaw: RowVectors.Linear(Degrees * balance.BodyYaw, offsets, values); break;
            case PhaseQuantity.WingBank: RowVectors.Linear(Degrees * balance.WingBank, offsets, values); break;
            case PhaseQuantity.WingRollMoment: RowVectors.Linear(balance.WingRollMoment, offsets, values); break;
            case PhaseQuantity.WingYawMoment: RowVectors.Linear(balance.WingYawMoment, offsets, values); break;
            case PhaseQuantity.Residual: RowVectors.Linear(Residual(row, phase), offsets, values); break;
            case PhaseQuantity.Lean: RowVectors.Linear(Lean(row, phase), offsets, values); break;
            case PhaseQuantity.Effort: RowVectors.Magnitude(Effort(row, phase), offsets, values); break;
            case PhaseQuantity.TurnRate: RowVectors.Linear(TurnRate(row, phase), offsets, values); break;
            case PhaseQuantity.TwistMargin: RowVectors.Margin(balance.YawStiffness, balance.WingYawMoment, offsets, values); break;
            case PhaseQuantity.LoadRight: Loads(row, phase, offsets, values, (right, _) => right); break;
            case PhaseQuantity.LoadLeft: Loads(row, phase, offsets, values, (_, left) => left); break;
            case PhaseQuantity.LoadDifference: Loads(row, phase, offsets, values, (right, left) => right - left); break;
            default: values.Fill(Shared(row, quantity, phase)); break;
        }
    }

    /// <summary>R = M_w + Gamma N_w: the roll moment at the hang points that alone turns the wing as much as both, N·m, right +.</summary>
    public static LinearFunction Residual(MissionRow row, int phase) =>
        row.Balances[phase].WingRollMoment + row.Conditions[phase].YawLeverage * row.Balances[phase].WingYawMoment;

    /// <summary>The lean in mm that cancels the residual: -R / (kappa W_pilot).</summary>
    public static LinearFunction Lean(MissionRow row, int phase) =>
        (-Millimetres / (row.Balances[phase].PendulumShare * BodyWeightNewtons(row, phase))) * Residual(row, phase);

    /// <summary>Lean over the largest lean; its size is the effort.</summary>
    public static LinearFunction Effort(MissionRow row, int phase) =>
        (1 / (Millimetres * row.Mission.Machine.Pilot.LeanMetres)) * Lean(row, phase);

    /// <summary>Right and left riser load in N: hypot(F/2 +- M_w/s, N_w/s).</summary>
    /// <remarks>Source: statics of a bar on two supports, with the yaw moment as a fore-aft pair.</remarks>
    public static (double Right, double Left) RiserLoads(MissionRow row, int phase, double offsetMetres)
    {
        var half = row.Bodies[phase].RiserLoadNewtons / 2;
        var roll = row.Balances[phase].WingRollMoment.At(offsetMetres) / row.Geometry.SpacingMetres;
        var yaw = row.Balances[phase].WingYawMoment.At(offsetMetres) / row.Geometry.SpacingMetres;
        return (double.Hypot(half + roll, yaw), double.Hypot(half - roll, yaw));
    }

    /// <summary>W_pilot in N: n c g times the mass of what leans.</summary>
    private static double BodyWeightNewtons(MissionRow row, int phase) =>
        row.Phases[phase].LoadFactor * row.Phases[phase].CarriedShare
            * Constants.StandardGravity * row.Mission.Machine.BodyMassKilograms;

    private static LinearFunction TurnRate(MissionRow row, int phase)
    {
        var conditions = row.Conditions[phase];
        var perTorque = TurnEquivalence.TurnRatePerTorque(row.Mission.Wing, conditions.Density, conditions.AirspeedMetresPerSecond);
        return Degrees * perTorque * Residual(row, phase);
    }

    private static void Loads(
        MissionRow row, int phase, ReadOnlySpan<double> offsets, Span<double> values, Func<double, double, double> pick)
    {
        for (var i = 0; i < offsets.Length; i++)
        {
            var (right, left) = RiserLoads(row, phase, offsets[i]);
            values[i] = pick(right, left);
        }
    }

    /// <summary>The quantities that all designs of a row share.</summary>
    private static double Shared(MissionRow row, PhaseQuantity quantity, int phase)
    {
        ref readonly var point = ref row.Points[phase];
        var conditions = row.Conditions[phase];
        return quantity switch
        {
            PhaseQuantity.Rpm => point.Rpm,
            PhaseQuantity.Airspeed => conditions.AirspeedMetresPerSecond,
            PhaseQuantity.Thrust => point.ThrustNewtons,
            PhaseQuantity.Torque => point.TorqueNewtonMetres,
            PhaseQuantity.TorqueMargin => point.TorqueMargin,
            PhaseQuantity.BodyPitch => Degrees * row.Bodies[phase].PitchRadians,
            PhaseQuantity.RiserLoad => row.Bodies[phase].RiserLoadNewtons,
            PhaseQuantity.LineLean => Degrees * row.Bodies[phase].LineLeanRadians,
            PhaseQuantity.PendulumShare => row.Balances[phase].PendulumShare,
            PhaseQuantity.YawLeverage => conditions.YawLeverage,
            PhaseQuantity.WeightShiftAuthority =>
                row.Balances[phase].PendulumShare * BodyWeightNewtons(row, phase) * row.Mission.Machine.Pilot.LeanMetres,
            _ => throw new ArgumentOutOfRangeException(nameof(quantity), quantity, "not shared by a row"),
        };
    }
}
