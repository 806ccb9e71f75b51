using FrameOpt.Numerics;

namespace FrameOpt.Model.Mission;

/// <summary>The formulas of the responses of a mission, and the ways to turn one into values over a row of lateral offsets.</summary>
public static class MissionResponses
{
    /// <summary>Phases that count in weighted responses.</summary>
    internal static bool Weighted(Phase phase) => phase.Weight > 0;

    /// <summary>All phases.</summary>
    internal static bool Every(Phase phase) => true;

    /// <summary>Phases in which the wing has had time to bank.</summary>
    internal static bool Settled(Phase phase) => phase.IsSettled;

    /// <summary>Phases with the engine off.</summary>
    internal static bool EngineOff(Phase phase) => phase.Power is PhasePower.EngineOff;

    /// <summary>sqrt( sum w R² / sum w ) over the weighted phases.</summary>
    internal static void ResidualRms(MissionRow row, ReadOnlySpan<double> offsets, Span<double> values)
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

    /// <summary>A response that does not depend on the offset.</summary>
    internal static MissionFormula Same(Func<MissionRow, double> of) => (row, _, values) => values.Fill(of(row));

    /// <summary>The largest magnitude of a linear quantity among the phases that count.</summary>
    internal static MissionFormula Largest(Func<Phase, bool> counts, Func<MissionRow, int, LinearFunction> quantity) =>
        (row, offsets, values) =>
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
        };

    /// <summary>The largest quantity of right and left riser load among the phases that count, times a factor; NaN without the
    /// factor.</summary>
    internal static MissionFormula LargestLoad(
        Func<Phase, bool> counts, Func<ResponseReferences, double?> factor, Func<double, double, double> of) => (row, offsets, values) =>
    {
        var scale = factor(row.Mission.References) ?? double.NaN;
        values.Clear();
        for (var p = 0; p < row.Phases.Length; p++)
        {
            if (!counts(row.Phases[p]))
                continue;
            for (var i = 0; i < offsets.Length; i++)
            {
                var (right, left) = PhaseResponses.RiserLoads(row, p, offsets[i]);
                values[i] = Math.Max(values[i], scale * of(right, left));
            }
        }
    };

    /// <summary>The smallest K_psi / |N_w| of all phases.</summary>
    internal static void TwistMarginWorst(MissionRow row, ReadOnlySpan<double> offsets, Span<double> values)
    {
        // The margin is capacity over magnitude: the smallest margin is the inverse of the largest magnitude over capacity.
        Span<LinearFunction> lines = stackalloc LinearFunction[row.Phases.Length];
        for (var p = 0; p < lines.Length; p++)
            lines[p] = (1 / row.Balances[p].YawStiffness) * row.Balances[p].WingYawMoment;
        RowVectors.MaxMagnitude(lines, offsets, values);
        for (var i = 0; i < values.Length; i++)
            values[i] = 1 / values[i];
    }

    /// <summary>The smallest torque margin of the weighted phases. Full throttle is left out: there the engine gives just what the
    /// propeller takes, whatever the design.</summary>
    internal static double TorqueMarginWorst(MissionRow row)
    {
        var smallest = double.PositiveInfinity;
        for (var p = 0; p < row.Phases.Length; p++)
        {
            if (Weighted(row.Phases[p]) && row.Phases[p].Power is not PhasePower.FullThrottle)
                smallest = Math.Min(smallest, row.Points[p].TorqueMargin);
        }

        return smallest;
    }

    /// <summary>Root sum of squares of the changes from the baseline, each over the range of its factor.</summary>
    internal static void DistanceFromBaseline(MissionRow row, ReadOnlySpan<double> offsets, Span<double> values)
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

/// <summary>Fills the values of a response of a mission over a row of lateral offsets.</summary>
/// <param name="row">Prepared, without failure.</param>
/// <param name="offsets">Lateral offsets in m.</param>
/// <param name="values">As many as offsets.</param>
public delegate void MissionFormula(MissionRow row, ReadOnlySpan<double> offsets, Span<double> values);

/// <summary>What some responses are measured against; a response without its reference is NaN.</summary>
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
