using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>A run with everything that its files are written from.</summary>
/// <param name="Result">The answer.</param>
/// <param name="Info">Study file, version and seed.</param>
/// <param name="FrontEvaluations">Every design of the front, fully evaluated, in the order of <see cref="StudyResult.Front"/>.</param>
public sealed record RunReport(StudyResult Result, RunInfo Info, IReadOnlyList<DesignEvaluation> FrontEvaluations)
{
    /// <summary>Evaluates the whole front.</summary>
    public static RunReport Of(StudyResult result, RunInfo info) =>
        new(result, info, [.. result.Front.Select(design => result.Mission.Evaluate(design.Geometry))]);
}
