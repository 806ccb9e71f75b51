namespace FrameOpt.Model;

/// <summary>The model over a whole mission: one machine, one wing, several phases, any frame geometry.</summary>
/// <param name="machine">Everything below the risers.</param>
/// <param name="wing">The wing.</param>
/// <param name="phases">The mission, in order.</param>
/// <param name="references">What some responses are reckoned against.</param>
public sealed class MissionModel(Machine machine, Wing wing, IReadOnlyList<Phase> phases, ResponseReferences references)
{
    /// <summary>Everything below the risers.</summary>
    public Machine Machine => machine;

    /// <summary>The wing.</summary>
    public Wing Wing => wing;

    /// <summary>The mission.</summary>
    public IReadOnlyList<Phase> Phases => phases;

    /// <summary>What some responses are reckoned against.</summary>
    public ResponseReferences References => references;

    /// <summary>What each phase fixes before any design is chosen.</summary>
    public IReadOnlyList<PhaseConditions> Conditions { get; } = [.. phases.Select(phase => PhaseConditions.Of(phase, machine, wing))];

    /// <summary>The same model with one yaw leverage in every phase.</summary>
    /// <param name="yawLeverage">Gamma, 0 or more.</param>
    public MissionModel WithYawLeverage(double yawLeverage) =>
        new(machine, wing with { YawLeverage = new YawLeverage.Constant(yawLeverage) }, phases, references);

    /// <summary>Everything the model says of one design.</summary>
    public DesignEvaluation Evaluate(FrameGeometry geometry)
    {
        var row = new MissionRow(this);
        ReadOnlySpan<double> offset = [geometry.OffsetMetres];
        var failure = row.Prepare(geometry);
        if (failure.Kind == FailureKind.None)
        {
            Span<ushort> code = stackalloc ushort[1];
            row.FindFailures(offset, code);
            failure = FlightFailure.FromCode(code[0]);
        }

        if (failure.Kind != FailureKind.None)
            return new DesignEvaluation(geometry, [], [], FailureWords.Describe(row, failure));

        Span<double> value = stackalloc double[1];
        var results = new PhaseResult[phases.Count];
        for (var p = 0; p < phases.Count; p++)
        {
            var values = new double[ResponseCatalogue.OfPhases.Count];
            for (var q = 0; q < values.Length; q++)
            {
                PhaseResponses.Fill(row, (PhaseQuantity)q, p, offset, value);
                values[q] = value[0];
            }

            results[p] = new PhaseResult(phases[p], values);
        }

        var mission = new double[ResponseCatalogue.OfMissions.Count];
        for (var q = 0; q < mission.Length; q++)
        {
            MissionResponses.Fill(row, (MissionQuantity)q, offset, value);
            mission[q] = value[0];
        }

        return new DesignEvaluation(geometry, results, mission, null);
    }
}
