using FrameOpt.Numerics;

namespace FrameOpt.Analysis;

/// <summary>Ranks the designs of a front.</summary>
public static class Ranking
{
    /// <summary>By weighted Euclidean distance to the ideal, every objective scaled to 0..1 on the designs ranked: smaller is
    /// better.</summary>
    /// <param name="designs">One or more, smaller is better in every objective.</param>
    /// <param name="weights">One for each objective, none negative.</param>
    /// <returns>Best first; the earlier design first in case of a tie. Objectives without range do not count.</returns>
    /// <remarks>Source: compromise programming with exponent 2, M. Zeleny 1973: sqrt(sum (w z)²), weights divided by their sum (from
    /// memory).</remarks>
    public static IReadOnlyList<RankedDesign> ByDistanceToIdeal(IReadOnlyList<double[]> designs, IReadOnlyList<double> weights)
    {
        if (designs.Count == 0)
            return [];
        var scale = ObjectiveScale.Of(designs);
        var total = weights.Sum();
        double[] shares = [.. weights.Select(weight => weight / total)];
        var scores = new double[designs.Count];
        for (var i = 0; i < scores.Length; i++)
        {
            var sum = 0.0;
            for (var o = 0; o < shares.Length; o++)
            {
                var part = shares[o] * scale.Scaled(o, designs[i][o]);
                sum += part * part;
            }

            scores[i] = Math.Sqrt(sum);
        }

        return InOrder(scores, moreIsBetter: false);
    }

    /// <summary>By closeness to the best and distance from the worst (TOPSIS): more is better.</summary>
    /// <param name="designs">One or more, smaller is better in every objective.</param>
    /// <param name="weights">One for each objective, none negative.</param>
    /// <returns>Best first; the earlier design first in case of a tie.</returns>
    /// <remarks>Source: Hwang and Yoon 1981, vector normalisation; worked figures in Tzeng and Huang 2011.</remarks>
    public static IReadOnlyList<RankedDesign> ByTopsis(IReadOnlyList<double[]> designs, IReadOnlyList<double> weights)
    {
        if (designs.Count == 0)
            return [];
        var objectives = designs[0].Length;
        var total = weights.Sum();
        var factor = new double[objectives];
        for (var o = 0; o < objectives; o++)
        {
            var norm = Math.Sqrt(designs.Sum(design => design[o] * design[o]));
            factor[o] = norm > 0 ? weights[o] / total / norm : 0;
        }

        var scale = ObjectiveScale.Of(designs);
        var scores = new double[designs.Count];
        for (var i = 0; i < designs.Count; i++)
        {
            double toBest = 0, toWorst = 0;
            for (var o = 0; o < objectives; o++)
            {
                if (!(scale.Range[o] > 0))
                    continue;
                var fromBest = factor[o] * (designs[i][o] - scale.Best[o]);
                var fromWorst = factor[o] * (scale.Best[o] + scale.Range[o] - designs[i][o]);
                toBest += fromBest * fromBest;
                toWorst += fromWorst * fromWorst;
            }

            var both = Math.Sqrt(toBest) + Math.Sqrt(toWorst);
            scores[i] = both > 0 ? Math.Sqrt(toWorst) / both : 1;
        }

        return InOrder(scores, moreIsBetter: true);
    }

    private static RankedDesign[] InOrder(double[] scores, bool moreIsBetter)
    {
        var order = Enumerable.Range(0, scores.Length).ToArray();
        var keys = moreIsBetter ? [.. scores.Select(score => -score)] : scores;
        RadixSort.Sort(Array.ConvertAll(keys, RadixSort.KeyOf), order);
        var ranked = new RankedDesign[order.Length];
        for (var i = 0; i < order.Length; i++)
        {
            var rank = i > 0 && keys[order[i]] == keys[order[i - 1]] ? ranked[i - 1].Rank : i + 1;
            ranked[i] = new RankedDesign(order[i], rank, scores[order[i]]);
        }

        return ranked;
    }
}

/// <summary>The place of one design in a ranking.</summary>
/// <param name="Index">Which design of those ranked.</param>
/// <param name="Rank">From 1; equal scores share a rank.</param>
/// <param name="Score">Score of the ranking method.</param>
public readonly record struct RankedDesign(int Index, int Rank, double Score);

/// <summary>Objectives of a front scaled so that 0 is the best and 1 the worst value on it.</summary>
public sealed class ObjectiveScale
{
    private ObjectiveScale(double[] best, double[] range)
    {
        Best = best;
        Range = range;
    }

    /// <summary>The smallest value of each objective.</summary>
    public IReadOnlyList<double> Best { get; }

    /// <summary>Largest less smallest value of each objective; 0 where all are equal.</summary>
    public IReadOnlyList<double> Range { get; }

    /// <summary>The scale of some designs.</summary>
    /// <param name="designs">One or more; smaller is better in every objective; all finite.</param>
    public static ObjectiveScale Of(IReadOnlyList<double[]> designs)
    {
        var objectives = designs[0].Length;
        var best = new double[objectives];
        var range = new double[objectives];
        for (var o = 0; o < objectives; o++)
        {
            double lowest = double.PositiveInfinity, highest = double.NegativeInfinity;
            foreach (var design in designs)
            {
                lowest = Math.Min(lowest, design[o]);
                highest = Math.Max(highest, design[o]);
            }

            best[o] = lowest;
            range[o] = highest - lowest;
        }

        return new ObjectiveScale(best, range);
    }

    /// <summary>0 at the best, 1 at the worst; 0 for an objective without range.</summary>
    public double Scaled(int objective, double value) =>
        Range[objective] > 0 ? (value - Best[objective]) / Range[objective] : 0;
}
