using FrameOpt.Numerics;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Fit;

/// <summary>The spreads and rank correlations of a study as beliefs and correlations of normal numbers, and back.</summary>
/// <remarks>Source: r = 2 sin(pi rho / 6) for Spearman's rho of normal numbers, K. Pearson 1907, from memory.</remarks>
internal static class NoiseBeliefs
{
    /// <summary>A spread as a normal one: its middle, and half of what the middle 68 of 100 cases span.</summary>
    public static Belief Middle(Spread spread)
    {
        const double LowTail = 0.158655253931457;
        return new Belief(spread.Quantile(0.5), (spread.Quantile(1 - LowTail) - spread.Quantile(LowTail)) / 2);
    }

    /// <summary>What the study says of the numbers together; a null, a number of its own, is independent of the rest.</summary>
    public static double[,] Correlations(NoiseSetting noise, IReadOnlyList<NoiseSource?> sources)
    {
        var together = new double[sources.Count, sources.Count];
        for (var i = 0; i < sources.Count; i++)
            together[i, i] = 1;
        List<NoiseSource?> all = [.. sources];
        foreach (var pair in noise.Correlations)
        {
            var (i, j) = (all.IndexOf(pair.First), all.IndexOf(pair.Second));
            if (i >= 0 && j >= 0)
                together[i, j] = together[j, i] = 2 * Elementary.Sin(Math.PI / 6 * pair.Rank);
        }

        return together;
    }

    /// <summary>Correlations of normal numbers as a study writes them.</summary>
    public static IReadOnlyList<RankCorrelation> Ranks(IReadOnlyList<NoiseSource> sources, Func<int, int, double> correlation) =>
    [
        .. from i in Enumerable.Range(0, sources.Count)
           from j in Enumerable.Range(i + 1, sources.Count - i - 1)
           select new RankCorrelation(sources[i], sources[j], 6 / Math.PI * Elementary.Asin(Math.Clamp(correlation(i, j), -1, 1) / 2)),
    ];
}
