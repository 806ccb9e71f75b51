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
    private const int MostCompared = 200;

    /// <summary>So many are ranked with other weights, and by the other method: their objectives are known.</summary>
    private const int MostRanked = 5000;

    /// <summary>Weights are scattered by this share to either side.</summary>
    private const double WeightScatter = 0.3;

    /// <summary>Designs that meet the limits this much less often than the best of them are no robust choice.</summary>
    private const double LimitsWithin = 0.02;

    private const double NineOfTen = 90;
    private readonly Study study;
    private readonly IReadOnlyList<FrontDesign> ranked;

    /// <summary>For each of those ranked its objectives, less is better.</summary>
    private readonly IReadOnlyList<double[]> oriented;
    private readonly IReadOnlyList<Standing> standings;
    private readonly CaseComparison comparison;
    private readonly double noneMeetsLimits;

    private ChoiceRun(Study study, MissionModel mission, IReadOnlyList<FrontDesign> front, int threads)
    {
        (this.study, ranked) = (study, BestAndEnds(front, MostRanked));
        oriented = [.. ranked.Select(design => design.Objectives.Select((value, o) => study.Objectives[o].Oriented(value)).ToArray())];
        var designs = Compared(front);
        comparison = new CaseComparison(study, mission, designs, threads);
        (standings, noneMeetsLimits) = Compare(mission, designs);
    }

    /// <summary>The designs of a front that are compared in other cases.</summary>
    /// <param name="front">In rank order; may be empty.</param>
    public static IReadOnlyList<FrontDesign> Compared(IReadOnlyList<FrontDesign> front) => BestAndEnds(front, MostCompared);

    /// <summary>The result; null when there is nothing to compare, or no objective of one case.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="mission">Its model, with the cases.</param>
    /// <param name="front">In rank order.</param>
    /// <param name="seeds">Best of the same search from other seeds.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public static ChoiceResult? Of(
        Study study, MissionModel mission, IReadOnlyList<FrontDesign> front, IReadOnlyList<SeedBest> seeds, int threads) =>
        front.Count == 0 || study.Objectives.All(objective => objective.OfOneCase is null) ? null
            : new ChoiceRun(study, mission, front, threads).Result(seeds);

    /// <summary>The best ranked designs, and the ends of every objective, between which the ranking scales it.</summary>
    private static IReadOnlyList<FrontDesign> BestAndEnds(IReadOnlyList<FrontDesign> front, int most) => front.Count == 0 ? [] :
    [
        .. front.Take(most).Concat(Enumerable.Range(0, front[0].Objectives.Count).SelectMany(o => (FrontDesign[])
            [front.MinBy(design => design.Objectives[o])!, front.MaxBy(design => design.Objectives[o])!])).Distinct(),
    ];

    private ChoiceResult Result(IReadOnlyList<SeedBest> seeds)
    {
        var (asDrawn, robust) = Picks();
        var result = new ChoiceResult(comparison.Cases, noneMeetsLimits, standings, OverWeights(), OtherMethod(), seeds)
        {
            Easiest = standings[0].Design,
            OfSpread = [.. OfSpread()],
            AsDrawn = asDrawn,
            Robust = robust,
        };
        return result with { Easiest = Easiest(result.Group.Select(one => one.Design)) };
    }

    /// <summary>How each design does over the cases, and the share of them in which none meets every limit.</summary>
    private (IReadOnlyList<Standing> Standings, double None) Compare(MissionModel mission, IReadOnlyList<FrontDesign> designs)
    {
        var (best, before, decided, none) = (new double[designs.Count], new double[designs.Count], new double[designs.Count], 0);
        for (var c = 0; c < comparison.Cases; c++)
        {
            var places = comparison.Places(c);
            if (places.Min() is var first && double.IsFinite(first))
                best[Array.IndexOf(places, first)]++;
            else
                none++;
            for (var d = 0; d < places.Length; d++)
            {
                if (double.IsInfinity(places[d]) && double.IsInfinity(places[0]))
                    continue;
                decided[d]++;
                before[d] += places[d] < places[0] ? 1 : places[d] == places[0] ? 0.5 : 0;
            }
        }

        double cases = comparison.Cases;
        return ([.. designs.Select((design, d) =>
        {
            var drawn = mission.Evaluate(design.Geometry);
            return new Standing(
                design,
                best[d] / cases,
                d == 0 || decided[d] == 0 ? 0 : before[d] / decided[d],
                comparison.LimitsMet(d),
                [.. comparison.Objectives.Select((objective, o) => (objective.ValueOf(drawn), comparison.Tail(d, o, NineOfTen)))]);
        })], none / cases);
    }

    private IReadOnlyList<DesignShare> OverWeights() =>
    [
        .. SobolSequence.ScrambledPoints(study.Objectives.Count, comparison.Cases, study.Noise.Seed)
            .Select(point => BestOf(study.Ranking with
            {
                Weights = [.. study.Ranking.Weights.Select((weight, o) => weight * (1 + WeightScatter * (2 * point[o] - 1)))],
            }))
            .CountBy(design => design).OrderByDescending(pair => pair.Value).ThenBy(pair => pair.Key.Rank)
            .Select(pair => new DesignShare(pair.Key, pair.Value / (double)comparison.Cases)),
    ];

    private IEnumerable<SpreadWeights> OfSpread()
    {
        if (study.Objectives.Count < 2)
            yield break;
        if (ObjectiveWeights.ByEntropy(oriented) is { } entropy)
            yield return new SpreadWeights("entropy", entropy, BestOf(study.Ranking with { Weights = entropy }));
        if (ObjectiveWeights.ByContrastAndConflict(oriented) is { } critic)
            yield return new SpreadWeights("contrast and conflict (CRITIC)", critic, BestOf(study.Ranking with { Weights = critic }));
    }

    private FrontDesign OtherMethod() => BestOf(study.Ranking with { Method = study.Ranking.OtherMethod });

    /// <summary>The best by the objectives that the search found.</summary>
    private FrontDesign BestOf(RankingSetting ranking) => ranked[ranking.Rank(oriented)[0].Index];

    private FrontDesign Easiest(IEnumerable<FrontDesign> group) => group
        .OrderByDescending(design => RoundFigure.Count(study, design.Geometry))
        .ThenBy(design => study.Baseline is { } baseline ? Distance(design.Geometry, baseline) : 0)
        .ThenBy(design => design.Rank).First();

    /// <summary>In tolerances of building: what a builder has to move.</summary>
    private double Distance(FrameGeometry design, FrameGeometry baseline) => study.Factors.Sum(factor =>
        Math.Abs(design[factor.Input] - baseline[factor.Input]) / BuildTolerance.Si(factor.Input));

    /// <summary>Best as drawn and best over the cases: the run's own choice is one of the two, by what its objectives are.</summary>
    private (Standing AsDrawn, Standing Robust) Picks()
    {
        Standing Best(IReadOnlyList<Standing> of, Func<(double AsDrawn, double NineOfTen), double> world) =>
            of[comparison.Ranked([.. of.Select(one => one.Values.Select(world).ToArray())])[0].Index];
        var chosen = standings[0];
        if (study.ResponsesOverCases.Count > 0)
            return (Best(standings, value => value.AsDrawn), chosen);
        var most = standings.Max(one => one.LimitsMet);
        var often = standings.Where(one => one.LimitsMet >= most - LimitsWithin
            && one.Values.All(value => double.IsFinite(value.NineOfTen))).ToList();
        return (chosen, often.Count == 0 ? chosen : Best(often, value => value.NineOfTen));
    }
}
