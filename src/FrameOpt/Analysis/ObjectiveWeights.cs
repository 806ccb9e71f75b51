using FrameOpt.Numerics;

namespace FrameOpt.Analysis;

/// <summary>Weights of objectives from the spread of a front itself: to hold the user's own against, never in their place.</summary>
public static class ObjectiveWeights
{
    /// <summary>By the entropy of each objective: one whose values are nearly alike decides little.</summary>
    /// <param name="designs">Two or more.</param>
    /// <returns>Adding up to 1; null where a value is 0 or below, or where no objective has a range.</returns>
    /// <remarks>Source: C. E. Shannon 1948; with worked figures in E. K. Zavadskas and V. Podvezko 2016, Integrated determination of
    /// objective criteria weights in MCDM.</remarks>
    public static double[]? ByEntropy(IReadOnlyList<double[]> designs)
    {
        if (designs.Count < 2 || designs.Any(design => design.Any(value => value <= 0)))
            return null;
        return Shares([.. Columns(designs).Select(column =>
        {
            var sum = column.Sum();
            return Math.Max(0, 1 + column.Sum(value => value / sum * Elementary.Log(value / sum)) / Elementary.Log(designs.Count));
        })]);
    }

    /// <summary>By contrast and conflict (CRITIC): standard deviation of each objective, scaled to its range, times how little it goes with
    /// the others.</summary>
    /// <param name="designs">Two or more.</param>
    /// <returns>Adding up to 1; null where no objective has a range.</returns>
    /// <remarks>Source: D. Diakoulaki, G. Mavrotas and L. Papayannakis 1995, Determining objective weights in multiple criteria problems:
    /// the critic method, Computers and Operations Research 22.</remarks>
    public static double[]? ByContrastAndConflict(IReadOnlyList<double[]> designs)
    {
        if (designs.Count < 2)
            return null;
        var scale = ObjectiveScale.Of(designs);
        double[][] off = [.. Columns(designs).Select((column, o) =>
        {
            double[] scaled = [.. column.Select(value => scale.Scaled(o, value))];
            var mean = scaled.Average();
            return Array.ConvertAll(scaled, value => value - mean);
        })];
        double[] length = [.. off.Select(column => Math.Sqrt(column.Sum(value => value * value)))];
        double Correlation(int a, int b) => length[a] > 0 && length[b] > 0
            ? off[a].Zip(off[b], (x, y) => x * y).Sum() / (length[a] * length[b]) : 0;
        return Shares([.. length.Select((size, o) => size * Enumerable.Range(0, length.Length).Sum(other => 1 - Correlation(o, other)))]);
    }

    private static double[][] Columns(IReadOnlyList<double[]> designs) =>
        [.. Enumerable.Range(0, designs[0].Length).Select(o => designs.Select(design => design[o]).ToArray())];

    private static double[]? Shares(double[] weights) =>
        weights.Sum() is > 0 and var sum ? Array.ConvertAll(weights, weight => weight / sum) : null;
}
