using FrameOpt.Model.Mission;
using FrameOpt.Search;
using FrameOpt.Search.Fronts;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Computes a grid whole, to hold an evolutionary search against it.</summary>
public sealed class CertificateRun
{
    /// <summary>The largest grid that is computed whole; of a larger one a part.</summary>
    public const long MaxFullGrid = 20_000_000;

    /// <summary>The largest part.</summary>
    public const long MaxPartialGrid = 2_000_000;

    private readonly bool isEstimate;
    private readonly Study study;
    private readonly SearchRun exact;

    /// <summary>A comparison not yet begun.</summary>
    /// <param name="study">With an evolutionary search.</param>
    /// <param name="mission">The model.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public CertificateRun(Study study, MissionModel mission, int threads)
    {
        isEstimate = study.GridSize is not <= MaxFullGrid;
        this.study = isEstimate ? SubGrid.Of(study, MaxPartialGrid) : study with { Search = new SearchSetting.Exhaustive() };
        exact = new SearchRun(this.study, mission, threads);
    }

    /// <summary>How many designs the grid holds.</summary>
    public long Designs => exact.Planned;

    /// <summary>How many were computed so far.</summary>
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
