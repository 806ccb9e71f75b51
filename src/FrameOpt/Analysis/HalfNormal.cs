using FrameOpt.Numerics;

namespace FrameOpt.Analysis;

/// <summary>The half-normal plot: effects that are only error lie on a line through the origin, real ones to its right.</summary>
public static class HalfNormal
{
    /// <summary>The points, smallest effect first.</summary>
    /// <param name="effects">One or more, of equal variance.</param>
    /// <remarks>Source: C. Daniel 1959, Use of half-normal plots in interpreting factorial two-level experiments (from memory): the i-th of
    /// m stands at the normal quantile of 1/2 + (i - 1/2)/(2m).</remarks>
    public static IReadOnlyList<HalfNormalPoint> Points(IReadOnlyList<double> effects) =>
        [.. effects.Select((effect, index) => (Magnitude: Math.Abs(effect), Index: index)).OrderBy(point => point.Magnitude)
            .Select((point, i) => new HalfNormalPoint(point.Index, point.Magnitude,
                Quantile.Normal(0.5 + ((i + 0.5) / (2 * effects.Count)))))];
}

/// <summary>One point of a half-normal plot.</summary>
/// <param name="Index">Which effect of those given.</param>
/// <param name="Magnitude">Magnitude (absolute value), in the response's unit.</param>
/// <param name="Quantile">Where it would stand among normal errors, in standard deviations.</param>
public readonly record struct HalfNormalPoint(int Index, double Magnitude, double Quantile);

/// <summary>Lenth's margins for effects of measured runs without repeats, in the response's unit.</summary>
/// <param name="InitialError">Initial estimate s0, from all effects.</param>
/// <param name="PseudoStandardError">Pseudo standard error, from the effects that are not clearly active.</param>
/// <param name="MarginOfError">Margin of error at 5 % for one effect chosen beforehand.</param>
/// <param name="SimultaneousMargin">Simultaneous margin of error at 5 % for the largest of all effects.</param>
public sealed record LenthMargins(double InitialError, double PseudoStandardError, double MarginOfError, double SimultaneousMargin)
{
    /// <summary>The margins of some effects.</summary>
    /// <param name="effects">Three or more, of equal variance. Of measured runs: computed runs have no error for a margin to stand
    /// for.</param>
    /// <remarks>Source: R. V. Lenth 1989, Quick and easy analysis of unreplicated factorials, Technometrics 31 (from memory): m/3 degrees
    /// of freedom; simultaneous at (1 + 0.95^(1/m))/2.</remarks>
    public static LenthMargins Of(IReadOnlyList<double> effects)
    {
        double[] sizes = [.. effects.Select(Math.Abs).Order()];
        var initial = 1.5 * Median(sizes);

        // With half of the effects exactly 0 there is nothing below the limit.
        double[] small = [.. sizes.Where(size => size < 2.5 * initial)];
        var error = small.Length > 0 ? 1.5 * Median(small) : 0;
        var degrees = sizes.Length / 3.0;
        return new LenthMargins(initial, error, Quantile.Student(0.975, degrees) * error,
            Quantile.Student((1 + Elementary.Pow(0.95, 1.0 / sizes.Length)) / 2, degrees) * error);
    }

    private static double Median(double[] sorted) => (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
}
