namespace FrameOpt.Model;

/// <summary>What the model says of one design: every phase and the mission, or why it cannot fly.</summary>
/// <param name="Geometry">The design.</param>
/// <param name="Phases">In mission order; empty when it failed.</param>
/// <param name="Mission">By <see cref="MissionQuantity"/>; empty when it failed; NaN for a response the study gives no basis for.</param>
/// <param name="Failure">The reason in words, or null.</param>
public sealed record DesignEvaluation(
    FrameGeometry Geometry,
    IReadOnlyList<PhaseResult> Phases,
    IReadOnlyList<double> Mission,
    string? Failure)
{
    /// <summary>One response of the mission, in the unit of its <see cref="ResponseEntry"/>.</summary>
    public double this[MissionQuantity quantity] => Mission[(int)quantity];

    /// <summary>Any response, in its unit.</summary>
    public double this[Response response] => response switch
    {
        Response.OfPhase phase => Phases[phase.PhaseIndex][phase.Quantity],
        Response.OfMission mission => Mission[(int)mission.Quantity],
        _ => throw new InvalidOperationException(),
    };
}
