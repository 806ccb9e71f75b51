using FrameOpt.Forms;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Forms;

/// <summary>What stands above each sheet of a form: cautions and when to stop, then how to measure. Common practice, no published
/// source.</summary>
/// <param name="Cautions">In a warning colour.</param>
/// <param name="How">Plain.</param>
public sealed record FormNotes(IReadOnlyList<string> Cautions, IReadOnlyList<string> How)
{
    /// <summary>In reading order.</summary>
    public IEnumerable<string> All => [.. Cautions, .. How];

    /// <summary>Of the whole form.</summary>
    /// <param name="study">Named there.</param>
    /// <param name="form">The runs.</param>
    public static FormNotes ReadMe(Study study, MeasurementForm form) => new(
        [$"{Text.Cautions.Danger} {Text.Cautions.GroundTestFirst}", Text.Cautions.Safety[2], Text.Cautions.NotValidated],
        [
            $"A form to fill in for: {study.FullTitle}. {DatumText.Sentence(study.Machine)}",
            "Each sheet is one kind of measurement; fill in what you can, in any order of sheets, and leave the rest empty. Two "
                + "scales alone "
                + "are worth most. Within a sheet keep the order of the rows: it is random on purpose, so that wind, warmth and fuel "
                + "do not look "
                + "like an effect. A block is one day or one flight.",
            "Type numbers without a unit in the unit of the header, or with a unit of their own (61 kgf, 600 N). Change the unit in "
                + "the header's "
                + "brackets to use another for the whole column. Left and right are always the pilot's, as seen from behind.",
            $"Do not move rows, columns or settings. For a run of your own write {FormReader.Extra} in the column run of an empty "
                + "row, and how "
                + "it was set.",
            "Then: frameopt fit STUDY --measured THIS-FILE --out corrected.yaml",
            .. form.LeftOut.Select(left => $"Left out of the flights: {left}."),
        ]);

    /// <summary>Of one sheet.</summary>
    /// <param name="study">For the loads.</param>
    /// <param name="frame">As built.</param>
    /// <param name="sheet">Of the form.</param>
    public static FormNotes Of(Study study, FrameGeometry frame, FormSheet sheet)
    {
        var check = HangCheck.Of(study.Machine, frame);
        return sheet.Name switch
        {
            "Static bench" => new(
                [GroundChecksSection.TiedDownPlaces, GroundChecksSection.PropellerByHand,
                    "STOP when anything loosens, shakes or smells, when the rpm do not hold, or when anybody comes near."],
                ["Set the rpm, wait ten seconds, read the rpm and the thrust: a scale in the line that holds the frame back. Torque "
                    + "or power at "
                    + "the propeller, one of the two; leave both empty where neither is measured. Temperature and altitude are those "
                    + "of the place."]),
            "Hang check" => new(
                [GroundChecksSection.Rating(check), "Engine off, ignition lead off. STOP and let down when a strap slips, a beam bends or "
                    + "anything creaks."],
                ["Two equal, parallel straps as far apart as the hang points, a scale in each. Mark the straps left and right with tape. "
                    + "Changed over: the left strap and scale on the right, and the other way round; what changes then is the straps' "
                    + "doing.",
                    "Sit centred, arms still, fuel and clothing as in the study."]),
            "Hang angle" => new(
                [GroundChecksSection.Rating(check), "NEVER with the engine running: the pull is a cord from the hub along the thrust "
                    + "line, with "
                    + "a scale in it, ignition lead off. STOP when the frame swings or turns."],
                ["Tape a line on the frame that stands upright when the frame is level as in the study's drawing. Photo from the "
                    + "side, camera "
                    + "level, a plumb line in the picture. The angle is between line and plumb line; back is the pilot reclining, top "
                    + "of the line "
                    + "going back."]),
            _ => new(
                [$"{Text.Cautions.Danger} {Text.Cautions.GroundTestFirst}",
                    "Only for a pilot qualified on this wing and frame, with reserve and helmet, in smooth air, with plenty of height "
                        + "over a "
                        + "landing field. One change at a time; the ground checks come first.",
                    "STOP and land when a row turns the side opposite to that expected, when leaning alone does not hold it, when the "
                        + "risers begin "
                        + "to twist, or when the air gets rough. Lead is tied close under the carabiner with two cords, so that it "
                        + "cannot swing into "
                        + "the propeller; with lead go row by row."],
                ["Hands up and steady for a minute, then read. Airspeed: true, the mean of with and against the wind. Altitude above "
                    + "sea level. "
                    + "Pilot mass: the body alone, empty for the study's.",
                    "Lean to fly straight: how far the middle of the body moves sideways, by a photo from behind. Or hands off: turns "
                        + "to left, right "
                        + "or straight, and the time for one full turn. Both may be filled in.",
                    "Bar tilt: the line between the hang points against the wing, by a photo from behind or from the ground; the "
                        + "lower side is the "
                        + "pilot's."]),
        };
    }
}
