using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>When nothing is feasible: what the closest design would leave, or why one that cannot fly does not.</summary>
internal static class NearestMissSection
{
    public static IEnumerable<AnswerSection> Of(StudyResult result)
    {
        if (result.NearestMiss is { } miss)
        {
            yield return PhasesSection.Of(result, miss.Evaluation) with { Title = "What the nearest miss leaves in each phase" };
            yield return LimitsSection.Of(result);
        }
        else if (Example(result) is { Failure: { } failure } example)
        {
            yield return new AnswerSection("One design as an example", [
                $"{GeometryText.Of(result.Study, example.Geometry)}. It cannot fly. {FailureText.Describe(failure)}."]);
        }
    }

    /// <summary>The design in the middle of every range.</summary>
    private static DesignEvaluation Example(StudyResult result) => result.Mission.Evaluate(result.Study.Factors.Aggregate(
        FrameGeometry.On(result.Study.Machine, 0, 0, 0, 0),
        (geometry, factor) => geometry.With(factor.Input, factor.LevelsSi[factor.LevelsSi.Count / 2])));
}
