using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Studies;

namespace FrameOpt.Uncertainty;

/// <summary>Finds how sure the answer of a run is.</summary>
public static class UncertaintyRun
{
    /// <summary>Independent samples, from whose differences the error of the shares is told.</summary>
    public const int Samples = 8;

    /// <summary>The points of a spread at which a number is tried alone: 8 of 10 cases lie between.</summary>
    internal const double LowShare = 0.1, HighShare = 0.9;

    /// <summary>The uncertainty of a design.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="mission">Its model.</param>
    /// <param name="front">In rank order, for the design that would be best there; may be empty.</param>
    /// <param name="design">Chosen; it flies.</param>
    /// <param name="seeds">Best of the same search from other seeds.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public static UncertaintyResult Of(
        Study study, MissionModel mission, IReadOnlyList<FrontDesign> front, FrameGeometry design, IReadOnlyList<SeedBest> seeds,
        int threads)
    {
        var setting = study.Noise;
        var samples = Enumerable.Range(0, Samples).Select(s =>
        {
            var sample = new NoiseSample(setting, setting.Cases, setting.Seed + (uint)s);
            return InParallel.Select(sample.Count, threads, i => CaseOutcome.Of(study, sample.Case(mission, i), design));
        }).ToList();
        return new UncertaintyResult(setting, Summary(study, samples),
            [.. Bars(study, mission, front, design, threads).OrderByDescending(bar => bar.Moves(study.HeaviestSettledPhase))])
        {
            Choice = setting.Sources.Count == 0 || study.IsOneFrame ? null : ChoiceRun.Of(study, mission, front, seeds, threads),
            Shares = SpreadSharesRun.Of(setting, mission, design, threads),
        };
    }

    private static DesignEvaluation Evaluate(SampledCase there, FrameGeometry design) => there.Model.Evaluate(design + there.BuiltOff);

    private static SampleSummary Summary(Study study, IReadOnlyList<CaseOutcome[]> samples)
    {
        Estimate Share(Func<CaseOutcome, bool> holds) =>
            Mean([.. samples.Select(sample => sample.Average(one => holds(one) ? 1.0 : 0))]);
        var flying = samples.SelectMany(sample => sample).Where(one => one.Phases.Length > 0).ToList();
        return new SampleSummary(
            samples.Sum(sample => sample.Length),
            Share(one => study.Limits.Zip(one.LimitsMet).All(pair => pair.First.Response.IsOverCases || pair.Second)),
            [.. study.Limits.Select((_, l) => Share(one => one.LimitsMet[l]))],
            Share(one => one.CanBeHeld),
            [.. study.Mission.Select((_, p) => new PhaseSpread(
                Of(flying, one => one.Phases[p].Residual), Of(flying, one => one.Phases[p].Effort)))]);
    }

    private static Estimate Mean(double[] values)
    {
        var mean = values.Average();
        return new Estimate(mean, Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1) / values.Length));
    }

    private static Percentiles Of(IReadOnlyList<CaseOutcome> cases, Func<CaseOutcome, double> value)
    {
        if (cases.Count == 0)
            return new Percentiles(double.NaN, double.NaN, double.NaN);
        double At(double share) => new CaseStatistic.Percentile(100 * share).Of([.. cases.Select(value)], isHigherBetter: false);
        return new Percentiles(At(LowShare), At(0.5), At(HighShare));
    }

    /// <summary>Every source alone at both ends: two cases each, in which the design and the best of the front are looked at.</summary>
    private static IReadOnlyList<NoiseBar> Bars(
        Study study, MissionModel mission, IReadOnlyList<FrontDesign> front, FrameGeometry design, int threads)
    {
        var off = study.Noise.Sources.SelectMany(pair => new[] { LowShare, HighShare }, (pair, share) =>
            (pair.Source, Deviation: pair.Spread.Quantile(share))).ToList();
        SampledCase[] cases = [.. off.Select(one => NoiseSample.Case(mission, [one]))];
        var there = InParallel.Select(cases.Length, threads, i => Evaluate(cases[i], design));
        var compared = study.Objectives.All(objective => objective.OfOneCase is null) ? [] : ChoiceRun.Compared(front);
        var comparison = compared.Count == 0 ? null : new CaseComparison(study, mission.Over(_ => cases), compared, threads);
        FrontDesign? Best(int c) => comparison?.Places(c) is { } places && Array.IndexOf(places, 1) is >= 0 and var best
            && compared[best].Geometry != design ? compared[best] : null;
        return [.. study.Noise.Sources.Select((pair, s) => new NoiseBar(pair.Source, off[2 * s].Deviation, off[2 * s + 1].Deviation,
            there[2 * s], there[2 * s + 1], Best(2 * s), Best(2 * s + 1)))];
    }

    /// <summary>What is counted of one case: everything else of thousands of cases of a long mission would fill the memory.</summary>
    /// <param name="LimitsMet">One a limit of the study.</param>
    /// <param name="CanBeHeld">It flies, and the pilot can hold every settled phase.</param>
    /// <param name="Phases">The residual torque, N·m, and the effort of each; empty where it does not fly.</param>
    private sealed record CaseOutcome(bool[] LimitsMet, bool CanBeHeld, (double Residual, double Effort)[] Phases)
    {
        public static CaseOutcome Of(Study study, SampledCase there, in FrameGeometry design)
        {
            var row = new MissionRow(there.Model);
            if (row.PrepareDesign(design + there.BuiltOff).Kind != FailureKind.None)
                return new CaseOutcome([.. study.Limits.Select(_ => false)], false, []);
            var phases = new (double Residual, double Effort)[row.Phases.Length];
            var canBeHeld = true;
            for (var p = 0; p < phases.Length; p++)
            {
                phases[p] = (PhaseQuantity.Residual.Of(row, p), PhaseQuantity.Effort.Of(row, p));
                canBeHeld &= !row.Phases[p].IsSettled || !(phases[p].Effort > 1);
            }

            return new CaseOutcome([.. study.Limits.Select(limit => limit.IsMetBy(row))], canBeHeld, phases);
        }
    }
}
