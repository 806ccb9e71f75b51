namespace FrameOpt.StudyFile.Plausibility;

/// <summary>Every usual range, in one table; docs/study-file.md has the same rows.</summary>
internal static class UsualRanges
{
    private const string Units = "Check the number and its unit";
    private const string Signs = "Check the number, its unit and its sign";
    private const string Crank = "Often a speed or torque of the crank was given as that of the propeller: check the bench run";
    private const string Disagree = "The bench run and the engine's torque do not fit each other: "
        + "often a speed or torque of the crank was given as that of the propeller";

    public static readonly UsualRange Spacing =
        new("the hang-point spacing", "factors.hang_point_spacing", 350, 600, "mm", Units);

    public static readonly UsualRange Offset = new("the lateral offset", "factors.lateral_offset", -100, 100, "mm",
        "It is measured from the middle of the frame to the middle between the hang points: check the number and its unit");

    public static readonly UsualRange HeightAboveCentre = new("the height of the hang points above the centre of gravity",
        "factors.suspension_height", 50, 800, "mm", Signs);

    public static readonly UsualRange Angle = new("the thrust-line angle", "factors.thrust_line_angle", -8, 8, "deg", Signs);

    public static readonly UsualRange Tilt = new("the tilt of the thrust line", "machine.propeller.tilt", -8, 15, "deg", Signs);

    public static readonly UsualRange HubBehindBody = new("the distance of the propeller hub behind the pilot's body",
        "machine.propeller.hub.forward", 200, 1000, "mm", "An engine hangs behind the pilot, so its forward is less than that of the body: "
            + "check the number, its unit and its sign");

    public static readonly UsualRange HubRight =
        new("the propeller hub to the right of the datum", "machine.propeller.hub.right", -100, 100, "mm", Signs);

    public static readonly UsualRange HubAboveCentre =
        new("the height of the propeller hub above the centre of gravity", "machine.propeller.hub.up", -150, 500, "mm", Signs);

    public static readonly UsualRange HangLineAheadOfCentre =
        new("the distance of the hang points in front of the centre of gravity", "machine.hang_line.forward", -200, 200, "mm", Signs);

    public static readonly UsualRange EngineBehindBody = new("the distance of the engine behind the pilot's body",
        "machine.masses[].forward", 50, 1000, "mm", HubBehindBody.Cause);

    public static readonly UsualRange BodyMass = new("the mass of the pilot's body", "machine.masses[].mass", 40, 200, "kg", Units);

    public static readonly UsualRange Lean = new("the pilot's largest lean", "machine.pilot.lean", 20, 150, "mm", Units);

    public static readonly UsualRange DragArea = new("the drag area of pilot and frame", "machine.pilot.drag_area", 0.2, 1.5, "m²", Units);

    public static readonly UsualRange Diameter =
        new("the diameter of the propeller", "machine.propeller.diameter", 0.9, 1.8, "m", Units);

    public static readonly UsualRange TipSpeed = new("the speed of the blade tips on the bench", "machine.propeller.bench.rpm", 100, 240,
        "m/s", Crank);

    public static readonly UsualRange FigureOfMerit = new(
        "the bench run's ideal power for its thrust (momentum theory, T sqrt(T / 2 rho A)) over the power it took",
        "machine.propeller.bench.thrust", 0.35, 0.85, "", Crank)
    {
        Source = "common practice, no source; above 1 is impossible and rejected (actuator disc, Rankine and Froude, from memory)",
    };

    public static readonly UsualRange Reduction = new("the reduction", "machine.engine.reduction", 1, 5, "", Units);

    public static readonly UsualRange Efficiency = new("the efficiency of the drive", "machine.engine.efficiency", 0.85, 1, "", Units);

    public static readonly UsualRange BenchCrankSpeed = new(
        "the crank speed of the bench run (rpm x reduction) over the highest in the engine's table", "machine.propeller.bench.rpm", 0.4, 1,
        "", Disagree);

    public static readonly UsualRange EngineOverBenchTorque = new(
        "what the engine gives at the propeller at the speed of the bench run over the torque that the run took",
        "machine.propeller.bench.torque", 0.95, 1.5, "", Disagree);

    public static readonly UsualRange FlightOverBenchSpeed = new(
        "the propeller speed at full throttle in flight over that of the bench run", "mission.<phase>.power", 0.98, 1.3, "", Disagree);

    public static readonly UsualRange Lines = new("the length of the lines", "wing.lines", 4.5, 10, "m", Units);

    public static readonly UsualRange AspectRatio = new("the flat aspect ratio (span² / area)", "wing.span", 3.5, 8, "",
        "Span and area do not fit each other: check both and their units");

    public static readonly UsualRange LineSpread = new("the line spread over the span", "wing.line_spread", 0.25, 0.5, "", Units);

    public static readonly UsualRange WingLoading = new("the wing loading (all-up mass / area)", "wing.area", 2.5, 9, "kg/m²",
        "The wing and what hangs from it do not fit each other: check the area, the masses and their units");

    public static readonly UsualRange Glide = new("the glide ratio", "wing.polar.rows", 3, 12, "", "Check the order of the columns");

    public static readonly UsualRange Trim = new("the airspeed at trim", "wing.polar.rows", 7, 17, "m/s", Units);

    public static readonly UsualRange HangHeightDifference = new("the height of the right hang point above the left",
        "factors.hang_height_difference", -30, 30, "mm", Signs);

    public static readonly UsualRange StrapDifference = new("the length of the right strap beyond that of the left",
        "factors.strap_difference", -30, 30, "mm", Signs);

    /// <summary>All of them, in the order of the study file.</summary>
    public static readonly IReadOnlyList<UsualRange> All =
    [
        BodyMass, EngineBehindBody, HangLineAheadOfCentre, Diameter, HubBehindBody, HubRight, HubAboveCentre, Tilt, TipSpeed, FigureOfMerit,
        Reduction, Efficiency, BenchCrankSpeed, EngineOverBenchTorque, Lean, DragArea, WingLoading, AspectRatio, Lines, LineSpread, Trim,
        Glide, FlightOverBenchSpeed, Spacing, Offset, HeightAboveCentre, Angle,
        HangHeightDifference, StrapDifference,
    ];
}
