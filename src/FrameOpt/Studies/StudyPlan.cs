using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Plans;

namespace FrameOpt.Studies;

/// <summary>A plan of runs over the swept factors, to find out which factors matter.</summary>
/// <param name="Request">The kind of plan.</param>
/// <param name="Responses">The responses to analyse: the objectives, unless the study names others.</param>
public sealed record PlanSetting(PlanRequest Request, IReadOnlyList<Response> Responses);

/// <summary>A study's plan with the designs of its runs.</summary>
/// <param name="Plan">In coded units, over the swept factors.</param>
/// <param name="Fraction">What it confounds, for a two-level fraction; null for other plans.</param>
/// <param name="Model">The terms of the surface fitted to it.</param>
/// <param name="Factors">The swept factors, in the plan's order.</param>
/// <param name="Scales">For each factor, how coded values become metres or radians; the plan never leaves a factor's range.</param>
/// <param name="Designs">The geometry of each run.</param>
public sealed record StudyPlan(
    Plan Plan,
    Fraction? Fraction,
    SurfaceModel Model,
    IReadOnlyList<StudyFactor> Factors,
    IReadOnlyList<PlanScale> Scales,
    IReadOnlyList<FrameGeometry> Designs)
{
    /// <summary>The terms of the surface.</summary>
    public IReadOnlyList<ModelTerm> Terms => ModelTerms.Of(Model, Factors.Count);

    /// <summary>The plan of a study.</summary>
    /// <param name="study">With a plan setting.</param>
    /// <exception cref="ImpossiblePlanException">There is no such plan for this number of factors or runs; the message says
    /// why.</exception>
    public static StudyPlan Of(Study study)
    {
        var factors = study.Factors.Where(factor => factor.IsSwept).ToList();
        var built = Build(study, [.. factors.Select(f => f.Name)]);
        var furthest = built.Plan.Runs.Max(run => run.Coded.Max(Math.Abs));
        IReadOnlyList<PlanScale> scales = [.. factors.Select(f => PlanScale.Within(f.LevelsSi[0], f.LevelsSi[^1], Math.Max(1, furthest)))];
        var fixedAt = FrameGeometry.AsBuilt(study.Machine);
        foreach (var factor in study.Factors.Where(factor => !factor.IsSwept))
            fixedAt = fixedAt.With(factor.Input, factor.LevelsSi[0]);
        FrameGeometry Design(PlanRun run)
        {
            var geometry = fixedAt;
            for (var f = 0; f < factors.Count; f++)
                geometry = geometry.With(factors[f].Input, scales[f].Natural(run.Coded[f]));
            return geometry;
        }

        return new StudyPlan(built.Plan, built.Fraction, built.Model, factors, scales, [.. built.Plan.Runs.Select(Design)]);
    }

    private static BuiltPlan Build(Study study, IReadOnlyList<string> factors)
    {
        try
        {
            return (study.Plan ?? throw new ArgumentException("the study has no plan")).Request.Build(factors);
        }
        catch (ArgumentException cause)
        {
            throw new ImpossiblePlanException(cause);
        }
    }
}

/// <summary>A plan that does not exist for the factors or runs asked for. Most are found when the study is read; this one only by the
/// search for the best runs.</summary>
/// <param name="cause">Why, as the end of a sentence.</param>
public sealed class ImpossiblePlanException(ArgumentException cause) : Exception($"This plan cannot be made: {cause.Message}.", cause);

/// <summary>The results of a study's plan.</summary>
/// <param name="Plan">The runs.</param>
/// <param name="Failures">For each run, why its design cannot fly, or null.</param>
/// <param name="Surfaces">One for each response analysed.</param>
/// <param name="Shares">What the factors do in the model itself, for the same responses.</param>
public sealed record PlanResult(
    StudyPlan Plan, IReadOnlyList<DesignFailure?> Failures, IReadOnlyList<FittedSurface> Surfaces, ModelShares Shares);

/// <summary>A surface fitted to one response over a plan, and its error against the model.</summary>
/// <param name="Response">The fitted response, in its unit; signed where the response is.</param>
/// <param name="Values">Value of each run; NaN where the design cannot fly.</param>
/// <param name="Fit">In coded units; null when too few runs can fly.</param>
/// <param name="Shape">Stationary point and curvatures; null for a surface without squares.</param>
/// <param name="Check">Error of the surface against the model over the plan's cube; null without a fit.</param>
public sealed record FittedSurface(
    Response Response,
    IReadOnlyList<double> Values,
    RegressionFit? Fit,
    ResponseSurface? Shape,
    SurfaceCheck? Check);

/// <summary>Error of a surface against the model on a fine grid of the plan's cube.</summary>
/// <param name="Points">Number of designs compared; those that cannot fly are not counted.</param>
/// <param name="LargestError">Largest absolute difference, in the response's unit.</param>
/// <param name="RootMeanSquareError">Over those designs, in the response's unit.</param>
/// <param name="Range">Largest less smallest value of the model over those designs, in the response's unit.</param>
/// <param name="WorstCoded">Where the difference is largest, in coded units.</param>
public sealed record SurfaceCheck(
    long Points, double LargestError, double RootMeanSquareError, double Range, IReadOnlyList<double> WorstCoded);
