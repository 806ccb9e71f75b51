using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>A coarser grid inside a study's factors, small enough to compute whole.</summary>
public static class SubGrid
{
    /// <summary>The study with each factor at few enough levels, always its ends among them: as many as fit, alike for all
    /// factors.</summary>
    /// <param name="study">With any factors.</param>
    /// <param name="most">The most designs the grid may hold.</param>
    /// <returns>The study on the coarser grid, searched exhaustively.</returns>
    public static Study Of(Study study, long most)
    {
        var cap = 2;
        while (Designs(study, cap + 1) <= most && study.Factors.Any(factor => Count(factor, cap) < Count(factor, int.MaxValue)))
            cap++;
        return study with { Factors = [.. study.Factors.Select(factor => Coarser(factor, cap))], Search = new SearchSetting.Exhaustive() };
    }

    private static double Designs(Study study, int cap) => study.Factors.Aggregate(1.0, (product, factor) => product * Count(factor, cap));

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
