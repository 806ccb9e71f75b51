using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>The first line: what to build, or why nothing can be built.</summary>
internal static class AnswerHeadline
{
    /// <summary>The headline of a run, and whether it is a warning.</summary>
    public static (string Text, bool IsWarning) Of(StudyResult result)
    {
        var (text, isWarning) = OfDesign(result);
        var arms = DatumText.MovingArms(result.Study.Machine);
        return (arms + text, isWarning || arms.Length > 0);
    }

    private static (string Text, bool IsWarning) OfDesign(StudyResult result)
    {
        if (result.Chosen is not { } chosen)
            return (NothingFeasible(result), true);
        var warning = Warning(result, chosen);
        var best = result.Study.IsOneFrame ? "This frame"
            : result.Front.Count == 1
            ? "The only design on the front"
            : $"Best compromise of the {NumberFormat.Count(result.Front.Count, "design")} on the front";
        return ($"{warning}{best}: {GeometryText.Of(result.Study, chosen.Geometry)}.", warning.Length > 0);
    }

    /// <summary>For a design of the front that is not the best compromise.</summary>
    public static string ForOtherDesign(Study study, int rank, DesignEvaluation design) =>
        $"{DatumText.MovingArms(study.Machine)}{EffortWarning(design)}NOT THE BEST COMPROMISE but rank {rank} of the front: "
            + $"{GeometryText.Of(study, design.Geometry)}.";

    /// <summary>When no design flies: why the design in the middle of every range does not.</summary>
    public static IEnumerable<AnswerSection> Example(StudyResult result)
    {
        if (Middle(result) is { Failure: { } failure } example)
        {
            yield return new AnswerSection(result.Study.IsOneFrame ? "Why it cannot fly" : "One design as an example", [
                $"{GeometryText.Of(result.Study, example.Geometry)}. It cannot fly. {FailureText.Describe(failure)}."]);
        }
    }

    private static DesignEvaluation Middle(StudyResult result) => result.Mission.Evaluate(result.Study.Factors.Aggregate(
        FrameGeometry.On(result.Study.Machine, 0, 0, 0, 0),
        (geometry, factor) => geometry.With(factor.Input, factor.LevelsSi[factor.LevelsSi.Count / 2])));

    /// <summary>The limits a design violates, to stand before other sentences; only a frame that was given can.</summary>
    internal static string LimitWarning(Study study, DesignEvaluation design)
    {
        var broken = study.Limits.Where(limit => !limit.IsMetBy(design))
            .Select(limit => RunText.BrokenLimit(limit, design)).ToList();
        return broken.Count == 0 ? "" : $"IT VIOLATES {string.Join("; and ", broken)}. ";
    }

    /// <summary>What must be read before the design of a run is built; empty when nothing.</summary>
    internal static string Warnings(StudyResult result) => DatumText.MovingArms(result.Study.Machine)
        + (result.Chosen is { } chosen ? Warning(result, chosen) : "");

    private static string Warning(StudyResult result, DesignEvaluation chosen) =>
        (result.IsComplete ? "" : $"STOPPED EARLY, best design so far ({RunText.Of(result.StopReason)}). ")
            + (result.Study.IsOneFrame ? LimitWarning(result.Study, chosen) : "") + EffortWarning(chosen) + WingWarning(result);

    private static string EffortWarning(DesignEvaluation design)
    {
        var phases = design.Phases.Where(phase => phase.CannotBeHeld).Select(SideText.EffortOf).ToList();
        return phases.Count == 0 ? "" : $"THE PILOT CANNOT HOLD IT in {string.Join(" and ", phases)}. ";
    }

    private static string WingWarning(StudyResult result)
    {
        var broken = LimitsSection.BrokenInOtherCases(result).ToList();
        return broken.Count == 0 ? "" : $"LIMITS ARE MET FOR THE WING AS GIVEN ONLY, violated with another: {string.Join("; ", broken)}. ";
    }

    private static string NothingFeasible(StudyResult result)
    {
        var cutShort = result.IsComplete ? "" : " so far";
        return result.NearestMiss is { } miss
            ? $"NO DESIGN MEETS EVERY LIMIT{cutShort}. Nearest miss: "
                + $"{GeometryText.Of(result.Study, miss.Evaluation.Geometry)}. It violates: "
                + $"{string.Join("; and ", miss.BrokenLimits.Select(limit => RunText.BrokenLimit(limit, miss.Evaluation)))}."
            : result.Study.IsOneFrame ? "THIS FRAME CANNOT FLY THE MISSION."
            : $"NO DESIGN CAN FLY THE MISSION{cutShort}. {MostFrequentFailure(result)}";
    }

    private static string MostFrequentFailure(StudyResult result) => result.Counts.FailedBy is [var most, ..]
        ? $"Most frequent reason: {FailureText.Kind(result.Study.Mission, most.Failure)} ({NumberFormat.Count(most.Count, "design")})."
        : "No design was evaluated.";
}
