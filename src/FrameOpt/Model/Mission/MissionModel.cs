using FrameOpt.Model.Propulsion;

namespace FrameOpt.Model.Mission;

/// <summary>The model over a whole mission: one machine, one wing, several phases, any frame geometry.</summary>
public sealed class MissionModel
{
    private readonly Phase[] phases;
    private readonly PhaseConditions[] conditions;
    private readonly OperatingPointSolver[] operatingPoints;
    private IReadOnlyList<SampledCase>? cases;

    /// <summary>What no design changes is computed here.</summary>
    /// <param name="machine">Everything below the risers.</param>
    /// <param name="wing">The wing.</param>
    /// <param name="phases">The mission, in order.</param>
    /// <param name="references">What some responses are measured against.</param>
    public MissionModel(Machine machine, Wing wing, IReadOnlyList<Phase> phases, ResponseReferences references)
    {
        (Machine, Wing, References) = (machine, wing, references);
        this.phases = [.. phases];
        conditions = Array.ConvertAll(this.phases, phase => PhaseConditions.Of(phase, machine, wing));
        operatingPoints = new OperatingPointSolver[conditions.Length];
        for (var p = 0; p < conditions.Length; p++)
            operatingPoints[p] = new OperatingPointSolver(this.phases[p], conditions[p], machine);
    }

    /// <summary>Everything below the risers.</summary>
    public Machine Machine { get; }

    /// <summary>The wing.</summary>
    public Wing Wing { get; }

    /// <summary>The mission.</summary>
    public IReadOnlyList<Phase> Phases => phases;

    /// <summary>What some responses are measured against.</summary>
    public ResponseReferences References { get; }

    /// <summary>What each phase fixes before any design is chosen.</summary>
    public IReadOnlyList<PhaseConditions> Conditions => conditions;

    /// <summary>What each phase asks of propeller and engine.</summary>
    public IReadOnlyList<OperatingPointSolver> OperatingPoints => operatingPoints;

    /// <summary>The same as arrays, which every row of designs shares.</summary>
    internal (Phase[] Phases, PhaseConditions[] Conditions, OperatingPointSolver[] OperatingPoints) Arrays =>
        (phases, conditions, operatingPoints);

    /// <summary>How responses over many cases are computed.</summary>
    public CaseSampling Sampling { get; init; } = CaseSampling.None;

    /// <summary>What may really be in place of this model.</summary>
    public IReadOnlyList<SampledCase> Cases => cases ??= Sampling.Cases(this);

    /// <summary>The same model with other cases.</summary>
    public MissionModel Over(Func<MissionModel, IReadOnlyList<SampledCase>> other) =>
        new(Machine, Wing, Phases, References) { Sampling = Sampling with { Cases = other } };

    /// <summary>The same model under another wing.</summary>
    public MissionModel With(Wing wing) => new(Machine, wing, Phases, References) { Sampling = Sampling };

    /// <summary>One design in each phase as if the mission had no other, so that a phase it cannot fly hides no other.</summary>
    public IReadOnlyList<DesignEvaluation> EvaluateEachPhase(FrameGeometry geometry) =>
        [.. Phases.Select(phase => new MissionModel(Machine, Wing, [phase], References).Evaluate(geometry))];

    /// <summary>Everything the model says of one design.</summary>
    public DesignEvaluation Evaluate(FrameGeometry geometry)
    {
        var row = new MissionRow(this);
        var failure = row.PrepareDesign(geometry);
        if (failure.Kind != FailureKind.None)
            return new DesignEvaluation(geometry, [], [], DesignFailure.Of(row, failure));

        ReadOnlySpan<double> offset = [geometry.OffsetMetres];
        Span<double> value = stackalloc double[1];
        var results = new PhaseResult[Phases.Count];
        for (var p = 0; p < Phases.Count; p++)
        {
            var values = new double[ResponseCatalogue.OfPhases.Count];
            foreach (var quantity in ResponseCatalogue.OfPhases)
            {
                quantity.Fill(row, p, offset, value);
                values[quantity.Index] = value[0];
            }

            results[p] = new PhaseResult(Phases[p], values);
        }

        var mission = new double[ResponseCatalogue.OfMissions.Count];
        foreach (var quantity in ResponseCatalogue.OfMissions)
        {
            quantity.Fill(row, offset, value);
            mission[quantity.Index] = value[0];
        }

        return new DesignEvaluation(geometry, results, mission, null) { Model = this };
    }
}
