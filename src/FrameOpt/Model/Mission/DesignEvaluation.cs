namespace FrameOpt.Model.Mission;

/// <summary>What the model says of one design: every phase and the mission, or why it cannot fly.</summary>
/// <param name="Geometry">The design.</param>
/// <param name="Phases">In mission order; empty when it failed.</param>
/// <param name="Mission">Each response at its index; empty when it failed; NaN for one that needs what the study does not give.</param>
/// <param name="Failure">The reason in words, or null.</param>
public sealed record DesignEvaluation(
    FrameGeometry Geometry,
    IReadOnlyList<PhaseResult> Phases,
    IReadOnlyList<double> Mission,
    string? Failure)
{
    /// <summary>One response of the mission, in its unit.</summary>
    public double this[MissionQuantity quantity] => Mission[quantity.Index];

    /// <summary>Any response, in its unit.</summary>
    public double this[Response response] => response switch
    {
        Response.OfPhase phase => Phases[phase.PhaseIndex][phase.Quantity],
        Response.OfMission mission => this[mission.Quantity],
        _ => throw new InvalidOperationException(),
    };
}

/// <summary>Everything the model says of one phase of one design.</summary>
/// <param name="Phase">The phase.</param>
/// <param name="Values">Each quantity at its index, in its unit; infinite where a margin has no bound.</param>
public sealed record PhaseResult(Phase Phase, IReadOnlyList<double> Values)
{
    /// <summary>A residual torque of this magnitude or less, in N·m, counts as flying straight.</summary>
    public const double StraightWithinNewtonMetres = 0.5;

    /// <summary>One quantity, in its unit.</summary>
    public double this[PhaseQuantity quantity] => Values[quantity.Index];

    /// <summary>Which way it turns: left, right, or straight within <see cref="StraightWithinNewtonMetres"/>.</summary>
    public string Steers => SteersWith(this[PhaseQuantity.Residual]);

    /// <summary>Which way a residual torque turns: left, right, or straight within <see cref="StraightWithinNewtonMetres"/>.</summary>
    public static string SteersWith(double residualNewtonMetres) =>
        Math.Abs(residualNewtonMetres) <= StraightWithinNewtonMetres ? "straight"
        : residualNewtonMetres > 0 ? "right" : "left";
}
