using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>The levels of one factor in the table of the sheet What if.</summary>
/// <param name="Factor">Which, with its unit.</param>
/// <param name="Si">One or more, increasing, in m or rad.</param>
internal sealed record WhatIfLevels(StudyFactor Factor, IReadOnlyList<double> Si)
{
    /// <summary>All levels of a factor if they are few, else so many evenly spread, and always those that must be among them.</summary>
    public static WhatIfLevels Of(StudyFactor factor, int most, IEnumerable<double> kept)
    {
        var all = factor.IsContinuous ? [.. Enumerable.Range(0, most).Select(i => factor.LevelsSi[0] + factor.RangeSi * i / (most - 1))] : factor.LevelsSi;
        var spread = all.Count <= most ? all : Enumerable.Range(0, most).Select(i => all[(int)Math.Round(i * (all.Count - 1.0) / (most - 1))]);
        return new WhatIfLevels(factor, [.. spread.Concat(kept.Where(level => level >= all[0] && level <= all[^1])).Distinct().Order()]);
    }

    /// <summary>The level at or below a value, the one to read on to, and how far between; clamped to the first and last two.</summary>
    public (int Lower, int Upper, double Fraction) Around(double si)
    {
        if (Si.Count == 1)
            return (0, 0, 0);
        var lower = Math.Clamp(Si.Count(level => level <= si) - 1, 0, Si.Count - 2);
        return (lower, lower + 1, (si - Si[lower]) / (Si[lower + 1] - Si[lower]));
    }
}
