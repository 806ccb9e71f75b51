using FrameOpt.Analysis;
using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>Which designs of the front a person is shown: thinned by the objectives' resolutions, then the best by rank, and of a large front its corners too.</summary>
public static class ShownDesigns
{
    /// <summary>Indices in the front, best first, at most <see cref="Workbook.MostDesigns"/>: of more, the last give way to the knee and to the best of each
    /// objective, so that no picture hides how far the front goes.</summary>
    public static IReadOnlyList<int> Of(StudyResult result)
    {
        var thinned = Thinned(result);
        if (thinned.Count <= Workbook.MostDesigns)
            return thinned;
        var corners = Corners(result).ToHashSet();
        var best = thinned.Take(Workbook.MostDesigns).Where(index => !corners.Contains(index)).Take(Workbook.MostDesigns - corners.Count);
        return [.. best.Concat(corners).Order()];
    }

    /// <summary>What was left out, and where it is, in words.</summary>
    public static string Words(StudyResult result)
    {
        var thinned = Thinned(result).Count;
        var all = Figures.Count(result.Front.Count);
        var which = thinned > Workbook.MostDesigns
            ? $"{Figures.Count(Workbook.MostDesigns)} of the {all} designs on the front: the best by rank, the knee and the best of each objective. Other weights may have their first among those left out: run the study again with them"
            : thinned == result.Front.Count ? $"All {all} designs on the front, best first" : $"{Figures.Count(thinned)} of the {all} designs on the front, best first";
        var unlike = thinned == result.Front.Count ? "" : ", thinned: of designs that the study's resolutions do not tell apart only the best ranked is shown";
        return thinned == result.Front.Count && thinned <= Workbook.MostDesigns ? $"{which}." : $"{which}{unlike}; designs.csv holds all.";
    }

    private static IEnumerable<int> Corners(StudyResult result)
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
        Thinning.Shown([.. result.Front.Select(design => design.Objectives)], [.. result.Study.Objectives.Select(objective => objective.Resolution)]);
}
