using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Studies;

namespace FrameOpt.Uncertainty;

/// <summary>Ranks the best designs of a front against each other in every case of the noise.</summary>
public sealed class ChoiceRun
{
    /// <summary>So many of the best ranked designs are compared.</summary>
    public const int MostCompared = 200;

    private const int MostForWeights = 5000;

    /// <summary>Weights are scattered by this share to either side.</summary>
    public const double WeightScatter = 0.3;

    /// <summary>Designs that meet the limits this much less often than the best of them are no robust choice.</summary>
    private const double LimitsWithin = 0.02;

    private const double NineOfTen = 0.9;
    private readonly Study study;
    private readonly MissionModel mission;
    private readonly IReadOnlyList<FrontDesign> designs;
    private readonly IReadOnlyList<FrontDesign> forWeights;
    private readonly StudyObjective[] objectives;
    private readonly StudyLimit[] limits;
    private readonly double[] weights;

    /// <summary>For each case and design its objectives, less is better; null where it does not fly or violates a limit.</summary>
    private readonly double[]?[][] met;

    /// <summary>For each design and case its objectives, less is better; NaN where it does not fly.</summary>
    private readonly double[][][] values;

    private ChoiceRun(Study study, MissionModel mission, IReadOnlyList<FrontDesign> front)
    {
        (this.study, this.mission) = (study, mission);
        (designs, forWeights) = (Compared(front, MostCompared), Compared(front, MostForWeights));
        var kept = study.Objectives.Select((objective, o) => (Single: objective.OfOneCase, Weight: study.Ranking.Weights[o]))
            .Where(pair => pair.Single is not null).ToList();
        (objectives, weights) = ([.. kept.Select(pair => pair.Single!)], [.. kept.Select(pair => pair.Weight)]);
        limits = [.. study.Limits.Where(limit => !limit.Response.IsOverCases)];
        var evaluated = mission.Cases.AsParallel().AsOrdered().Select(one => designs.Select(design =>
        {
            var there = one.Model.Evaluate(design.Geometry + one.BuiltOff);
            var values = Objectives(there);
            var isMet = Array.TrueForAll(limits, limit => limit.IsMetBy(there)) && Array.TrueForAll(values, double.IsFinite);
            return (Values: values, IsMet: isMet);
        }).ToArray()).ToArray();
        met = [.. evaluated.Select(ofCase => ofCase.Select(one => one.IsMet ? one.Values : null).ToArray())];
        values = [.. designs.Select((_, d) => evaluated.Select(ofCase => ofCase[d].Values).ToArray())];
    }

    /// <summary>The result; null when there is nothing to compare, or no objective of one case.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="mission">Its model, with the cases.</param>
    /// <param name="front">In rank order.</param>
    /// <param name="seeds">Best of the same search from other seeds.</param>
    public static ChoiceResult? Of(Study study, MissionModel mission, IReadOnlyList<FrontDesign> front, IReadOnlyList<SeedBest> seeds)
    {
        if (front.Count == 0 || study.Objectives.All(objective => objective.OfOneCase is null))
            return null;
        return new ChoiceRun(study, mission, front).Result(seeds);
    }

    /// <summary>The best ranked designs, and the ends of every objective, between which the ranking scales it.</summary>
    /// <param name="front">In rank order, not empty.</param>
    /// <param name="most">So many of the best.</param>
    public static IReadOnlyList<FrontDesign> Compared(IReadOnlyList<FrontDesign> front, int most) =>
    [
        .. front.Take(most).Concat(Enumerable.Range(0, front[0].Objectives.Count).SelectMany(o => (FrontDesign[])
            [front.MinBy(design => design.Objectives[o])!, front.MaxBy(design => design.Objectives[o])!])).Distinct(),
    ];

    private ChoiceResult Result(IReadOnlyList<SeedBest> seeds)
    {
        var (wins, before, none) = Compare();
        var cases = (double)met.Length;
        var standings = designs.Select((design, d) => new Standing(
            design,
            wins[d] / cases,
            d == 0 ? 0 : before[d],
            met.Count(ofCase => ofCase[d] is not null) / cases,
            [.. objectives.Select((objective, o) => (Shown(objective, Objectives(mission.Evaluate(design.Geometry))[o]), Tail(d, o)))]))
            .ToList();
        var (asDrawn, robust) = Picks(standings);
        var result = new ChoiceResult(met.Length, none / cases, standings, OverWeights(), OtherMethod(), seeds)
        {
            Easiest = designs[0],
            AsDrawn = asDrawn,
            Robust = robust,
        };
        return result with { Easiest = Easiest([.. result.Group.Select(one => one.Design)]) };
    }

    /// <summary>How often each design is best; its share of ranking before the first, of the cases in which one of the two meets the
    /// limits; and in how many cases none does.</summary>
    private (double[] Wins, double[] Before, double None) Compare()
    {
        var (wins, before, decided, none) = (new double[designs.Count], new double[designs.Count], new double[designs.Count], 0.0);
        var ranking = study.Ranking with { Weights = weights };
        foreach (var ofCase in met)
        {
            var there = Enumerable.Range(0, designs.Count).Where(d => ofCase[d] is not null).ToArray();
            var score = new double[designs.Count];
            Array.Fill(score, double.PositiveInfinity);
            if (there.Length == 0)
                none++;
            else
                Score(ranking.Rank([.. there.Select(d => ofCase[d]!)]), there, score);
            for (var d = 0; d < designs.Count; d++)
            {
                before[d] += score[d] < score[0] ? 1 : score[d] == score[0] && double.IsFinite(score[d]) ? 0.5 : 0;
                decided[d] += double.IsFinite(score[d]) || double.IsFinite(score[0]) ? 1 : 0;
            }

            if (there.Length > 0)
                wins[Array.IndexOf(score, score.Min())]++;
        }

        return (wins, [.. before.Select((count, d) => decided[d] > 0 ? count / decided[d] : 0)], none);
    }

    /// <summary>The place of each design, from 0; equal designs have the same.</summary>
    private static void Score(IReadOnlyList<RankedDesign> ranked, int[] there, double[] score)
    {
        foreach (var place in ranked)
            score[there[place.Index]] = place.Rank;
    }

    private double[] Objectives(DesignEvaluation design) => design.Failure is not null ? [.. objectives.Select(_ => double.NaN)]
        : [.. objectives.Select(objective => objective.LessIsBetter(design))];

    private static double Shown(StudyObjective objective, double lessIsBetter) => objective.Maximise ? -lessIsBetter : lessIsBetter;

    private double Tail(int design, int objective) => Shown(objectives[objective], new CaseStatistic.Percentile(100 * NineOfTen)
        .Of([.. values[design].Select(ofCase => ofCase[objective])], isHigherBetter: false));

    private IReadOnlyList<DesignShare> OverWeights()
    {
        var found = forWeights.Select(Found).ToArray();
        return [.. SobolSequence.ScrambledPoints(study.Objectives.Count, met.Length, study.Noise.Seed).AsParallel().AsOrdered()
            .Select(point => study.Ranking with
            {
                Weights = [.. study.Ranking.Weights.Select((weight, o) => weight * (1 + WeightScatter * (2 * point[o] - 1)))],
            })
            .Select(ranking => ranking.Rank(found)[0].Index).AsEnumerable()
            .CountBy(index => index).OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key)
            .Select(pair => new DesignShare(forWeights[pair.Key], pair.Value / (double)met.Length))];
    }

    private FrontDesign OtherMethod()
    {
        var other = study.Ranking.Method == RankingMethod.Topsis ? RankingMethod.DistanceToIdeal : RankingMethod.Topsis;
        var ranking = new RankingSetting(other, study.Ranking.Weights);
        return forWeights[ranking.Rank([.. forWeights.Select(Found)])[0].Index];
    }

    /// <summary>The objectives of the study as the search found them, less is better.</summary>
    private double[] Found(FrontDesign design) =>
        [.. study.Objectives.Select((objective, o) => objective.Maximise ? -design.Objectives[o] : design.Objectives[o])];

    private FrontDesign Easiest(IReadOnlyList<FrontDesign> group) => group
        .OrderByDescending(design => study.Factors.Count(factor => RoundFigure.IsRound(factor.Input, design.Geometry[factor.Input])))
        .ThenBy(design => study.Baseline is { } baseline ? Distance(design.Geometry, baseline) : 0)
        .ThenBy(design => design.Rank).First();

    /// <summary>In tolerances of building: what a builder has to move.</summary>
    private double Distance(FrameGeometry design, FrameGeometry baseline) => study.Factors.Sum(factor =>
        Math.Abs(design[factor.Input] - baseline[factor.Input]) / BuildTolerance.Si(factor.Input));

    /// <summary>Best as drawn and best over the cases: the run's own choice is one of the two, by what its objectives are.</summary>
    private (Standing AsDrawn, Standing Robust) Picks(List<Standing> standings)
    {
        Standing Best(IReadOnlyList<Standing> of, Func<(double AsDrawn, double NineOfTen), double> world) =>
            of[(study.Ranking with { Weights = weights }).Rank([.. of.Select(one => objectives.Select((objective, o) =>
                objective.Maximise ? -world(one.Values[o]) : world(one.Values[o])).ToArray())])[0].Index];
        var chosen = standings[0];
        if (study.ResponsesOverCases.Count > 0)
            return (Best(standings, value => value.AsDrawn), chosen);
        var most = standings.Max(one => one.LimitsMet);
        var often = standings.Where(one => one.LimitsMet >= most - LimitsWithin
            && one.Values.All(value => double.IsFinite(value.NineOfTen))).ToList();
        return (chosen, often.Count == 0 ? chosen : Best(often, value => value.NineOfTen));
    }
}
