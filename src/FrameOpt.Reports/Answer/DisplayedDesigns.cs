using FrameOpt.Analysis;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>Which designs of the front a person is shown: thinned by the objectives' resolutions, then the best by rank.</summary>
public static class DisplayedDesigns
{
    /// <summary>How many designs of the front, best first, the workbook and the page hold; designs.csv holds all.</summary>
    public const int MaxDesigns = 500;

    /// <summary>Indices in the front, best first, at most <see cref="MaxDesigns"/>.</summary>
    public static IReadOnlyList<int> Of(StudyResult result)
    {
        var thinned = Thinned(result);
        return thinned.Count <= MaxDesigns ? thinned : [.. thinned.Take(MaxDesigns)];
    }

    /// <summary>The same for the page: of a larger front the last give way to the knee and to the best of each objective, so that no
    /// picture hides how far it goes.</summary>
    public static IReadOnlyList<int> WithExtremes(StudyResult result)
    {
        var thinned = Thinned(result);
        if (thinned.Count <= MaxDesigns)
            return thinned;
        var extremes = Extremes(result).ToHashSet();
        var best = thinned.Take(MaxDesigns).Where(index => !extremes.Contains(index)).Take(MaxDesigns - extremes.Count);
        return [.. best.Concat(extremes).Order()];
    }

    /// <summary>What was left out, and where it is, in words.</summary>
    public static string Summary(StudyResult result)
    {
        var thinned = Thinned(result).Count;
        var all = NumberFormat.Count(result.Front.Count);
        var which = thinned > MaxDesigns
            ? $"The best {NumberFormat.Count(MaxDesigns)} by rank of the {all} designs on the front"
            : thinned == result.Front.Count ? $"All {all} designs on the front, best first"
                : $"{NumberFormat.Count(thinned)} of the {all} designs on the front, best first";
        var thinningNote = thinned == result.Front.Count ? ""
            : ", thinned: of designs that the study's resolutions do not tell apart only the best ranked is shown";
        return thinned == result.Front.Count && thinned <= MaxDesigns ? $"{which}." : $"{which}{thinningNote}; designs.csv holds all.";
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
            yield return Enumerable.Range(0, front.Count).MinBy(i => objective.Maximise ? -front[i].Objectives[o] : front[i].Objectives[o]);
        }
    }

    private static IReadOnlyList<int> Thinned(StudyResult result) =>
        Thinning.Shown([.. result.Front.Select(design => design.Objectives)],
            [.. result.Study.Objectives.Select(objective => objective.Resolution)]);
}
