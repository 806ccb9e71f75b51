using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>What a study's plan taught.</summary>
/// <param name="Plan">The runs.</param>
/// <param name="Failures">For each run, why its design cannot fly, or null.</param>
/// <param name="Surfaces">One for each response analysed.</param>
public sealed record PlanResult(StudyPlan Plan, IReadOnlyList<DesignFailure?> Failures, IReadOnlyList<FittedSurface> Surfaces)
{
    /// <summary>Runs the plan and fits its surfaces. The runs are computed, so nothing is tested: contributions and errors are given
    /// instead.</summary>
    /// <param name="study">With a plan setting.</param>
    /// <param name="mission">The model.</param>
    /// <param name="threads">For the comparison of surface and model.</param>
    public static PlanResult Of(Study study, MissionModel mission, int threads)
    {
        var plan = StudyPlan.Of(study);
        var evaluations = plan.Designs.Select(mission.Evaluate).ToList();
        var responses = study.Plan!.Responses;
        var values = responses
            .Select(response => evaluations.Select(e => e.Failure is null ? e[response] : double.NaN).ToArray()).ToList();
        var fits = values.Select(y => Fit(plan, y)).ToList();
        var checks = SurfaceComparison.Of(study, mission, plan, responses, fits, threads);
        return new PlanResult(
            plan,
            [.. evaluations.Select(evaluation => evaluation.Failure)],
            [.. responses.Select((response, r) => new FittedSurface(response, values[r], fits[r], Shape(plan, fits[r]), checks[r]))]);
    }

    private static RegressionFit? Fit(StudyPlan plan, double[] y)
    {
        var flying = Enumerable.Range(0, y.Length).Where(i => double.IsFinite(y[i])).ToList();
        var terms = StudyPlan.Terms(plan.Model, plan.Factors.Count);
        if (flying.Count < terms.Count)
            return null;
        return Regression.Fit(terms, [.. flying.Select(i => plan.Plan.Runs[i].Coded)], [.. flying.Select(i => y[i])],
            ErrorKind.Deterministic);
    }

    private static ResponseSurface? Shape(StudyPlan plan, RegressionFit? fit) =>
        fit is not null && plan.Model is SurfaceModel.Quadratic or SurfaceModel.LinearAndSquares && fit.Aliased.Count == 0
            ? ResponseSurface.Of(fit)
            : null;
}

/// <summary>A surface fitted to one response over a plan, and how far it is from the model it stands for.</summary>
/// <param name="Response">What is fitted, in its unit; signed where the response is.</param>
/// <param name="Values">Of each run; NaN where the design cannot fly.</param>
/// <param name="Fit">In coded units; null when too few runs can fly.</param>
/// <param name="Shape">Stationary point and curvatures; null for a surface without squares.</param>
/// <param name="Check">How far the surface is from the model over the plan's cube; null without a fit.</param>
public sealed record FittedSurface(
    Response Response,
    IReadOnlyList<double> Values,
    RegressionFit? Fit,
    ResponseSurface? Shape,
    SurfaceCheck? Check);

/// <summary>A surface against the model on a fine grid of the plan's cube.</summary>
/// <param name="Points">How many designs were compared; those that cannot fly are not counted.</param>
/// <param name="LargestError">Largest difference either way, in the response's unit.</param>
/// <param name="RootMeanSquareError">Over those designs, in the response's unit.</param>
/// <param name="Range">Largest less smallest value of the model over those designs, in the response's unit.</param>
/// <param name="WorstCoded">Where the difference is largest, in coded units.</param>
public sealed record SurfaceCheck(
    long Points, double LargestError, double RootMeanSquareError, double Range, IReadOnlyList<double> WorstCoded);
