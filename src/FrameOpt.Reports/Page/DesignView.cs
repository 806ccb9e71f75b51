using FrameOpt.Model.Mission;
using FrameOpt.Numerics;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>One design that the page can show, with everything it says about it.</summary>
/// <param name="FrontDesign">Its place on the front, or null for the nearest miss.</param>
/// <param name="Evaluation">Of a design that flies.</param>
/// <param name="Result">The run as if this were the chosen design.</param>
/// <param name="Curve">Residual and torque against propeller speed.</param>
internal sealed record DesignView(FrontDesign? FrontDesign, DesignEvaluation Evaluation, StudyResult Result,
    IReadOnlyList<ResidualPoint> Curve)
{
    /// <summary>What it is, in a few words.</summary>
    public string Name => FrontDesign is null ? "nearest miss"
        : Result.Study.IsOneFrame ? "this frame"
        : ReferenceEquals(Evaluation, Result.Front.Count > 0 ? Best : null) ? "best compromise"
        : FormattableString.Invariant($"rank {FrontDesign.Rank}");

    /// <summary>The design over the range of propeller speeds.</summary>
    public RpmCurve OverRpm => new(Result.Study.Machine, Evaluation, Curve, Result.Bands, Result.Study.Band.WithinNewtonMetres);

    /// <summary>The best compromise of the run.</summary>
    public DesignEvaluation? Best { get; init; }

    /// <summary>The designs a person is shown, best first; the nearest miss alone when nothing is feasible; none when nothing
    /// flies.</summary>
    public static IReadOnlyList<DesignView> Of(RunReport report)
    {
        var result = report.Result;
        if (result.Chosen is not { } chosen)
            return result.NearestMiss is { } miss ? [new(null, miss.Evaluation, result, [])] : [];
        var models = result.Scenarios.Select(scenario => result.Mission.With(scenario.Case.Of(result.Study.Wing))).ToList();
        var bands = new BalancedBands(result.Mission, result.Study.Band.PhaseIndex);
        var shown = DisplayedDesigns.WithExtremes(result).ToArray();
        return InParallel.Select(shown.Length, Environment.ProcessorCount, place => place == 0
            ? new DesignView(result.Front[0], chosen, result, bands.Curve(chosen.Geometry)) { Best = chosen }
            : ForDesign(result, result.Front[shown[place]], report.FrontEvaluations[shown[place]], models, bands) with { Best = chosen });
    }

    private static DesignView ForDesign(StudyResult result, FrontDesign place, DesignEvaluation evaluation,
        IReadOnlyList<MissionModel> models, BalancedBands bands)
    {
        var curve = bands.Curve(evaluation.Geometry);
        return new DesignView(
            place,
            evaluation,
            result with
            {
                Chosen = evaluation,
                Scenarios = [.. result.Scenarios.Select((scenario, s) => scenario with { Chosen = models[s].Evaluate(
                    evaluation.Geometry) })],
                Uncertainty = null,
                Margins = BuildMargins.Of(result.Mission, result.Study, evaluation),
                Bands = bands.Find(evaluation.Geometry, curve, result.Study.Band.WithinNewtonMetres),
            },
            curve);
    }
}

/// <summary>A design of the front in the cells of a table.</summary>
internal static class DesignRow
{
    public static IReadOnlyList<string> Headers(Study study) =>
    [
        "rank", .. study.Factors.Select(factor => factor.Name.Replace('_', ' ')),
            .. study.Objectives.Select(objective => StudyText.Title(objective.Response, objective.Magnitude)),
    ];

    /// <summary>Rank in the run, every factor, every objective, with units.</summary>
    public static IReadOnlyList<string> Of(DesignView view) =>
    [
        FormattableString.Invariant($"{view.FrontDesign!.Rank}"),
        .. Geometry(view),
        .. view.Result.Study.Objectives.Select((objective, o) => NumberFormat.Text(
            view.FrontDesign.Objectives[o], objective.Response.Entry)),
    ];

    /// <summary>The design in one short line.</summary>
    public static string Label(DesignView view) =>
        $"{(view.FrontDesign is null ? view.Name : FormattableString.Invariant($"rank {view.FrontDesign.Rank}"))}: "
            + $"{string.Join(", ", Geometry(view))}";

    private static IEnumerable<string> Geometry(DesignView view) =>
        view.Result.Study.Factors.Select(factor => GeometryText.Value(factor, view.Evaluation.Geometry[factor.Input]));
}
