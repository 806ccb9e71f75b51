using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What the pilot feels in each phase, before any figure.</summary>
internal static class FeelSection
{
    /// <summary>A sentence for each phase.</summary>
    public static AnswerSection Of(StudyResult result, DesignEvaluation design) => new(
        "What the pilot feels",
        [.. design.Phases.Select(FeelText.Of), .. Baseline(result)]);

    /// <summary>What the baseline leaves in the phase of most weight.</summary>
    private static IEnumerable<string> Baseline(StudyResult result)
    {
        if (result.Baseline is { Failure: null } baseline)
        {
            var most = baseline.Phases.Where(phase => phase.Phase.IsSettled).MaxBy(phase => phase.Phase.Weight);
            if (most is not null)
                yield return $"The baseline in {most.Phase.Name}, to compare: {FeelText.Pull(most)}.";
        }
    }
}
