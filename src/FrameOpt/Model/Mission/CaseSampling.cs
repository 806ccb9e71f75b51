namespace FrameOpt.Model.Mission;

/// <summary>What may really be in place of what a study says: another model, and how far a frame is built off its drawing.</summary>
/// <param name="Model">Machine, wing and mission of the case.</param>
/// <param name="BuiltOff">How far each dimension is off, m or rad.</param>
public sealed record SampledCase(MissionModel Model, FrameGeometry BuiltOff);

/// <summary>How responses over cases are computed: the same cases for every design, so that designs compare fairly.</summary>
/// <param name="Cases">The cases of a model; the model itself alone when nothing is uncertain.</param>
/// <param name="Limits">Those of the study that are bounds on responses of one case.</param>
public sealed record CaseSampling(Func<MissionModel, IReadOnlyList<SampledCase>> Cases, IReadOnlyList<BoundedResponse> Limits)
{
    /// <summary>Nothing is uncertain, and nothing bounded.</summary>
    public static CaseSampling None { get; } = new(model => [new SampledCase(model, default)], []);
}

/// <summary>A response and its bounds.</summary>
/// <param name="Response">Of one case.</param>
/// <param name="Magnitude">True when the magnitude is bounded.</param>
/// <param name="AtLeast">Smallest value allowed; minus infinity for none.</param>
/// <param name="AtMost">Largest value allowed; infinity for none.</param>
public sealed record BoundedResponse(Response Response, bool Magnitude, double AtLeast, double AtMost)
{
    /// <summary>True for a value within the bounds; NaN, of a case that does not fly, never is.</summary>
    public bool IsMetBy(double value) => value >= AtLeast && value <= AtMost;
}
