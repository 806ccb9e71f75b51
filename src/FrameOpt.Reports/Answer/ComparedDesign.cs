using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>A design shown beside others.</summary>
/// <param name="Name">What it is, in few words.</param>
/// <param name="Evaluation">It flies.</param>
internal sealed record ComparedDesign(string Name, DesignEvaluation Evaluation)
{
    private const int MaxOthers = 2;

    /// <summary>The best compromise, the baseline, and two others of the front: the knee, then the best of single objectives.</summary>
    public static IReadOnlyList<ComparedDesign> Of(RunReport report)
    {
        var result = report.Result;
        List<ComparedDesign> designs = [new("best compromise", result.Chosen!)];
        if (result.Baseline is { Failure: null } baseline)
            designs.Add(new("baseline", baseline));
        var candidates = Extremes(result).Where(other => other.Index > 0).DistinctBy(other => other.Index).Take(MaxOthers);
        designs.AddRange(candidates.Select(other => new ComparedDesign(
            FormattableString.Invariant($"{other.Name} (rank {result.Front[other.Index].Rank})"), report.FrontEvaluations[other.Index])));
        return designs;
    }

    private static IEnumerable<(string Name, int Index)> Extremes(StudyResult result)
    {
        var all = Enumerable.Range(0, result.Front.Count).ToList();
        var knee = all.FindIndex(i => result.Front[i].IsKnee);
        if (knee >= 0)
            yield return ("knee", knee);
        for (var o = 0; o < result.Study.Objectives.Count; o++)
        {
            var (objective, index) = (result.Study.Objectives[o], o);
            var best = objective.Maximise ? all.MaxBy(i => result.Front[i].Objectives[index])
                : all.MinBy(i => result.Front[i].Objectives[index]);
            yield return ($"best {TextTruncation.Truncate(StudyText.Name(objective.Response, objective.Magnitude).Replace('_', ' '), 40)}",
                best);
        }
    }
}
