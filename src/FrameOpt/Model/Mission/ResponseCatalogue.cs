namespace FrameOpt.Model.Mission;

/// <summary>The names, units and meanings of everything the model gives: the one place that words them.</summary>
public static class ResponseCatalogue
{
    private static readonly ResponseEntry[] phase =
    [
        new("rpm", "rpm", "propeller speed"),
        new("airspeed", "m/s", "true airspeed"),
        new("thrust", "N", "propeller thrust"),
        new("torque", "N·m", "propeller torque, which the frame feels as reaction"),
        new("body_pitch", "deg", "swing of the body under the hang points, pilot reclining +"),
        new("riser_load", "N", "total load in both risers"),
        new("line_lean", "deg", "lean of the lines, hang points forward of the wing +"),
        new("roll_moment", "N·m", "roll moment of everything but the risers about the hang line, right side down +"),
        new("yaw_moment", "N·m", "yaw moment of everything but the risers about the hang line, nose right +"),
        new("body_roll", "deg", "roll of the body, right side down +"),
        new("body_yaw", "deg", "yaw of the body (crab), nose right +"),
        new("wing_bank", "deg", "bank of the wing under the thrust's side force, right +"),
        new("wing_roll_moment", "N·m", "roll moment that reaches the wing, to the right +"),
        new("wing_yaw_moment", "N·m", "yaw moment that reaches the wing, to the right +"),
        new("pendulum_share", "", "change of residual torque per unit of roll moment on the body"),
        new("twist_margin", "", "yaw stiffness of the risers over the yaw moment in them; below 1 they twist"),
        new("yaw_leverage", "", "roll moment that turns the wing as much as a yaw moment of one"),
        new("residual", "N·m", "residual torque left to the pilot, turns right +"),
        new("load_right", "N", "load in the right riser"),
        new("load_left", "N", "load in the left riser"),
        new("load_difference", "N", "load in the right riser less that in the left"),
        new("lean", "mm", "sideways shift of the pilot's body that cancels the residual torque, to the right +"),
        new("effort", "", "that shift over the largest the pilot can hold; above 1 it cannot be held"),
        new("weight_shift_authority", "N·m", "residual torque the pilot's largest lean can cancel"),
        new("turn_rate", "deg/s", "turn rate if nothing is done (indicative), to the right +"),
        new("torque_margin", "", "torque the engine can give over the torque needed, at the propeller"),
    ];

    private static readonly ResponseEntry[] mission =
    [
        new("residual_rms", "N·m", "weighted root mean square of the residual torque over the mission"),
        new("residual_worst", "N·m", "largest residual torque of the weighted phases, either way"),
        new("effort_worst", "", "largest effort of all phases, engine off included"),
        new("power_off_residual", "N·m", "largest residual torque with the engine off, either way: the price of a fixed offset"),
        new("pitch_swing", "deg", "largest less smallest body pitch of all phases, engine off included"),
        new("twist_margin_worst", "", "smallest twist margin of all phases"),
        new("body_yaw_worst", "deg", "largest body yaw (crab) of the weighted phases, either way"),
        new("load_difference_worst", "N", "largest riser load difference of the weighted phases, either way"),
        new("hang_point_load", "N",
            "largest load in one riser of all phases, weight 0 and engine off included, times the study's limit load factor"),
        new("arm_moment", "N·m", "hang-point load times the study's overhang"),
        new("torque_margin_worst", "",
            "smallest torque margin of the weighted phases, full throttle left out (its margin is 1 by definition)"),
        new("distance_from_baseline", "", "root sum of squares of the changes from the baseline, each in units of its factor's range"),
    ];

    /// <summary>All quantities of a phase, in the order of <see cref="PhaseQuantity"/>.</summary>
    public static IReadOnlyList<ResponseEntry> OfPhases => phase;

    /// <summary>All responses of a mission, in the order of <see cref="MissionQuantity"/>.</summary>
    public static IReadOnlyList<ResponseEntry> OfMissions => mission;

    /// <summary>How a phase quantity is written.</summary>
    public static ResponseEntry Of(PhaseQuantity quantity) => phase[(int)quantity];

    /// <summary>How a mission response is written.</summary>
    public static ResponseEntry Of(MissionQuantity quantity) => mission[(int)quantity];
}

/// <summary>How one response is written and read.</summary>
/// <param name="Name">As a study file writes it.</param>
/// <param name="Unit">The unit its value is held and shown in; empty for a plain number.</param>
/// <param name="Meaning">In words, for a table's header or a list of responses.</param>
public sealed record ResponseEntry(string Name, string Unit, string Meaning);

#pragma warning disable CS1591 // each member's name, unit and meaning stand in ResponseCatalogue, the one place that words them
/// <summary>What the model says of one phase. Names, units and meanings: <see cref="ResponseCatalogue"/>.</summary>
public enum PhaseQuantity
{
    Rpm,
    Airspeed,
    Thrust,
    Torque,
    BodyPitch,
    RiserLoad,
    LineLean,
    RollMoment,
    YawMoment,
    BodyRoll,
    BodyYaw,
    WingBank,
    WingRollMoment,
    WingYawMoment,
    PendulumShare,
    TwistMargin,
    YawLeverage,
    Residual,
    LoadRight,
    LoadLeft,
    LoadDifference,
    Lean,
    Effort,
    WeightShiftAuthority,
    TurnRate,
    TorqueMargin,
}

#pragma warning disable CS1591 // each member's name, unit and meaning stand in ResponseCatalogue, the one place that words them
/// <summary>What the model says of a whole mission. Names, units and meanings: <see cref="ResponseCatalogue"/>.</summary>
public enum MissionQuantity
{
    ResidualRms,
    ResidualWorst,
    EffortWorst,
    PowerOffResidual,
    PitchSwing,
    TwistMarginWorst,
    BodyYawWorst,
    LoadDifferenceWorst,
    HangPointLoad,
    ArmMoment,
    TorqueMarginWorst,
    DistanceFromBaseline,
}
