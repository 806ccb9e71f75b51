using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>The lateral offset, or the pair of holes, that fits a frame whose other dimensions are fixed by what is built.</summary>
/// <param name="Design">In full.</param>
/// <param name="MeetsLimits">False when no offset does; then it is the one that comes nearest.</param>
public sealed record HoleForFrame(DesignEvaluation Design, bool MeetsLimits)
{
    /// <summary>The holes it was chosen from; null where any offset of the study may be drilled.</summary>
    public HolePattern? Holes { get; private init; }

    /// <summary>The best of a study's offsets or pairs of holes, everything else as hung; null when the study sweeps none, or when none
    /// flies every phase.</summary>
    /// <param name="study">With the machine as measured.</param>
    /// <param name="hung">Every factor of the frame at its one level.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public static HoleForFrame? Of(Study study, IReadOnlyList<StudyFactor> hung, int threads)
    {
        bool IsOpen(StudyFactor factor) => study.Holes is null ? factor.Input == GeometryInput.LateralOffset
            : HolePattern.Decides(factor.Input);
        var open = study.Factors.Where(IsOpen).ToList();
        if (!open.Exists(factor => factor.IsSwept))
            return null;
        var frame = study.ForOneFrame([.. open, .. hung.Where(factor => !IsOpen(factor))]) with { Holes = study.Holes };
        var search = new SearchRun(frame, StudyProblem.Model(frame), threads);
        foreach (var _ in search.Batches())
        {
        }

        return search.RankedFront() is [var best, ..] ? Found(best.Geometry, meetsLimits: true)
            : search.Counts.NearestMiss < 0 ? null : Found(search.Geometry(search.Counts.NearestMiss), meetsLimits: false);

        HoleForFrame Found(FrameGeometry geometry, bool meetsLimits) =>
            new(search.Mission.Evaluate(geometry), meetsLimits) { Holes = study.Holes };
    }
}
