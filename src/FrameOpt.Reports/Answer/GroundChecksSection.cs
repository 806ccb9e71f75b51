using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What to check on the ground before any flight.</summary>
public static class GroundChecksSection
{
    /// <summary>What two scales should read.</summary>
    public static AnswerSection HangCheck(Study study, FrameGeometry geometry)
    {
        var check = Model.Mission.HangCheck.Of(study.Machine, geometry);
        var spacing = study.Factors.First(factor => factor.Input == GeometryInput.HangPointSpacing).Unit.Text(geometry.SpacingMetres);
        return new AnswerSection("Hang check, before any flight",
        [
            $"{Reading(check)}: right {NumberFormat.Load(check.RightNewtons)}, left {NumberFormat.Load(check.LeftNewtons)}, "
                + $"difference {NumberFormat.Load(Math.Abs(check.DifferenceNewtons))}.",
            $"Both scales must add up to {NumberFormat.Load(check.TotalNewtons)}: frame, fuel, pilot and clothing as in the "
                + "study. Weigh with the same fuel and clothing, the pilot sitting centred, arms still.",
            "Frame and pilot hang from a rigid beam by two straps with a scale in each. The straps must be parallel, "
                + $"{spacing} apart at the beam, and of equal length: "
                + $"5 mm of unequal length changes the difference by about {NumberFormat.Load(Math.Abs(check.PerFiveMillimetresNewtons))}.",
            .. OwnStraps(geometry),
            Rating(check),
            $"If the difference is off, the seat is the first cause: {Seat(check)}. Sit centred and read again before measuring holes and "
                + "straps.",
        ]);
    }

    /// <summary>That the frame hangs as it flies, where one side is not like the other: the figures are for that.</summary>
    internal static IEnumerable<string> OwnStraps(FrameGeometry geometry) =>
        geometry.HangHeightDifferenceMetres == 0 && geometry.StrapDifferenceMetres == 0 ? []
        : ["The frame's own straps and carabiners stay on it: the figures are for its two sides as designed, which are not alike, "
            + "and it hangs a little to one side."];

    /// <summary>What scales and beam must carry. That a load dropped into the straps pulls up to twice its weight is elementary
    /// mechanics; the rest is common practice, no source.</summary>
    internal static string Rating(Model.Mission.HangCheck check) =>
        $"Capacity of each scale at least {Load(check.TotalNewtons)}, the whole load: one strap may slip. "
            + $"Beam, straps and what holds them: rated for lifting at least {Load(2 * check.TotalNewtons)}, twice the load, which a load "
            + "that drops into the straps can reach. Hang just clear of the ground.";

    /// <summary>How the pilot's seat moves the difference: "1 mm of the pilot's body to the side changes it by 3.5 N, which is 0.29 mm of
    /// seat for each newton".</summary>
    internal static string Seat(Model.Mission.HangCheck check) => System.FormattableString.Invariant(
        $"1 mm of the pilot's body to the side changes it by {check.PerSeatMillimetreNewtons:0.0} N, which is ")
            + System.FormattableString.Invariant($"{1 / check.PerSeatMillimetreNewtons:0.00} mm of seat for each newton");

    /// <summary>What a tied-down run shows under power.</summary>
    internal static string TiedDown(Study study)
    {
        var (down, up) = study.Machine.Propeller.Rotation == Rotation.Clockwise ? ("LEFT", "RIGHT") : ("RIGHT", "LEFT");
        var full = StaticRun.Of(study.Machine, study.Mission) is { } run
            ? $"Full power standing still: about {RpmText.Of(study.Machine, run.PropellerRpm)}, at {run.AltitudeMetres:0} m altitude."
            : "Full-power rpm: not known from this study; write it down.";
        return $"The reaction pushes the {down} side down, more with more power: the {up} tie-down strap, which keeps that side from "
            + $"rising, tightens. {full}";
    }

    /// <summary>Who is where in a tied-down run. Common practice, no source.</summary>
    internal const string TiedDownPlaces =
        "Nobody sits in it. Frame tied down on both sides to something that cannot move, fire extinguisher at hand. Nobody stands in the "
            + "plane of the propeller, behind it, or within reach of it; the throttle is worked from in front.";

    /// <summary>When a propeller may be touched. Common practice, no source.</summary>
    internal const string PropellerByHand =
        "Turn the propeller by hand only with the ignition off and the lead pulled off the spark plug.";

    /// <summary>Kilograms, as scales and lifting gear are marked, rounded up, and newtons.</summary>
    private static string Load(double newtons) => System.FormattableString.Invariant(
        $"{Up(newtons / Constants.NewtonsPerKilogramForce):0} kg ({Up(newtons):#,0} N)");

    /// <summary>Up to the next whole number; what is whole but for rounding stays.</summary>
    private static double Up(double value) => Math.Ceiling(Math.Round(value, 3));

    /// <summary>What each scale should read, as a table.</summary>
    internal static AnswerSection Scales(Study study, FrameGeometry geometry)
    {
        var check = Model.Mission.HangCheck.Of(study.Machine, geometry);
        return new AnswerSection("Hang check: expected readings", [], new AnswerTable(["scale", "expected, engine off"],
        [
            ["pilot's LEFT", NumberFormat.Load(check.LeftNewtons)],
            ["pilot's RIGHT", NumberFormat.Load(check.RightNewtons)],
            ["right minus left",
                $"{SideText.Side(check.DifferenceNewtons)} more by {NumberFormat.Load(Math.Abs(check.DifferenceNewtons))}"],
        ]));
    }

    /// <summary>What to check before flight, in order.</summary>
    internal static AnswerSection BeforeFlight(Study study, DesignEvaluation chosen)
    {
        var side = Model.Mission.HangCheck.Of(study.Machine, chosen.Geometry).DifferenceNewtons;
        var worst = chosen.Phases.Where(phase => phase.Phase.IsSettled).MaxBy(phase => phase[PhaseQuantity.Effort])!;
        return new AnswerSection("Before flight, in this order",
        [
            $"1. Rotation: {PropellerByHand} Check from behind that it turns "
                + $"{StudyText.RotationText(study.Machine.Propeller.Rotation)}. If it turns the other way, its torque acts opposite to "
                + $"what is stated here for every phase under power, and this design is the wrong one; the figures with the engine off "
                + $"still apply.",
            $"2. Hang check, engine off: the {SideText.Side(side).ToUpperInvariant()} scale must read more, by the figures above.",
            $"3. Tied-down run: {TiedDownPlaces} Increase the power slowly. {TiedDown(study)}",
            "4. Flight: smooth air and plenty of height; level flight first, then climb, then power off, accelerated flight "
                + $"last. The hardest phase to hold is {SideText.EffortOf(worst)}: {SideText.Residual(worst)}.",
        ]);
    }

    private static string Reading(Model.Mission.HangCheck check) => Math.Abs(check.DifferenceNewtons) < 0.5
        ? "With the engine off both scales read the same"
        : $"With the engine off the {SideText.Side(check.DifferenceNewtons).ToUpperInvariant()} scale reads more";
}
