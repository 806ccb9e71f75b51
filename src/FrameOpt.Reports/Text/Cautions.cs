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

    /// <summary>The least certain numbers of the model.</summary>
    public const string WingUncertainty =
        "The yaw leverage of the wing and the riser coupling are the least certain numbers of the model: before choosing a hole look at "
            + "the answer with low and high leverage and with soft and stiff coupling, and at the three parts of the residual torque.";

    /// <summary>What a phase that has not settled can and cannot tell.</summary>
    public static string Unsettled(string phaseName) =>
        $"in the first ten seconds of {phaseName} nothing is steady (sway takes 7 s, fore and aft 8 s, twist 3 s). Judge it by the twist "
            + "and the load difference; the twist can peak at 10 deg or more whatever the static margin above 6.";

    /// <summary>What has not been validated.</summary>
    public const string NotValidated =
        "The model is a static balance: no published measurement of riser loads or of turning under propeller torque on a back-worn "
            + "frame was found to validate it.";

    /// <summary>How to start testing.</summary>
    public const string GroundTestFirst = "Test on the ground first, then fly with margin.";

    /// <summary>The cautions on every first page.</summary>
    public static IReadOnlyList<string> FirstPage { get; } = [$"{Danger} {GroundTestFirst}", WingUncertainty, NotValidated];

    /// <summary>For the person who builds and flies.</summary>
    public static IReadOnlyList<string> Safety { get; } =
    [
        Danger,
        GroundTestFirst,
        "Certification, national regulations and the limits set by the frame and wing manufacturers take precedence over these figures.",
        "An effort above 1 means the pilot cannot hold the turn by weight shift in that phase: do not build it for that use.",
        "A fixed offset is correct at one power setting only. With the engine off it turns the wing the other way: try this with plenty "
            + "of height.",
        "Do not correct a turn by trimming one side faster: the wing then recovers asymmetrically from a collapse or an overshoot "
            + "(common practice, no published source).",
        "Hang-point load and arm moment are calculated values only: strength must be shown by certified tests.",
        $"A twist margin below {PlainNumber.Text(SuddenTorqueTwistMargin)} is not enough: a suddenly applied torque can twist the risers "
            + $"even where a steady one does not.",
    ];

    /// <summary>What the model leaves out.</summary>
    public static IReadOnlyList<string> ModelLimits { get; } =
    [
        NotValidated,
        WingUncertainty,
        "Quasi-static: a phase is a steady state, or the balance of its first seconds. In the first ten seconds of full throttle nothing "
            + "is steady; the inertia of a sideways start (4 to 8 N·m for a second or two) is neglected. The torque that spins up the "
            + "propeller when the throttle is opened is checked on its own; that of the engine's own inertia is neglected.",
        "Hang points are fixed rigidly to the frame. On arms that swing freely the load runs through the pivot: the pivot is the "
            + "hang point.",
        "The extra thrust of the down-going blade in oblique flow (a few N·m), the propeller side force and the slipstream are neglected.",
        $"Roll and yaw of the body are assumed to be small: beyond {PlainNumber.Text(SmallAngleLimitDegrees)} deg the results are only "
            + $"approximate.",
        "The canopy is represented by a handful of numbers, the built-in ones generic, and has no asymmetry of its own: one millimetre of "
            + "one-sided line trim is about 1.2 N·m, so below 3 N·m nothing is resolved.",
        "Turn rates are indicative only: even the sign of the turn caused by an asymmetry depends on canopy curvature and "
            + "rigging (Slegers and Costello 2003).",
        "A carried share below 1 represents lift-off; the support of the legs against roll and pitch is neglected, which is conservative.",
        "The drag of a stopped or windmilling propeller is assumed to be included in the measured polar.",
        "Aeroelastic, collapse and spin behaviour are not modelled; structural strength is not verified.",
    ];

    /// <summary>Standards that bound the geometry; no value is quoted.</summary>
    public static IReadOnlyList<string> Standards { get; } =
    [
        "EN 926-2 sets the distance between a test harness's attachment points by total flying mass when a wing is classified. "
            + "A hang-point spacing far from it "
            + "means flying the wing outside the conditions it was tested in: consult the current text and enter your own limit.",
        "EN 1651 specifies strength tests of a harness, including symmetric and asymmetric loads on the riser attachment points: consult "
            + "the current text.",
    ];
}
