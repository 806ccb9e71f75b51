using FrameOpt.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace FrameOpt.Studies.Noise;

/// <summary>What of a study is uncertain, and how much.</summary>
/// <param name="Sources">Those that are not exact, each with its spread; empty when the study says that nothing is.</param>
/// <param name="Correlations">Between pairs of them.</param>
public sealed record NoiseSetting(
    IReadOnlyList<(NoiseSource Source, Spread Spread)> Sources, IReadOnlyList<RankCorrelation> Correlations)
{
    /// <summary>Below this the correlations leave no freedom to one of the numbers.</summary>
    private const double SmallestEigenvalue = 1e-9;

    /// <summary>Cases of a response over cases.</summary>
    public int Cases { get; init; } = 256;

    /// <summary>Those that the study takes as exact in so many words.</summary>
    public IReadOnlyList<NoiseSource> Exact { get; init; } = [];

    /// <summary>Of their sample.</summary>
    public uint Seed { get; init; } = 1;

    /// <summary>False when no numbers can have all these correlations at once: the first goes with the second, the second with the third,
    /// and the third against the first.</summary>
    public bool IsPossible
    {
        get
        {
            var names = Sources.Select(pair => pair.Source).ToList();
            var matrix = Matrix<double>.Build.DenseIdentity(Math.Max(1, names.Count));
            foreach (var pair in Correlations)
            {
                var (a, b) = (names.IndexOf(pair.First), names.IndexOf(pair.Second));
                matrix[a, b] = matrix[b, a] = 2 * Elementary.Sin(Math.PI / 6 * pair.Rank);
            }

            return matrix.Evd(Symmetricity.Symmetric).EigenValues.All(value => value.Real > SmallestEigenvalue);
        }
    }

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
