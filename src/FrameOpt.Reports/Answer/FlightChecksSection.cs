using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What to check before flight, in order.</summary>
internal static class FlightChecksSection
{
    public static AnswerSection Of(Study study, DesignEvaluation chosen)
    {
        var side = HangCheck.Of(study.Machine, chosen.Geometry).DifferenceNewtons;
        var worst = chosen.Phases.MaxBy(phase => phase[PhaseQuantity.Effort])!;
        return new AnswerSection("Before flight, in this order",
        [
            $"1. Rotation: see from behind that the propeller turns {StudyText.RotationText(study.Machine.Propeller.Rotation)}. The other way round its torque does the opposite of what this page says of every phase under power, and the design is the wrong one; the figures with the engine off stay.",
            $"2. Hang check, engine off: the {SideText.Side(side).ToUpperInvariant()} scale must read more, by the figures above.",
            "3. Tied-down run: frame firmly tied, nobody near the propeller's plane; bring the power up slowly and see which side is pulled down: the strap on the other side tightens.",
            $"4. Flight: smooth air and height to spare; level flight first, then climb, then power off, accelerated flight last. The hardest to hold is {worst.Phase.Name} "
                + $"(effort {NumberFormat.Text(worst[PhaseQuantity.Effort], "")}, {SideText.Residual(worst)}).",
        ]);
    }
}
