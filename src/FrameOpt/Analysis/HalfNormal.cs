using FrameOpt.Numerics;

namespace FrameOpt.Analysis;

/// <summary>The half-normal plot: effects that are only error lie on a line through the origin, real ones to its right.</summary>
public static class HalfNormal
{
    /// <summary>The points, smallest effect first.</summary>
    /// <param name="effects">One or more, of equal variance.</param>
    /// <remarks>Source: C. Daniel 1959, Use of half-normal plots in interpreting factorial two-level experiments (from memory):
    /// the i-th of m stands at the normal quantile of 1/2 + (i - 1/2)/(2m).</remarks>
    public static IReadOnlyList<HalfNormalPoint> Points(IReadOnlyList<double> effects) =>
        [.. effects.Select((effect, index) => (Magnitude: Math.Abs(effect), Index: index)).OrderBy(point => point.Magnitude)
            .Select((point, i) => new HalfNormalPoint(point.Index, point.Magnitude,
                Quantile.Normal(0.5 + ((i + 0.5) / (2 * effects.Count)))))];
}

/// <summary>One point of a half-normal plot.</summary>
/// <param name="Index">Which effect of those given.</param>
/// <param name="Magnitude">Its size without sign, in the response's unit.</param>
/// <param name="Quantile">Where it would stand among normal errors, in standard deviations.</param>
public readonly record struct HalfNormalPoint(int Index, double Magnitude, double Quantile);
