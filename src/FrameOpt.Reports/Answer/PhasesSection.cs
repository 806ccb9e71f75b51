using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What the design leaves to the pilot in each phase.</summary>
internal static class PhasesSection
{
    /// <summary>What the picture beside the section shows.</summary>
    public const string PictureNote =
        "Residual torque is what is left for the pilot to hold by leaning or braking: a roll moment at the hang points. It is zero when "
            + "the wing flies straight by itself: then one sideslip holds the roll moment, the yaw moment and the wing's own weight.";

    /// <summary>Warnings first, then a sentence for each phase.</summary>
    public static AnswerSection Of(StudyResult result, DesignEvaluation design)
    {
        var total = design.Phases.Sum(phase => phase.Phase.Weight);
        return new AnswerSection(Title(result), [.. TwistWarning(design), .. AngleWarnings(design), .. UnsettledCautions(design),
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

    private static IEnumerable<string> UnsettledCautions(DesignEvaluation design) => design.Phases
        .Where(phase => !phase.Phase.IsSettled).Select(phase => $"CAUTION: {Cautions.Unsettled(phase.Phase.Name)}");

    private static string Line(PhaseResult phase, double totalWeight)
    {
        var name = $"{phase.Phase.Name} ({Share(phase.Phase.Weight, totalWeight)})";
        return string.Join("; ", phase.Phase.IsSettled
            ? [$"{name}: {SideText.Residual(phase)}", SideText.LeanAndEffort(phase), LoadDifference(phase)]
            : (string[])[$"{name}, first seconds: {SideText.Twist(phase)}", LoadDifference(phase), FirstSeconds(phase)]);
    }

    /// <summary>The roll and yaw part of a phase that has not settled, and what they add up to.</summary>
    private static string FirstSeconds(PhaseResult phase) =>
        $"roll part {SideText.Moment(phase[PhaseQuantity.WingRollMoment])}, yaw part {SideText.Moment(phase[PhaseQuantity.YawPart])}, "
            + $"together {SideText.Moment(phase[PhaseQuantity.Residual])}";

    private static string LoadDifference(PhaseResult phase) => SideText.LoadDifference(phase[PhaseQuantity.LoadDifference]);

    private static string Share(double weight, double total) =>
        weight == 0 ? "not weighted" : FormattableString.Invariant($"{100 * weight / total:0.#} % of the mission");

    private static string BaselineWords(StudyResult result, int phaseIndex) => result.Baseline is { Failure: null } baseline
        ? $"; baseline {SideText.Residual(baseline.Phases[phaseIndex])}"
        : "";
}
