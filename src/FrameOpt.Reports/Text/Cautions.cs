namespace FrameOpt.Reports.Text;

/// <summary>Safety of use and limits of the model in words; every report takes them from here.</summary>
public static class Cautions
{
    /// <summary>A twist margin below this holds a steady torque but not one that comes on at once.</summary>
    /// <remarks>Source: energy of a bifilar suspension under a step of torque, small damping (docs/model.md).</remarks>
    public const double SuddenTorqueTwistMargin = 1.38;

    /// <summary>Roll and yaw of the body beyond this, in degrees, are too large for a model that takes them as small.</summary>
    /// <remarks>Source: at 15 degrees the sine is 1.1 % below the angle and the cosine 3.4 % below 1.</remarks>
    public const double SmallAngleLimitDegrees = 15;

    /// <summary>The danger, in one sentence.</summary>
    public const string Danger = "Riser twist and torque at full power near the ground can injure or kill.";

    /// <summary>The least certain number of the model.</summary>
    public const string YawLeverageUncertainty =
        "The yaw leverage, which weighs the yaw part of the residual torque against its roll part, is the least certain number "
            + "of the model: "
        + "read the two parts beside the residual, and the answer over the range 0.2 to 1.6, before choosing a hole.";

    /// <summary>What has not been validated.</summary>
    public const string NotValidated =
        "The balance is statics: no published measurement of riser loads or turn under propeller torque on a back-worn frame was "
            + "found to validate it.";

    /// <summary>How to start testing.</summary>
    public const string GroundTestFirst = "Test on the ground first, then fly with margin.";

    /// <summary>The cautions on every first page.</summary>
    public static IReadOnlyList<string> FirstPage { get; } = [$"{Danger} {GroundTestFirst}", YawLeverageUncertainty, NotValidated];

    /// <summary>For the person who builds and flies.</summary>
    public static IReadOnlyList<string> Safety { get; } =
    [
        Danger,
        GroundTestFirst,
        "Certification, national rules and the limits of the frame's maker and the wing's maker decide, not these figures.",
        "An effort above 1 means the pilot cannot hold the turn by weight shift in that phase: do not build it for that use.",
        "A fixed offset is right at one power only. With the engine off it turns the wing the other way: try that with height to spare.",
        "Do not cure a turn by trimming one side faster: a collapse or an overshoot then recovers asymmetrically (common "
            + "practice, no published source).",
        "Hang-point load and arm moment are figures only: strength is for certified tests.",
        $"A twist margin below {PlainNumber.Text(SuddenTorqueTwistMargin)} is not enough: a sudden torque can carry the risers "
            + "over even where a steady one does not.",
    ];

    /// <summary>What the model leaves out.</summary>
    public static IReadOnlyList<string> ModelLimits { get; } =
    [
        NotValidated,
        YawLeverageUncertainty,
        "Quasi-static: every phase is a steady state. Opening the throttle fast adds the torque of spinning up the engine, "
            + "which is left out.",
        "Hang points are rigid with the frame; swinging arms change the share that reaches the wing and are outside the model.",
        "The extra pull of the down-going blade in oblique flow (a few N·m) is left out, and so are propeller side force and slipstream.",
        $"Roll and yaw of the body are taken as small: beyond {PlainNumber.Text(SmallAngleLimitDegrees)} deg the figures are rough.",
        "The canopy is represented by four numbers; the built-in coefficients are generic, and published ones differ four to "
            + "eight times in damping.",
        "Turn rates are indicative only: the very sign of the turn that an asymmetry causes depends on canopy curvature and "
            + "rigging (Slegers and Costello 2003).",
        "A carried share below 1 is the moment of lift-off; the legs' own help against roll and pitch is ignored, "
            + "which is on the safe side.",
        "A stopped or windmilling propeller's drag is taken as part of the measured polar.",
        "No aeroelastic, collapse or spin behaviour; no structural proof.",
    ];

    /// <summary>Standards that bound the geometry; no value is quoted.</summary>
    public static IReadOnlyList<string> Standards { get; } =
    [
        "EN 926-2 sets the distance between a test harness's attachment points by total flying mass when a wing is classified. "
            + "A hang-point spacing far from it "
            + "flies a wing outside the conditions it was tested in: consult the current text and enter your own limit.",
        "EN 1651 gives strength tests of a harness, symmetric and asymmetric load on the riser attachment points among them: "
            + "consult the current text.",
    ];
}
