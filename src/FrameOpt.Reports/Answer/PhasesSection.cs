using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What the design leaves to the pilot in each phase.</summary>
internal static class PhasesSection
{
    /// <summary>What the picture beside the section shows.</summary>
    public const string PictureNote =
        "Residual torque is what is left for the pilot to hold by leaning or braking: the roll moment that alone would turn the wing as "
            + "much as the roll and yaw moments together.";

    /// <summary>Warnings first, then a sentence for each phase.</summary>
    public static AnswerSection Of(StudyResult result, DesignEvaluation design)
    {
        var total = design.Phases.Sum(phase => phase.Phase.Weight);
        return new AnswerSection(Title(result), [.. TwistWarning(design), .. AngleWarnings(design),
            .. design.Phases.Select((phase, i) => Line(phase, total) + BaselineWords(result, i) + ".")]);
    }

    private static string Title(StudyResult result) =>
        result.Chosen is null ? "Residual torque of the nearest miss in each phase" : "Residual torque in each phase";

    private static IEnumerable<string> TwistWarning(DesignEvaluation design)
    {
        var worst = design.Phases.MinBy(phase => phase[PhaseQuantity.TwistMargin])!;
        var margin = worst[PhaseQuantity.TwistMargin];
        if (margin < Cautions.SuddenTorqueTwistMargin)
        {
            yield return $"CAUTION: the twist margin in {worst.Phase.Name} is {NumberFormat.Text(margin, "")}, "
                + $"below {PlainNumber.Text(Cautions.SuddenTorqueTwistMargin)}: "
                + "a suddenly applied torque can twist the risers.";
        }
    }

    private static IEnumerable<string> AngleWarnings(DesignEvaluation design)
    {
        foreach (var (name, quantity) in new[] { ("roll", PhaseQuantity.BodyRoll), ("yaw", PhaseQuantity.BodyYaw) })
        {
            var worst = design.Phases.MaxBy(phase => Math.Abs(phase[quantity]))!;
            if (Math.Abs(worst[quantity]) > Cautions.SmallAngleLimitDegrees)
            {
                yield return $"CAUTION: the body's {name} in {worst.Phase.Name} is "
                    + $"{NumberFormat.Text(Math.Abs(worst[quantity]), "deg")} to the "
                    + $"{SideText.Side(worst[quantity])}: the model assumes small angles, "
                    + $"so beyond {NumberFormat.Text(Cautions.SmallAngleLimitDegrees, "deg")} its results are only approximate.";
            }
        }
    }

    private static string Line(PhaseResult phase, double totalWeight) => string.Join(
        "; ",
        $"{phase.Phase.Name} ({Share(phase.Phase.Weight, totalWeight)}): {SideText.Residual(phase)}",
        SideText.Lean(phase[PhaseQuantity.Lean]),
        $"effort {NumberFormat.Text(phase[PhaseQuantity.Effort], "")} of the largest "
            + $"lean{(phase[PhaseQuantity.Effort] > 1 ? " (CANNOT BE HELD)" : "")}",
        SideText.LoadDifference(phase[PhaseQuantity.LoadDifference]));

    private static string Share(double weight, double total) =>
        weight == 0 ? "not weighted" : FormattableString.Invariant($"{100 * weight / total:0.#} % of the mission");

    private static string BaselineWords(StudyResult result, int phaseIndex) => result.Baseline is { Failure: null } baseline
        ? $"; baseline {SideText.Residual(baseline.Phases[phaseIndex])}"
        : "";
}
