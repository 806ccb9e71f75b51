using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What to check on the ground before any flight.</summary>
internal static class GroundChecksSection
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
        ]);
    }

    /// <summary>What each scale should read, as a table.</summary>
    public static AnswerSection Scales(Study study, FrameGeometry geometry)
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
    public static AnswerSection BeforeFlight(Study study, DesignEvaluation chosen)
    {
        var side = Model.Mission.HangCheck.Of(study.Machine, chosen.Geometry).DifferenceNewtons;
        var worst = chosen.Phases.Where(phase => phase.Phase.IsSettled).MaxBy(phase => phase[PhaseQuantity.Effort])!;
        return new AnswerSection("Before flight, in this order",
        [
            "1. Rotation: check from behind that the propeller turns "
                + $"{StudyText.RotationText(study.Machine.Propeller.Rotation)}. If it turns the other way, its torque acts opposite to "
                + $"what is stated here for every phase under power, and this design is the wrong one; the figures with the engine off "
                + $"still apply.",
            $"2. Hang check, engine off: the {SideText.Side(side).ToUpperInvariant()} scale must read more, by the figures above.",
            "3. Tied-down run: frame firmly tied, nobody near the plane of the propeller; increase the power slowly and observe which "
                + "side is pulled down: the strap on the other side tightens.",
            "4. Flight: smooth air and plenty of height; level flight first, then climb, then power off, accelerated flight "
                + $"last. The hardest phase to hold is {SideText.EffortOf(worst)}: {SideText.Residual(worst)}.",
        ]);
    }

    private static string Reading(Model.Mission.HangCheck check) => Math.Abs(check.DifferenceNewtons) < 0.5
        ? "With the engine off both scales read the same"
        : $"With the engine off the {SideText.Side(check.DifferenceNewtons).ToUpperInvariant()} scale reads more";
}
