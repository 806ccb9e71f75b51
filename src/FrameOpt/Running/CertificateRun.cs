using FrameOpt.Model.Mission;
using FrameOpt.Search;
using FrameOpt.Search.Fronts;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Evaluates a grid to compare the front of an evolutionary search with it.</summary>
public sealed class CertificateRun
{
    private readonly bool isEstimate;
    private readonly Study study;
    private readonly SearchRun exact;

    /// <summary>Initialises a new instance for a problem.</summary>
    /// <param name="study">With an evolutionary search.</param>
    /// <param name="mission">The model.</param>
    /// <param name="threads">Worker threads, at least 1.</param>
    public CertificateRun(Study study, MissionModel mission, int threads)
    {
        var cost = study.ResponsesOverCases.Count == 0 ? 1 : study.Noise.Cases;
        isEstimate = !(study.GridSize <= RunLimits.MaxFullGrid / cost);
        this.study = isEstimate ? SubGrid.Of(study, RunLimits.MaxPartialGrid / cost)
            : study with { Search = new SearchSetting.Exhaustive() };
        exact = new SearchRun(this.study, mission, threads);
    }

    /// <summary>Number of designs of the grid.</summary>
    public long Designs => exact.Planned;

    /// <summary>Number of designs evaluated so far.</summary>
    public long Done => exact.Counts.Evaluated;

    /// <summary>Computes the grid, batch by batch.</summary>
    public IEnumerable<EvaluatedBatch> Batches() => exact.Batches();

    /// <summary>The certificate, or null when the grid was not computed to its end or holds nothing feasible.</summary>
    /// <param name="found">The front of the search.</param>
    public Certificate? Of(FrontPoints found)
    {
        if (!exact.IsComplete)
            return null;
        var whole = exact.Front();
        if (whole.Ids.Length == 0 || found.Ids.Length == 0)
            return null;
        return new Certificate(Designs, isEstimate ? study.Factors : null, whole.Ids.Length, HypervolumeRatio.Of(found, whole),
            FrontRegret.Of(found, whole));
    }
}

/// <summary>A coarser grid inside a study's factors, small enough to compute in full.</summary>
public static class SubGrid
{
    /// <summary>The study with fewer levels of each factor, always including its ends: the same largest number of levels for all factors,
    /// as large as fits.</summary>
    /// <param name="study">With any factors.</param>
    /// <param name="most">Largest number of designs of the grid.</param>
    /// <returns>The study on the coarser grid, searched exhaustively.</returns>
    public static Study Of(Study study, long most)
    {
        var cap = 2;
        while (Designs(study, cap + 1) <= most && study.FreeFactors.Any(factor => Count(factor, cap) < Count(factor, int.MaxValue)))
            cap++;
        return study with
        {
            Factors = [.. study.Factors.Select(factor => study.FreeFactors.Contains(factor) ? Coarser(factor, cap) : factor)],
            Search = new SearchSetting.Exhaustive(),
        };
    }

    private static double Designs(Study study, int cap) => study.FreeFactors
        .Aggregate((double)(study.Holes?.Pairs ?? 1), (product, factor) => product * Count(factor, cap));

    private static int Count(StudyFactor factor, int cap) => factor.IsContinuous ? cap : Math.Min(cap, factor.LevelsSi.Count);

    private static StudyFactor Coarser(StudyFactor factor, int cap)
    {
        if (!factor.IsContinuous && factor.LevelsSi.Count <= cap)
            return factor;
        var (first, range) = (factor.LevelsSi[0], factor.RangeSi);
        return factor with
        {
            IsContinuous = false,
            LevelsSi = factor.IsContinuous
                ? [.. Enumerable.Range(0, cap).Select(i => i == cap - 1 ? factor.LevelsSi[^1] : first + range * i / (cap - 1))]
                : [.. Enumerable.Range(0, cap).Select(i => factor.LevelsSi[(int)Math.Round(
                    i * (factor.LevelsSi.Count - 1.0) / (cap - 1))])],
        };
    }
}
