using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Uncertainty;

/// <summary>Screens the factors and all uncertain numbers of a study together by elementary effects: at a thousand evaluations or two
/// the number of inputs hardly matters.</summary>
public static class ScreeningRun
{
    private const int Paths = 36;

    /// <summary>The elementary effects of every factor over its range, and of every uncertain number from its 10 % to its 90 %
    /// point.</summary>
    /// <param name="study">Its swept factors and what is uncertain.</param>
    /// <param name="mission">The model.</param>
    /// <param name="responses">Of one case each.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    /// <param name="stop">Ends the work; there is no result then.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static Screening Of(
        Study study, MissionModel mission, IReadOnlyList<Response> responses, int threads, CancellationToken stop = default)
    {
        List<StudyFactor> factors = [.. study.Factors.Where(factor => factor.IsSwept)];
        var fixedAt = study.Factors.Where(factor => !factor.IsSwept)
            .Aggregate(FrameGeometry.AsBuilt(study.Machine), (geometry, factor) => geometry.With(factor.Input, factor.LevelsSi[0]));
        var sources = study.Noise.Sources;
        double[]? At(double[] place)
        {
            stop.ThrowIfCancellationRequested();
            var design = factors.Index().Aggregate(fixedAt, (geometry, factor) => geometry.With(
                factor.Item.Input, factor.Item.LevelsSi[0] + (place[factor.Index] * factor.Item.RangeSi)));
            var there = NoiseSample.Case(mission, sources.Select((pair, s) => (pair.Source,
                pair.Spread.Quantile(
                    UncertaintyRun.LowShare + ((UncertaintyRun.HighShare - UncertaintyRun.LowShare) * place[factors.Count + s])))));
            var row = new MissionRow(there.Model);
            return row.PrepareDesign(design + there.BuiltOff).Kind == FailureKind.None
                ? [.. responses.Select(response => response.Of(row, magnitude: false))] : null;
        }

        var effects = ElementaryEffects.Of(factors.Count + sources.Count, responses.Count, Paths, study.Noise.Seed, threads, At);
        return new Screening(Paths, [.. factors.Select(factor => new ScreenedInput(factor.Name, null)),
            .. sources.Select(pair => new ScreenedInput(pair.Source.Name, pair.Source))],
            [.. responses.Select((response, r) => new ScreenedResponse(response, effects[r]))]);
    }
}
