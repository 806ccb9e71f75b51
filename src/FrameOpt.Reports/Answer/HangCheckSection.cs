using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What two scales should read on the ground.</summary>
internal static class HangCheckSection
{
    public static AnswerSection Of(Study study, FrameGeometry geometry)
    {
        var check = HangCheck.Of(study.Machine, geometry);
        var spacing = study.LengthUnit.Text(geometry.SpacingMetres);
        return new AnswerSection("Hang check, before any flight",
        [
            $"{Reading(check)}: right {NumberFormat.Load(check.RightNewtons)}, left {NumberFormat.Load(check.LeftNewtons)}, "
                + $"difference {NumberFormat.Load(Math.Abs(check.DifferenceNewtons))}.",
            $"Both scales must add up to {NumberFormat.Load(check.TotalNewtons)}: frame, fuel, pilot and clothing as in the study. Weigh with the same fuel and clothing, the pilot sitting centred, arms still.",
            $"Frame and pilot hang from a rigid beam by two straps with a scale in each. The straps must be parallel, {spacing} apart at the beam, and of equal length: "
                + $"5 mm of unequal length moves the difference by about {NumberFormat.Load(Math.Abs(check.PerFiveMillimetresNewtons))}.",
        ]);
    }

    private static string Reading(HangCheck check) => Math.Abs(check.DifferenceNewtons) < 0.5
        ? "With the engine off both scales read the same"
        : $"With the engine off the {SideText.Side(check.DifferenceNewtons).ToUpperInvariant()} scale reads more";
}
