using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.Uncertainty;

namespace FrameOpt.Running;

/// <summary>Runs a study's plan and fits its surfaces.</summary>
public static class PlanRunner
{
    /// <summary>The results of the plan. The runs are computed, so there are no significance tests: contributions and errors are given
    /// instead.</summary>
    /// <param name="study">With a plan setting.</param>
    /// <param name="mission">The model.</param>
    /// <param name="threads">Worker threads for the comparison of surface and model, at least 1.</param>
    /// <param name="stop">Ends the work; there is no result then.</param>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    public static PlanResult Run(Study study, MissionModel mission, int threads, CancellationToken stop = default)
    {
        var plan = StudyPlan.Of(study, mission);
        var evaluations = plan.Designs.Select(design =>
        {
            stop.ThrowIfCancellationRequested();
            return mission.Evaluate(design);
        }).ToList();
        var limits = study.LimitsOfOneCase;
        var responses = study.Plan!.Responses;
        var values = responses
            .Select(response => evaluations.Select(e => e.Failure is null ? e[response] : double.NaN).ToArray()).ToList();
        var fits = values.Select(y => Fit(plan, y)).ToList();
        var checks = SurfaceComparison.Of(study, mission, plan, responses, fits, threads, stop);
        var isRepeated = plan.Plan.Runs.Select(run => string.Join('|', run.Coded)).Distinct().Count() < plan.Plan.Runs.Count;
        return new PlanResult(
            plan,
            [.. evaluations.Select(evaluation => evaluation.Failure)],
            [.. responses.Select((response, r) => new FittedSurface(response, values[r], fits[r], Shape(fits[r], checks[r]), checks[r])
            {
                LeaveOneOut = fits[r] is { } fit && !isRepeated ? CrossValidation.LeaveOneOut(fit) : null,
            })],
            ModelSharesRun.Of(study, mission, responses, threads, stop),
            [.. evaluations.Select(evaluation => StudyPlan.MeetsLimits(evaluation, limits))])
        {
            Screening = ScreeningRun.Of(study, mission, responses, threads, stop),
        };
    }

    private static RegressionFit? Fit(StudyPlan plan, double[] y)
    {
        var flying = Enumerable.Range(0, y.Length).Where(i => double.IsFinite(y[i])).ToList();
        return flying.Count < plan.Terms.Count ? null : Regression.Fit(
            plan.Terms, [.. flying.Select(i => plan.Plan.Runs[i].Coded)], [.. flying.Select(i => y[i])], ErrorKind.Deterministic);
    }

    private static ResponseSurface? Shape(RegressionFit? fit, SurfaceCheck? check) =>
        fit is not null && fit.Aliased.Count == 0 && fit.Terms.Any(term => term.Powers.Contains(2))
            ? ResponseSurface.Of(fit, check?.Everywhere.RootMeanSquare ?? 0) : null;
}
