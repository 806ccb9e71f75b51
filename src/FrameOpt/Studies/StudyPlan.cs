using FrameOpt.Analysis;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Plans;

namespace FrameOpt.Studies;

/// <summary>A plan of runs over the swept factors, to find out which factors matter.</summary>
/// <param name="Request">The kind of plan.</param>
/// <param name="Responses">The responses to analyse: the objectives, unless the study names others.</param>
public sealed record PlanSetting(PlanRequest Request, IReadOnlyList<Response> Responses)
{
    /// <summary>Runs with every factor at its middle, added to each block.</summary>
    public int CentreRuns { get; init; }

    /// <summary>How often every run is made, 1 or more.</summary>
    public int Repeats { get; init; } = 1;

    /// <summary>True when only designs that meet the limits of the study are chosen.</summary>
    public bool IsWithinLimits { get; init; }

    /// <summary>Names of swept factors that are hard to change: runs are grouped into whole plots with the same setting of them.</summary>
    public IReadOnlyList<string> HardToChange { get; init; } = [];

    /// <summary>Designs that were run already, values in m or rad in the order of the study's factors.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Made { get; init; } = [];

    /// <summary>Number of runs, without a search for the best ones.</summary>
    /// <param name="factors">Names of the swept factors.</param>
    /// <exception cref="ArgumentException">There is no such plan; the message says why.</exception>
    public int CountRuns(IReadOnlyList<string> factors) => Repeats * (CentreRuns + Request.CountRuns(new PlanRoom(factors)
    {
        HardToChange = Hard(factors),
        Made = [.. Made.Select(_ => new double[factors.Count])],
    }));

    internal IReadOnlyList<int> Hard(IReadOnlyList<string> factors) => [.. HardToChange.Select(name => factors.ToList().IndexOf(name))];
}

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
    /// <summary>Factors that are hard to change; none where every run is set up by itself.</summary>
    public IReadOnlyList<StudyFactor> HardToChange { get; init; } = [];

    /// <summary>The terms of the surface.</summary>
    public IReadOnlyList<ModelTerm> Terms => ModelTerms.Of(Model, Factors.Count);

    /// <summary>The plan of a study.</summary>
    /// <param name="study">With a plan setting.</param>
    /// <param name="mission">The model, for the limits.</param>
    /// <exception cref="ImpossiblePlanException">There is no such plan for this number of factors or runs; the message says
    /// why.</exception>
    public static StudyPlan Of(Study study, MissionModel mission)
    {
        var setting = study.Plan ?? throw new ArgumentException("the study has no plan");
        List<StudyFactor> factors = [.. study.Factors.Where(factor => factor.IsSwept)];
        var fixedAt = FrameGeometry.AsBuilt(study.Machine);
        foreach (var factor in study.Factors.Where(factor => !factor.IsSwept))
            fixedAt = fixedAt.With(factor.Input, factor.LevelsSi[0]);
        FrameGeometry Design(IReadOnlyList<PlanScale> scales, double[] coded)
        {
            var geometry = fixedAt;
            for (var f = 0; f < factors.Count; f++)
                geometry = geometry.With(factors[f].Input, scales[f].Natural(coded[f]));
            return geometry;
        }

        IReadOnlyList<PlanScale> Scales(double furthest) =>
            [.. factors.Select(f => PlanScale.Within(f.LevelsSi[0], f.LevelsSi[^1], furthest))];
        var unit = Scales(1);
        var limits = study.LimitsOfOneCase;

        // The search for the best runs comes back to the same designs over and over.
        var known = new Dictionary<FrameGeometry, bool>();
        bool Known(FrameGeometry design)
        {
            if (!known.TryGetValue(design, out var meets))
                known[design] = meets = MeetsLimits(mission.Evaluate(design), limits);
            return meets;
        }

        var built = Build(setting, new PlanRoom([.. factors.Select(f => f.Name)])
        {
            Levels = factors.Any(f => f.IsContinuous) ? null : [.. factors.Select((f, i) => (IReadOnlyList<double>)
                [.. f.LevelsSi.Select(unit[i].Coded)])],
            HardToChange = setting.Hard([.. factors.Select(f => f.Name)]),
            Allowed = !setting.IsWithinLimits ? null : coded => Known(Design(unit, coded)),
            Made = [.. setting.Made.Select(values => factors.Select((factor, i) =>
                unit[i].Coded(values[study.Factors.ToList().IndexOf(factor)])).ToArray())],
        });
        var scales = Scales(Math.Max(1, setting.Made.Count > 0 ? 1 : built.Plan.Runs.Max(run => run.Coded.Max(Math.Abs))));
        return new StudyPlan(built.Plan, built.Fraction, built.Model, factors, scales,
            [.. built.Plan.Runs.Select(run => Design(scales, run.Coded))])
        {
            HardToChange = [.. factors.Where(factor => setting.HardToChange.Contains(factor.Name))],
        };
    }

    /// <summary>True when a design can fly and meets some limits.</summary>
    public static bool MeetsLimits(DesignEvaluation design, IReadOnlyList<StudyLimit> limits) =>
        design.Failure is null && limits.All(limit => limit.IsMetBy(design));

    private static BuiltPlan Build(PlanSetting setting, PlanRoom room)
    {
        try
        {
            var built = setting.Request.Build(room);
            var plan = setting.CentreRuns > 0 ? built.Plan.WithCentrePoints(setting.CentreRuns) : built.Plan;
            return built with { Plan = plan.InWholePlots(room.HardToChange).Repeated(setting.Repeats) };
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
/// <param name="MeetsLimits">For each run, whether its design meets every limit of the study that is not over cases.</param>
public sealed record PlanResult(
    StudyPlan Plan, IReadOnlyList<DesignFailure?> Failures, IReadOnlyList<FittedSurface> Surfaces, ModelShares Shares,
    IReadOnlyList<bool> MeetsLimits)
{
    /// <summary>How far every factor and every uncertain number moves the same responses.</summary>
    public required Screening Screening { get; init; }
}

/// <summary>A surface fitted to one response over a plan, and its error against the model.</summary>
/// <param name="Response">The fitted response, in its unit; signed where the response is.</param>
/// <param name="Values">Value of each run; NaN where the design cannot fly.</param>
/// <param name="Fit">In coded units; null when too few runs can fly.</param>
/// <param name="Shape">Stationary point and curvatures, those within the error of the fit counting as none; null for a surface without
/// squares.</param>
/// <param name="Check">Error of the surface against the model over the plan's cube; null without a fit.</param>
public sealed record FittedSurface(
    Response Response,
    IReadOnlyList<double> Values,
    RegressionFit? Fit,
    ResponseSurface? Shape,
    SurfaceCheck? Check)
{
    /// <summary>Each run predicted from the others; null where a run decides its own fit, or where runs are repeated: a repeated run of a
    /// model predicts itself exactly and makes the error look small.</summary>
    public CrossValidatedError? LeaveOneOut { get; init; }
}

/// <summary>Error of a surface against the model on a fine grid of the plan's cube.</summary>
/// <param name="Everywhere">Over the designs that can fly.</param>
/// <param name="WithinLimits">Over those that meet every limit of the study; null without limits or where none meets them.</param>
/// <param name="WorstCoded">Where the difference is largest, in coded units.</param>
public sealed record SurfaceCheck(SurfaceError Everywhere, SurfaceError? WithinLimits, IReadOnlyList<double> WorstCoded);

/// <summary>Error of a surface against the model over some designs.</summary>
/// <param name="Points">Number of designs compared.</param>
/// <param name="Largest">Largest absolute difference found on that grid, in the response's unit.</param>
/// <param name="RootMeanSquare">In the response's unit.</param>
/// <param name="Range">Largest less smallest value of the model, in the response's unit.</param>
/// <param name="RSquared">1 less the mean square error over the variance of the model: 1 for a perfect surface, below 0 for one that is
/// worse than the mean; not a number where the model does not change.</param>
public sealed record SurfaceError(long Points, double Largest, double RootMeanSquare, double Range, double RSquared);
