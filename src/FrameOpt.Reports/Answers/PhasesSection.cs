using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>What the design leaves to the pilot in each phase.</summary>
internal static class PhasesSection
{
    public static AnswerSection Of(StudyResult result, DesignEvaluation design)
    {
        var total = design.Phases.Sum(phase => phase.Phase.Weight);
        return new AnswerSection("What it leaves in each phase", [.. TwistWarning(design), .. design.Phases.Select((phase, i) => Line(phase, total) + BaselineWords(result, i) + ".")]);
    }

    private static IEnumerable<string> TwistWarning(DesignEvaluation design)
    {
        var worst = design.Phases.MinBy(phase => phase[PhaseQuantity.TwistMargin])!;
        var margin = worst[PhaseQuantity.TwistMargin];
        if (margin < Cautions.SuddenTwistMargin)
        {
            yield return $"CAUTION: the twist margin in {worst.Phase.Name} is {Figures.Text(margin, "")}, below {PlainNumber.Text(Cautions.SuddenTwistMargin)}: "
                + "a sudden torque can carry the risers over.";
        }
    }

    private static string Line(PhaseResult phase, double totalWeight) => string.Join(
        "; ",
        $"{phase.Phase.Name} ({Share(phase.Phase.Weight, totalWeight)}): {SideWords.Residual(phase)}",
        SideWords.Lean(phase[PhaseQuantity.Lean]),
        $"effort {Figures.Text(phase[PhaseQuantity.Effort], "")}{(phase[PhaseQuantity.Effort] > 1 ? " (CANNOT BE HELD)" : "")}",
        SideWords.LoadDifference(phase[PhaseQuantity.LoadDifference]));

    private static string Share(double weight, double total) =>
        weight == 0 ? "not weighted" : FormattableString.Invariant($"{100 * weight / total:0.#} % of the mission");

    private static string BaselineWords(StudyResult result, int phaseIndex) => result.Baseline is { Failure: null } baseline
        ? $"; baseline {SideWords.Residual(baseline.Phases[phaseIndex])}"
        : "";
}
