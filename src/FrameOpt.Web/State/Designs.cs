using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Web.State;

/// <summary>Designs of a study.</summary>
public static class Designs
{
    /// <summary>The one to look at first: the baseline, or the middle of every range.</summary>
    public static FrameGeometry First(Study study) => study.Baseline ?? study.Factors.Aggregate(FrameGeometry.AsBuilt(study.Machine),
        (geometry, factor) => geometry.With(factor.Input, factor.LevelsSi[factor.LevelsSi.Count / 2]));

    /// <summary>A design on a machine that may have changed since: what the study varies stays.</summary>
    public static FrameGeometry On(Study study, FrameGeometry design) => study.Factors.Aggregate(First(study),
        (geometry, factor) => geometry.With(factor.Input, design[factor.Input]));
}
