using FrameOpt.Model;

namespace FrameOpt.Reports;

/// <summary>Takes the coefficients of every phase from the model.</summary>
internal sealed class CoefficientReader(MissionModel mission)
{
    private readonly MissionRow rollAlone = new(mission.WithYawLeverage(0));
    private readonly MissionRow withYaw = new(mission.WithYawLeverage(1));

    /// <summary>The coefficients of every phase, exact at this spacing, height and angle, or null when some phase cannot be flown at any offset.</summary>
    public PhaseCoefficients[]? Read(FrameGeometry geometry)
    {
        if (rollAlone.Prepare(geometry).Kind != FailureKind.None || withYaw.Prepare(geometry).Kind != FailureKind.None)
            return null;
        var phases = new PhaseCoefficients[mission.Phases.Count];
        for (var p = 0; p < phases.Length; p++)
        {
            var balance = rollAlone.Balances[p];
            var roll = Authority(rollAlone, p);
            phases[p] = new PhaseCoefficients(
                balance.WingRollMoment, balance.WingYawMoment, roll, Authority(withYaw, p) - roll, rollAlone.Bodies[p].RiserLoadNewtons);
        }

        return phases;
    }

    private static double Authority(MissionRow row, int phase)
    {
        Span<double> value = stackalloc double[1];
        PhaseResponses.Fill(row, PhaseQuantity.WeightShiftAuthority, phase, [0], value);
        return value[0];
    }
}
