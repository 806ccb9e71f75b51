using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Uncertainty;

/// <summary>Finds how sure the answer of a run is.</summary>
public static class UncertaintyRun
{
    /// <summary>Independent samples, from whose differences the error of the shares is told.</summary>
    public const int Samples = 8;

    /// <summary>The points of a spread at which a number is tried alone.</summary>
    private const double LowShare = 0.1, HighShare = 0.9;

    /// <summary>The uncertainty of a design.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="mission">Its model.</param>
    /// <param name="front">In rank order, for the design that would be best there; may be empty.</param>
    /// <param name="design">Chosen; it flies.</param>
    /// <param name="seeds">Best of the same search from other seeds.</param>
    public static UncertaintyResult Of(
        Study study, MissionModel mission, IReadOnlyList<FrontDesign> front, FrameGeometry design, IReadOnlyList<SeedBest> seeds)
    {
        var setting = study.Noise;
        var samples = Enumerable.Range(0, Samples).Select(s => Evaluate(
            new NoiseSample(setting, setting.Cases, setting.Seed + (uint)s).Cases(mission), design)).ToList();
        var compared = front.Count == 0 ? [] : ChoiceRun.Compared(front, ChoiceRun.MostCompared);
        var bars = setting.Sources.AsParallel().AsOrdered().Select(pair => Bar(study, mission, compared, design, pair)).ToList();
        var heaviest = study.Mission.Index().Where(item => item.Item.IsSettled).MaxBy(item => item.Item.Weight).Index;
        return new UncertaintyResult(setting, Summary(study, samples), [.. bars.OrderByDescending(bar => bar.Moves(heaviest))])
        {
            Choice = setting.Sources.Count == 0 || study.IsOneFrame ? null : ChoiceRun.Of(study, mission, front, seeds),
            Shares = SpreadSharesRun.Of(setting, mission, design),
        };
    }

    private static IReadOnlyList<DesignEvaluation> Evaluate(IReadOnlyList<SampledCase> cases, FrameGeometry design) =>
        [.. cases.AsParallel().AsOrdered().Select(one => one.Model.Evaluate(design + one.BuiltOff))];

    private static SampleSummary Summary(Study study, IReadOnlyList<IReadOnlyList<DesignEvaluation>> samples)
    {
        Estimate Share(Func<DesignEvaluation, bool> holds) =>
            Mean([.. samples.Select(sample => sample.Average(one => holds(one) ? 1.0 : 0))]);
        var flying = samples.SelectMany(sample => sample).Where(one => one.Failure is null).ToList();
        return new SampleSummary(
            samples.Sum(sample => sample.Count),
            Share(one => study.Limits.All(limit => limit.Response.IsOverCases || limit.IsMetBy(one))),
            [.. study.Limits.Select(limit => Share(one => limit.IsMetBy(one)))],
            Share(one => one.Failure is null && !one.Phases.Any(phase => phase.CannotBeHeld)),
            [.. study.Mission.Select((_, p) => new PhaseSpread(
                Of(flying, one => one.Phases[p][PhaseQuantity.Residual]), Of(flying, one => one.Phases[p][PhaseQuantity.Effort])))]);
    }

    private static Estimate Mean(double[] values)
    {
        var mean = values.Average();
        return new Estimate(mean, Math.Sqrt(values.Sum(value => (value - mean) * (value - mean)) / (values.Length - 1) / values.Length));
    }

    private static Percentiles Of(IReadOnlyList<DesignEvaluation> designs, Func<DesignEvaluation, double> value)
    {
        if (designs.Count == 0)
            return new Percentiles(double.NaN, double.NaN, double.NaN);
        double[] sorted = [.. designs.Select(value).Order()];
        double At(double share) => sorted[Math.Min((int)(share * sorted.Length), sorted.Length - 1)];
        return new Percentiles(At(LowShare), At(0.5), At(HighShare));
    }

    private static NoiseBar Bar(
        Study study, MissionModel mission, IReadOnlyList<FrontDesign> compared, FrameGeometry design,
        (NoiseSource Source, Spread Spread) pair)
    {
        double low = pair.Spread.Quantile(LowShare), high = pair.Spread.Quantile(HighShare);
        var (below, above) = (NoiseSample.Case(mission, [(pair.Source, low)]), NoiseSample.Case(mission, [(pair.Source, high)]));
        FrontDesign? Best(SampledCase there) =>
            BestOf(study, compared, geometry => there.Model.Evaluate(geometry + there.BuiltOff)) is { } best && best.Geometry != design
                ? best : null;
        return new NoiseBar(pair.Source, low, high, below.Model.Evaluate(design + below.BuiltOff),
            above.Model.Evaluate(design + above.BuiltOff), Best(below), Best(above));
    }

    /// <summary>The best of the front in another case, ranked as the study ranks; null when none meets the limits there.</summary>
    private static FrontDesign? BestOf(Study study, IReadOnlyList<FrontDesign> compared, Func<FrameGeometry, DesignEvaluation> evaluate)
    {
        var there = compared.Select(place => (place, Design: evaluate(place.Geometry)))
            .Where(item => item.Design.Failure is null && study.Limits.All(limit => limit.IsMetBy(item.Design))).ToList();
        if (there.Count == 0)
            return null;
        var ranked = study.Ranking.Rank(
            [.. there.Select(item => study.Objectives.Select(objective => objective.LessIsBetter(item.Design)).ToArray())]);
        return there[ranked[0].Index].place;
    }
}
