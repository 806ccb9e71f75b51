using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>Which designs of the front a person is shown: thinned by the objectives' resolutions, then the best by rank.</summary>
public static class DisplayedDesigns
{
    private const int MaxDesigns = 500;

    /// <summary>Designs times phases: with more a page takes seconds to open and the program hundreds of megabytes to write it.</summary>
    private const int MaxResults = 5000;

    /// <summary>How many designs of the front, best first, the workbook and the page hold at most; designs.csv contains all of
    /// them.</summary>
    public static int Most(Study study) => Math.Min(MaxDesigns, MaxResults / study.Mission.Count);

    /// <summary>Indices in the front, best first, at most <see cref="Most"/>.</summary>
    public static IReadOnlyList<int> Of(StudyResult result) => [.. Thinned(result).Take(Most(result.Study))];

    /// <summary>The same for the page: in a larger front the last designs give way to the knee and the best of each objective, so that
    /// every picture shows the whole range.</summary>
    public static IReadOnlyList<int> WithExtremes(StudyResult result)
    {
        var thinned = Thinned(result);
        var most = Most(result.Study);
        if (thinned.Count <= most)
            return thinned;
        var extremes = Extremes(result).ToHashSet();
        var best = thinned.Take(most).Where(index => !extremes.Contains(index)).Take(most - extremes.Count);
        return [.. best.Concat(extremes).Order()];
    }

    /// <summary>Which designs are shown, and where the others are, in words.</summary>
    public static string Summary(StudyResult result)
    {
        var (thinned, most) = (Thinned(result).Count, Most(result.Study));
        var all = NumberFormat.Count(result.Front.Count);
        var which = thinned > most
            ? $"The best {NumberFormat.Count(most)} by rank of the {all} designs on the front"
            : thinned == result.Front.Count ? $"All {all} designs on the front, best first"
                : $"{NumberFormat.Count(thinned)} of the {all} designs on the front, best first";
        var thinningNote = thinned == result.Front.Count ? ""
            : ", thinned: of designs that differ by less than the study's resolutions only the best ranked is shown";
        return thinned == result.Front.Count && thinned <= most ? $"{which}." : $"{which}{thinningNote}; designs.csv contains all "
            + $"of them.";
    }

    private static IEnumerable<int> Extremes(StudyResult result)
    {
        var front = result.Front;
        for (var i = 0; i < front.Count; i++)
        {
            if (front[i].IsKnee)
                yield return i;
        }

        foreach (var (o, objective) in result.Study.Objectives.Index())
        {
            yield return Enumerable.Range(0, front.Count).MinBy(i => objective.Oriented(front[i].Objectives[o]));
        }
    }

    private static IReadOnlyList<int> Thinned(StudyResult result) =>
        Thinning.Shown([.. result.Front.Select(design => design.Objectives)],
            [.. result.Study.Objectives.Select(objective => objective.Resolution)]);
}

/// <summary>A design shown beside others.</summary>
/// <param name="Name">What it is, in a few words.</param>
/// <param name="Evaluation">Of a design that flies.</param>
internal sealed record ComparedDesign(string Name, DesignEvaluation Evaluation)
{
    private const int MaxOthers = 2;

    /// <summary>Its residuals, to be drawn beside those of others.</summary>
    public ResidualSeries Residuals =>
        new(Name, "", [.. Evaluation.Phases.Select(phase => (phase.Phase.Name, phase[PhaseQuantity.Residual]))])
        {
            Holdable = [.. Evaluation.Phases.Select(phase => phase.IsBeyondLean ? 0 : Math.Abs(phase[PhaseQuantity.WeightShiftAuthority]))],
        };

    /// <summary>The best compromise, the baseline, and two others of the front: the knee, then the best in single objectives.</summary>
    public static IReadOnlyList<ComparedDesign> Of(RunReport report)
    {
        var result = report.Result;
        List<ComparedDesign> designs = [new(result.Study.IsOneFrame ? "this frame" : "best compromise", result.Chosen!)];
        if (result.Baseline is { Failure: null } baseline)
            designs.Add(new("baseline", baseline));
        if (result.Study.IsOneFrame)
            return designs;
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
            yield return ($"best {TextTruncation.Truncate(StudyText.Title(objective.Response, objective.Magnitude), 40)}",
                best);
        }
    }
}
