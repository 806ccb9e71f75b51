using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>When nothing is feasible: what the closest design would leave.</summary>
internal static class NearestMissSection
{
    public static IEnumerable<AnswerSection> Of(StudyResult result)
    {
        if (result.NearestMiss is not { } miss)
            yield break;
        if (miss.Evaluation.Failure is { } reason)
            yield return new AnswerSection("The nearest miss", [$"It cannot fly the mission: {reason}."]);
        else
            yield return PhasesSection.Of(result, miss.Evaluation) with { Title = "What the nearest miss leaves in each phase" };
    }
}
