using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Uncertainty;

/// <summary>Divides the variance of each phase's residual torque among the sources, without assuming that it is linear.</summary>
/// <remarks>Source: total Sobol indices by M. J. W. Jansen, Analysis of variance designs for model output, Computer Physics Communications
/// 117 (1999) 35-43; Shapley effects by T. Goda, A simple algorithm for global sensitivity analysis with Shapley effects, Reliability
/// Engineering and System Safety 213 (2021) 107702. Both hold for independent sources.</remarks>
public static class SpreadSharesRun
{
    private const int Points = 512;

    /// <summary>For each settled phase; empty when nothing is uncertain, or some sources are correlated.</summary>
    /// <param name="setting">What is uncertain.</param>
    /// <param name="mission">The model.</param>
    /// <param name="design">As drawn.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public static IReadOnlyList<SpreadShares> Of(NoiseSetting setting, MissionModel mission, FrameGeometry design, int threads)
    {
        if (setting.Sources.Count == 0 || setting.Correlations.Count > 0)
            return [];
        var phases = mission.Phases.Index().Where(item => item.Item.IsSettled).Select(item => item.Index).ToArray();
        double[][] Sample(uint seed)
        {
            var sample = new NoiseSample(setting, Points, seed);
            return [.. Enumerable.Range(0, Points).Select(i => sample.Deviations(i).ToArray())];
        }

        // Points of the same number in two scramblings share the structure of the sequence: out of order they do not.
        var (here, there) = (Sample(setting.Seed), new Pcg32(setting.Seed).Shuffled(Sample(setting.Seed + 1)));
        SpreadPoint Point() => new(setting, mission, design, phases);
        var walks = InParallel.Select(Points, threads, i => Walk(here[i], there[i], new Pcg32((ulong)i + 1), Point))
            .OfType<PointWalk>().ToList();
        return [.. phases.Select((phase, p) => Shares(setting, phase, p, walks))];
    }

    /// <summary>From one point to another, a source at a time in random order, and each source alone; null when some point does not
    /// fly.</summary>
    private static PointWalk? Walk(double[] here, double[] there, Pcg32 random, Func<SpreadPoint> point)
    {
        var order = random.Shuffled([.. Enumerable.Range(0, here.Length)]);
        var (mixed, onTheWay, steps) = ((double[])here.Clone(), point(), new double[here.Length][]);
        foreach (var s in order)
        {
            mixed[s] = there[s];
            if (onTheWay.Residuals(mixed) is not { } step)
                return null;
            steps[s] = step;
        }

        var (one, beside, alone) = ((double[])here.Clone(), point(), new double[here.Length][]);
        if (beside.Residuals(one) is not { } start)
            return null;
        for (var s = 0; s < here.Length; s++)
        {
            one[s] = there[s];
            if (beside.Residuals(one) is not { } value)
                return null;
            alone[s] = value;
            one[s] = here[s];
        }

        return new PointWalk(start, order, steps, alone);
    }

    private static SpreadShares Shares(NoiseSetting setting, int phase, int p, IReadOnlyList<PointWalk> walks)
    {
        var (total, shapley, variance) = (new double[setting.Sources.Count], new double[setting.Sources.Count], 0.0);
        foreach (var walk in walks)
        {
            var (start, before) = (walk.Start[p], walk.Start[p]);
            foreach (var s in walk.Order)
            {
                var after = walk.Steps[s][p];
                shapley[s] += (start - (before + after) / 2) * (before - after) / walks.Count;
                before = after;
                var difference = start - walk.Alone[s][p];
                total[s] += difference * difference / 2 / walks.Count;
            }

            variance += (start - before) * (start - before) / 2 / walks.Count;
        }

        var mean = walks.Average(walk => walk.Start[p]);
        var deviation = Math.Sqrt(walks.Average(walk => (walk.Start[p] - mean) * (walk.Start[p] - mean)));
        return new SpreadShares(phase, deviation, variance == 0 ? [] :
            [.. setting.Sources.Select((pair, s) => new SourceShare(
                pair.Source, Rounded(total[s] / variance), Rounded(shapley[s] / variance)))
                .OrderByDescending(share => share.Shapley)]);
    }

    /// <summary>Sums of thousands of terms differ in their last digits between libraries of mathematics: rounded, a browser gives the same
    /// bytes.</summary>
    private static double Rounded(double share) => Math.Round(share, 12);

    /// <summary>The residuals of each phase along a walk.</summary>
    /// <param name="Start">At its beginning.</param>
    /// <param name="Order">In which the sources changed.</param>
    /// <param name="Steps">For each source after it changed, in that order.</param>
    /// <param name="Alone">For each source with nothing else changed.</param>
    private sealed record PointWalk(double[] Start, int[] Order, double[][] Steps, double[][] Alone);
}
