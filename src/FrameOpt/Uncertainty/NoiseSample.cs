using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Uncertainty;

/// <summary>Cases of what may really be, the same for every design, so that designs compare fairly.</summary>
/// <remarks>Source of the correlations: normal copula, Pearson's r = 2 sin(pi/6 x Spearman's rho), K. Pearson 1907.</remarks>
public sealed class NoiseSample
{
    private readonly NoiseSetting setting;
    private readonly IReadOnlyList<double[]> deviations;

    /// <summary>A scrambled Sobol sample.</summary>
    /// <param name="setting">At most 32 sources.</param>
    /// <param name="cases">A power of two keeps the balance.</param>
    /// <param name="seed">Another seed gives an independent sample.</param>
    public NoiseSample(NoiseSetting setting, int cases, uint seed)
    {
        this.setting = setting;
        var factor = Correlation.Factor(setting);
        deviations = setting.Sources.Count == 0 ? [.. Enumerable.Repeat(Array.Empty<double>(), cases)]
            : [.. SobolSequence.ScrambledPoints(setting.Sources.Count, cases, seed).Select(point => Correlation.Apply(factor, point))
                .Select(point => point.Select((share, s) => setting.Sources[s].Spread.Quantile(share)).ToArray())];
    }

    /// <summary>How many cases.</summary>
    public int Count => deviations.Count;

    /// <summary>The deviations of a case, one a source, in its unit.</summary>
    public IReadOnlyList<double> Deviations(int index) => deviations[index];

    /// <summary>The cases of a model, in order.</summary>
    public IReadOnlyList<SampledCase> Cases(MissionModel model) => [.. Enumerable.Range(0, Count).Select(i => Case(model, i))];

    /// <summary>One case of a model.</summary>
    public SampledCase Case(MissionModel model, int index) =>
        Case(model, setting.Sources.Select((pair, s) => (pair.Source, deviations[index][s])));

    /// <summary>A model with some numbers off.</summary>
    /// <param name="model">As studied.</param>
    /// <param name="off">Each source with its deviation.</param>
    public static SampledCase Case(MissionModel model, IEnumerable<(NoiseSource Source, double Deviation)> off)
    {
        var state = NoiseCase.Of(model);
        foreach (var (source, deviation) in off)
            state = source.Apply(state, deviation);
        return new SampledCase(state.In(model), state.BuiltOff);
    }

    /// <summary>Rank correlations as correlated normal numbers.</summary>
    private static class Correlation
    {
        /// <summary>Cholesky factor of the correlation of the normals; null when none is asked for.</summary>
        public static double[,]? Factor(NoiseSetting setting)
        {
            if (setting.Correlations.Count == 0)
                return null;
            var names = setting.Sources.Select(pair => pair.Source).ToList();
            var matrix = MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.DenseIdentity(names.Count);
            foreach (var pair in setting.Correlations)
            {
                var (a, b) = (names.IndexOf(pair.First), names.IndexOf(pair.Second));
                matrix[a, b] = matrix[b, a] = 2 * Elementary.Sin(Math.PI / 6 * pair.Rank);
            }

            return matrix.Cholesky().Factor.ToArray();
        }

        public static double[] Apply(double[,]? factor, double[] point)
        {
            if (factor is null)
                return point;
            var normal = point.Select(Quantile.Normal).ToArray();
            return [.. point.Select((_, i) => MathNet.Numerics.Distributions.Normal.CDF(0, 1,
                Enumerable.Range(0, i + 1).Sum(k => factor[i, k] * normal[k])))];
        }
    }
}
