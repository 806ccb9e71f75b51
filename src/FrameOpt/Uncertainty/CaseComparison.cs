using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Studies;

namespace FrameOpt.Uncertainty;

/// <summary>Some designs in every one of some cases: their objectives, whether they meet the limits, and how they rank there.</summary>
public sealed class CaseComparison
{
    private const int DesignsAtOnce = 16;
    private readonly RankingSetting ranking;

    /// <summary>For each design and objective the values of every case; NaN for a case that does not fly.</summary>
    private readonly double[][][] values;

    /// <summary>For each design and case 1 where it flies and meets every limit.</summary>
    private readonly double[][] met;

    /// <summary>Evaluates every design in every case.</summary>
    /// <param name="study">Its objectives of one case, limits and ranking count; at least one such objective.</param>
    /// <param name="mission">The model with the cases.</param>
    /// <param name="designs">To compare.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public CaseComparison(Study study, MissionModel mission, IReadOnlyList<FrontDesign> designs, int threads)
    {
        var kept = study.Objectives.Select((objective, o) => (Single: objective.OfOneCase, Weight: study.Ranking.Weights[o]))
            .Where(pair => pair.Single is not null).ToList();
        Objectives = [.. kept.Select(pair => pair.Single!)];
        ranking = study.Ranking with { Weights = [.. kept.Select(pair => pair.Weight)] };
        Response[] responses = [.. Objectives.Select(objective => new Response.OverCases(objective.Response, new CaseStatistic.Mean())),
            new Response.LimitsMet()];
        var chunks = designs.Chunk(DesignsAtOnce).ToArray();
        var each = InParallel.Select(chunks.Length, threads, c =>
        {
            var row = new SampledRow(mission, responses);
            return chunks[c].Select(design =>
            {
                row.Prepare(design.Geometry, [design.Geometry.OffsetMetres]);
                return responses.Select((_, r) => row.Values(r, 0).ToArray()).ToArray();
            }).ToList();
        }).SelectMany(chunk => chunk).ToList();
        values = [.. each.Select(ofDesign => ofDesign[..^1])];
        met = [.. each.Select(ofDesign => ofDesign[^1])];
        Cases = mission.Cases.Count;
    }

    /// <summary>How many cases.</summary>
    public int Cases { get; }

    /// <summary>Those of the study that say something of one case.</summary>
    public IReadOnlyList<StudyObjective> Objectives { get; }

    /// <summary>Share of the cases in which a design flies and meets every limit.</summary>
    public double LimitsMet(int design) => met[design].Average();

    /// <summary>The value of an objective that a share of the cases does not exceed to the worse side, in its unit.</summary>
    /// <param name="design">Which.</param>
    /// <param name="objective">Of <see cref="Objectives"/>.</param>
    /// <param name="percent">Above 0 and below 100.</param>
    public double Tail(int design, int objective, double percent)
    {
        var towards = Objectives[objective];
        return towards.Oriented(new CaseStatistic.Percentile(percent).Of(
            [.. values[design][objective].Select(towards.Oriented)], isHigherBetter: false));
    }

    /// <summary>The place of each design in a case, 1 for the best; infinite where it does not fly or violates a limit.</summary>
    public double[] Places(int ofCase)
    {
        var places = new double[met.Length];
        Array.Fill(places, double.PositiveInfinity);
        var there = Enumerable.Range(0, met.Length).Where(d => met[d][ofCase] == 1
            && Array.TrueForAll(values[d], ofObjective => double.IsFinite(ofObjective[ofCase]))).ToArray();
        foreach (var place in Ranked([.. there.Select(d => Objectives.Select((_, o) => values[d][o][ofCase]).ToArray())]))
            places[there[place.Index]] = place.Rank;
        return places;
    }

    /// <summary>Designs in rank order as the study ranks them.</summary>
    /// <param name="designs">For each design its <see cref="Objectives"/>, in their units.</param>
    public IReadOnlyList<Analysis.RankedDesign> Ranked(IReadOnlyList<double[]> designs) =>
        ranking.Rank([.. designs.Select(design => design.Select((value, o) => Objectives[o].Oriented(value)).ToArray())]);
}
