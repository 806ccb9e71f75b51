using FrameOpt.Model;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>Where the hang points go, measured from the plane of symmetry, seen from behind.</summary>
public static class DrillingSection
{
    /// <summary>Of a design of a study.</summary>
    public static AnswerSection Of(Study study, FrameGeometry geometry) => Of(study.Machine, study.Factors, geometry, study.Holes);

    internal static AnswerSection Of(
        Machine machine, IReadOnlyList<StudyFactor> factors, FrameGeometry geometry, HolePattern? holes = null)
    {
        var unit = factors.First(factor => factor.Input == GeometryInput.HangPointSpacing).Unit;
        var rotation = machine.Propeller.Rotation;
        return new AnswerSection("Where to drill, seen from behind (the pilot's right is on your right)",
        [
            DrillingDimensions.Sentence(geometry, unit),
            .. holes is null ? [] : HoleText.Sentences(holes, geometry),
            .. machine.Arms == RiserArms.Moving
                ? ["The hang points are the pivots of the arms: these dimensions and the height are those of the pivots, not of the hooks."]
                : Array.Empty<string>(),
            $"{GeometryText.Of(factors, geometry)}.{ThrustAngleInstruction(geometry)}",
            DatumText.Sentence(machine),
            $"Propeller {StudyText.RotationText(rotation)} seen from behind: under power its reaction pushes the "
                + $"{(rotation == Rotation.Clockwise ? "left" : "right")} side down.",
        ]);
    }

    private static string ThrustAngleInstruction(FrameGeometry geometry)
    {
        if (geometry.AngleRadians == 0)
            return "";
        var side = SideText.Side(geometry.AngleRadians);
        return " To build that angle, turn the propeller shaft so that its front end, on the pilot's side, moves towards the pilot's "
            + $"{side} and its rear end the other way: "
            + $"the thrust then pushes forward and to the {side}.";
    }
}
