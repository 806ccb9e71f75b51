namespace FrameOpt.Studies.Noise;

/// <summary>What of a study is uncertain, and how much.</summary>
/// <param name="Sources">Those that are not exact, each with its spread; empty when the study says that nothing is.</param>
/// <param name="Correlations">Between pairs of them.</param>
public sealed record NoiseSetting(
    IReadOnlyList<(NoiseSource Source, Spread Spread)> Sources, IReadOnlyList<RankCorrelation> Correlations)
{
    /// <summary>Cases of a response over cases.</summary>
    public int Cases { get; init; } = 256;

    /// <summary>Of their sample.</summary>
    public uint Seed { get; init; } = 1;

    /// <summary>Every source with its usual spread: what a study without a word about it gets.</summary>
    public static NoiseSetting Usual { get; } = new([.. NoiseSource.All.Select(source => (source, source.Usual))], []);

    /// <summary>Nothing is uncertain.</summary>
    public static NoiseSetting None { get; } = new([], []);
}

/// <summary>Two numbers that are off together.</summary>
/// <param name="First">One of them.</param>
/// <param name="Second">The other.</param>
/// <param name="Rank">Spearman's rank correlation, above -1 and below 1.</param>
public sealed record RankCorrelation(NoiseSource First, NoiseSource Second, double Rank);
