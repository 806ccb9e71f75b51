using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Running;

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

    /// <summary>One case: machine, wing and mission changed, the design built off its drawing.</summary>
    public NoiseCase Case(Study study, FrameGeometry design, int index)
    {
        var state = NoiseCase.AsStudied(study, design);
        for (var s = 0; s < setting.Sources.Count; s++)
            state = setting.Sources[s].Source.Apply(state, deviations[index][s]);
        return state;
    }

    /// <summary>A design in every case, in order.</summary>
    public IReadOnlyList<DesignEvaluation> Evaluate(Study study, ResponseReferences references, FrameGeometry design) =>
        [.. Enumerable.Range(0, Count).AsParallel().AsOrdered().Select(i => Evaluate(Case(study, design, i), references))];

    /// <summary>The design of a case.</summary>
    public static DesignEvaluation Evaluate(NoiseCase state, ResponseReferences references) =>
        new MissionModel(state.Machine, state.Wing, state.Mission, references).Evaluate(state.Geometry);

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
                matrix[a, b] = matrix[b, a] = 2 * Math.Sin(Math.PI / 6 * pair.Rank);
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
