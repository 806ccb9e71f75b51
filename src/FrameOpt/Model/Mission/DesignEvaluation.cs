using FrameOpt.Model.Balance;
using FrameOpt.Model.Propulsion;

namespace FrameOpt.Model.Mission;

/// <summary>What the model says of one design: every phase and the mission, or why it cannot fly.</summary>
/// <param name="Geometry">The design.</param>
/// <param name="Phases">In mission order; empty when it failed.</param>
/// <param name="Mission">Each response at its index; empty when it failed; NaN for one that needs what the study does not give.</param>
/// <param name="Failure">Why it cannot fly; null when it flies.</param>
public sealed record DesignEvaluation(
    FrameGeometry Geometry,
    IReadOnlyList<PhaseResult> Phases,
    IReadOnlyList<double> Mission,
    DesignFailure? Failure)
{
    /// <summary>The model that said it; null for a design that cannot fly.</summary>
    public MissionModel? Model { get; init; }

    /// <summary>One response of the mission, in its unit.</summary>
    public double this[MissionQuantity quantity] => Mission[quantity.Index];

    /// <summary>Any response, in its unit.</summary>
    public double this[Response response] => response switch
    {
        Response.OfPhase phase => Phases[phase.PhaseIndex][phase.Quantity],
        Response.OfMission mission => this[mission.Quantity],
        { IsOverCases: true } when Model is not null => SampledRow.Of(Model, Geometry, response),
        _ => throw new InvalidOperationException(),
    };
}

/// <summary>Why a design cannot fly, with the state of the phase it fails in as far as it was computed.</summary>
/// <param name="Cause">Kind and phase.</param>
/// <param name="Mission">The model.</param>
/// <param name="Geometry">The design.</param>
/// <param name="Conditions">What the phase fixes before any design is chosen.</param>
/// <param name="Point">The operating point of the phase.</param>
/// <param name="Body">Pitch, riser load and moments.</param>
/// <param name="Balance">What the risers hold.</param>
public sealed record DesignFailure(
    FlightFailure Cause, MissionModel Mission, FrameGeometry Geometry, PhaseConditions Conditions, OperatingPoint Point, SuspendedBody Body,
    RollYawBalance Balance)
{
    /// <summary>The phase it fails in.</summary>
    public Phase Phase => Mission.Phases[Cause.PhaseIndex];

    /// <summary>The failure of a design in a row of designs.</summary>
    /// <param name="row">Prepared for that design.</param>
    /// <param name="cause">What its preparation or <see cref="MissionRow.FindFailures"/> found.</param>
    public static DesignFailure Of(MissionRow row, FlightFailure cause) => new(
        cause, row.Mission, row.Geometry, row.Conditions[cause.PhaseIndex], row.Points[cause.PhaseIndex], row.Bodies[cause.PhaseIndex],
        row.Balances[cause.PhaseIndex]);
}

/// <summary>Everything the model says of one phase of one design.</summary>
/// <param name="Phase">The phase.</param>
/// <param name="Values">Each quantity at its index, in its unit; infinite where a margin has no bound.</param>
public sealed record PhaseResult(Phase Phase, IReadOnlyList<double> Values)
{
    /// <summary>A residual torque of this magnitude or less, in N·m, counts as flying straight: the wing's own trim decides.</summary>
    /// <remarks>Source: one millimetre of one-sided line trim is about 1.2 N·m (own estimate).</remarks>
    public const double StraightWithinNewtonMetres = 3;

    /// <summary>One quantity, in its unit.</summary>
    public double this[PhaseQuantity quantity] => Values[quantity.Index];

    /// <summary>True when the phase lasts and the pilot's largest lean is not enough for it, or no lean is.</summary>
    public bool CannotBeHeld => Phase.IsSettled && this[PhaseQuantity.Effort] > 1;

    /// <summary>True when a lean cures nothing: the pendulum share is too small.</summary>
    public bool IsBeyondLean => double.IsInfinity(this[PhaseQuantity.Lean]);

    /// <summary>Twist of the body against the wing about the lines, deg, nose right +.</summary>
    /// <remarks>Source: k = N_w / K_psi.</remarks>
    public double TwistDegrees => 180 / Math.PI / this[PhaseQuantity.TwistMargin] * Math.Sign(this[PhaseQuantity.WingYawMoment]);

    /// <summary>Which way it turns: left, right, or straight within <see cref="StraightWithinNewtonMetres"/>.</summary>
    public string Steers => SteersWith(this[PhaseQuantity.Residual]);

    /// <summary>Which way a residual torque turns: left, right, or straight within <see cref="StraightWithinNewtonMetres"/>.</summary>
    public static string SteersWith(double residualNewtonMetres) =>
        Math.Abs(residualNewtonMetres) <= StraightWithinNewtonMetres ? "straight"
        : residualNewtonMetres > 0 ? "right" : "left";
}
