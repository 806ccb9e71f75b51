using FrameOpt.Numerics;

namespace FrameOpt.Model.Mission;

/// <summary>Each response of a mission over a row of lateral offsets.</summary>
public static class MissionResponses
{
    /// <summary>Fills one response, in the unit of its <see cref="ResponseEntry"/>; NaN when its reference is not given.</summary>
    /// <param name="row">Prepared, without failure.</param>
    /// <param name="quantity">Which.</param>
    /// <param name="offsets">Lateral offsets in m.</param>
    /// <param name="values">As many as offsets.</param>
    public static void Fill(MissionRow row, MissionQuantity quantity, ReadOnlySpan<double> offsets, Span<double> values)
    {
        switch (quantity)
        {
            case MissionQuantity.ResidualRms: ResidualRms(row, offsets, values); break;
            case MissionQuantity.ResidualWorst: Largest(row, Weighted, PhaseResponses.Residual, offsets, values); break;
            case MissionQuantity.EffortWorst: Largest(row, Every, PhaseResponses.Effort, offsets, values); break;
            case MissionQuantity.PowerOffResidual: Largest(row, EngineOff, PhaseResponses.Residual, offsets, values); break;
            case MissionQuantity.BodyYawWorst:
                Largest(row, Weighted, (r, p) => (180 / Math.PI) * r.Balances[p].BodyYaw, offsets, values);
                break;
            case MissionQuantity.PitchSwing: values.Fill(PitchSwing(row)); break;
            case MissionQuantity.TwistMarginWorst: TwistMarginWorst(row, offsets, values); break;
            case MissionQuantity.TorqueMarginWorst: values.Fill(TorqueMarginWorst(row)); break;
            case MissionQuantity.LoadDifferenceWorst:
                LargestLoad(row, Weighted, 1, offsets, values, (right, left) => Math.Abs(right - left));
                break;
            case MissionQuantity.HangPointLoad:
                LargestLoad(row, Every, row.Mission.References.LimitLoadFactor ?? double.NaN, offsets, values, Math.Max);
                break;
            case MissionQuantity.ArmMoment:
                var scale = (row.Mission.References.LimitLoadFactor * row.Mission.References.OverhangMetres) ?? double.NaN;
                LargestLoad(row, Every, scale, offsets, values, Math.Max);
                break;
            case MissionQuantity.DistanceFromBaseline: DistanceFromBaseline(row, offsets, values); break;
            default: throw new ArgumentOutOfRangeException(nameof(quantity));
        }
    }

    private static bool Weighted(Phase phase) => phase.Weight > 0;

    private static bool Every(Phase phase) => true;

    private static bool EngineOff(Phase phase) => phase.Power is PhasePower.EngineOff;

    private static void ResidualRms(MissionRow row, ReadOnlySpan<double> offsets, Span<double> values)
    {
        var phases = row.Phases;
        Span<LinearFunction> lines = stackalloc LinearFunction[phases.Length];
        Span<double> weights = stackalloc double[phases.Length];
        var count = 0;
        for (var p = 0; p < phases.Length; p++)
        {
            if (phases[p].Weight <= 0)
                continue;
            lines[count] = PhaseResponses.Residual(row, p);
            weights[count++] = phases[p].Weight;
        }

        RowVectors.RootMeanSquare(lines[..count], weights[..count], offsets, values);
    }

    private static void Largest(
        MissionRow row, Func<Phase, bool> counts, Func<MissionRow, int, LinearFunction> quantity, ReadOnlySpan<double> offsets,
            Span<double> values)
    {
        var phases = row.Phases;
        Span<LinearFunction> lines = stackalloc LinearFunction[phases.Length];
        var count = 0;
        for (var p = 0; p < phases.Length; p++)
        {
            if (counts(phases[p]))
                lines[count++] = quantity(row, p);
        }

        RowVectors.MaxMagnitude(lines[..count], offsets, values);
    }

    private static double PitchSwing(MissionRow row)
    {
        double lowest = double.PositiveInfinity, highest = double.NegativeInfinity;
        foreach (ref readonly var body in row.Bodies)
        {
            lowest = Math.Min(lowest, body.PitchRadians);
            highest = Math.Max(highest, body.PitchRadians);
        }

        return (highest - lowest) * 180 / Math.PI;
    }

    private static void TwistMarginWorst(MissionRow row, ReadOnlySpan<double> offsets, Span<double> values)
    {
        // The margin is capacity over size, so the smallest margin is one over the largest size over capacity.
        Span<LinearFunction> lines = stackalloc LinearFunction[row.Phases.Length];
        for (var p = 0; p < lines.Length; p++)
            lines[p] = (1 / row.Balances[p].YawStiffness) * row.Balances[p].WingYawMoment;
        RowVectors.MaxMagnitude(lines, offsets, values);
        for (var i = 0; i < values.Length; i++)
            values[i] = 1 / values[i];
    }

    /// <summary>Full throttle is left out: there the engine gives just what the propeller takes, whatever the design.</summary>
    private static double TorqueMarginWorst(MissionRow row)
    {
        var smallest = double.PositiveInfinity;
        for (var p = 0; p < row.Phases.Length; p++)
        {
            if (Weighted(row.Phases[p]) && row.Phases[p].Power is not PhasePower.FullThrottle)
                smallest = Math.Min(smallest, row.Points[p].TorqueMargin);
        }

        return smallest;
    }

    private static void LargestLoad(
        MissionRow row, Func<Phase, bool> counts, double scale, ReadOnlySpan<double> offsets, Span<double> values,
            Func<double, double, double> pick)
    {
        values.Clear();
        for (var p = 0; p < row.Phases.Length; p++)
        {
            if (!counts(row.Phases[p]))
                continue;
            for (var i = 0; i < offsets.Length; i++)
            {
                var (right, left) = PhaseResponses.RiserLoads(row, p, offsets[i]);
                values[i] = Math.Max(values[i], scale * pick(right, left));
            }
        }
    }

    private static void DistanceFromBaseline(MissionRow row, ReadOnlySpan<double> offsets, Span<double> values)
    {
        var references = row.Mission.References;
        if (references.Baseline is not { } baseline)
        {
            values.Fill(double.NaN);
            return;
        }

        for (var i = 0; i < offsets.Length; i++)
        {
            var geometry = row.Geometry with { OffsetMetres = offsets[i] };
            var sum = 0.0;
            foreach (var (input, range) in references.Ranges)
            {
                var change = (geometry[input] - baseline[input]) / range;
                sum += change * change;
            }

            values[i] = Math.Sqrt(sum);
        }
    }
}

/// <summary>What some responses are reckoned against; a response without its reference is NaN.</summary>
/// <param name="LimitLoadFactor">For hang_point_load, or null.</param>
/// <param name="OverhangMetres">For arm_moment, or null.</param>
/// <param name="Baseline">For distance_from_baseline, or null.</param>
/// <param name="Ranges">Range of each swept factor in m or rad, for distance_from_baseline.</param>
public sealed record ResponseReferences(
    double? LimitLoadFactor,
    double? OverhangMetres,
    FrameGeometry? Baseline,
    IReadOnlyList<KeyValuePair<GeometryInput, double>> Ranges)
{
    /// <summary>No references: those responses are NaN.</summary>
    public static ResponseReferences None { get; } = new(null, null, null, []);
}
