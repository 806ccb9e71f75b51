using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>A study whose lateral offsets all fall on one hole pattern.</summary>
public static class HolePattern
{
    private const double Rounding = 1e-6;

    /// <summary>The study with only the offsets that are multiples of a pitch.</summary>
    /// <param name="study">Unchanged when there is no pitch.</param>
    /// <param name="pitchMetres">Above 0, or null.</param>
    /// <returns>Null when no offset within the factor's range is a multiple.</returns>
    public static Study? On(Study study, double? pitchMetres)
    {
        if (pitchMetres is not { } pitch)
            return study;
        var factor = study.Factors.First(f => f.Input == GeometryInput.LateralOffset);
        var levels = factor.IsContinuous ? Between(factor.LevelsSi[0], factor.LevelsSi[^1], pitch)
            : [.. factor.LevelsSi.Where(level => IsMultiple(level, pitch))];
        if (levels.Count == 0)
            return null;
        return study with
        {
            Factors = [.. study.Factors.Select(f => f == factor ? f with { LevelsSi = levels, IsContinuous = false } : f)],
            // Designs to begin from need not lie on the pattern.
            Search = study.Search is SearchSetting.Evolutionary search ? search with { Start = [], StartsFrom = null } : study.Search,
        };
    }

    private static bool IsMultiple(double level, double pitch) => Math.Abs(level / pitch - Math.Round(level / pitch)) < Rounding;

    private static List<double> Between(double from, double to, double pitch)
    {
        var first = (int)Math.Ceiling(from / pitch - Rounding);
        var last = (int)Math.Floor(to / pitch + Rounding);
        return [.. Enumerable.Range(first, Math.Max(0, last - first + 1)).Select(multiple => multiple * pitch)];
    }
}
