using FrameOpt.Model;
using FrameOpt.Plans;
using FrameOpt.Plans.Classical;
using FrameOpt.Plans.Optimal;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>A study's plan with the designs it stands for.</summary>
/// <param name="Plan">In coded units, over the swept factors.</param>
/// <param name="Fraction">What it confounds, for a two-level fraction.</param>
/// <param name="Model">The terms a surface fitted to it has.</param>
/// <param name="Factors">The swept factors, in the plan's order.</param>
/// <param name="Scales">For each, how coded values become metres or radians; the plan never leaves a factor's range.</param>
/// <param name="Designs">The geometry of each run.</param>
public sealed record StudyPlan(
    Plan Plan,
    Fraction? Fraction,
    SurfaceModel Model,
    IReadOnlyList<StudyFactor> Factors,
    IReadOnlyList<PlanScale> Scales,
    IReadOnlyList<FrameGeometry> Designs)
{
    /// <summary>Builds the plan of a study.</summary>
    /// <param name="study">With a plan setting.</param>
    /// <exception cref="ArgumentException">The plan does not exist for so many factors or runs; the message says why.</exception>
    public static StudyPlan Of(Study study)
    {
        var factors = study.Factors.Where(factor => factor.IsSwept).ToList();
        IReadOnlyList<string> names = [.. factors.Select(factor => factor.Name)];
        var (plan, fraction, model) = Build(study.Plan ?? throw new ArgumentException("the study has no plan"), names);
        var furthest = plan.Runs.Max(run => run.Coded.Max(Math.Abs));
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

        return new StudyPlan(plan, fraction, model, factors, scales, [.. plan.Runs.Select(Design)]);
    }

    /// <summary>The terms of a model over so many factors.</summary>
    public static IReadOnlyList<ModelTerm> Terms(SurfaceModel model, int factors) => model switch
    {
        SurfaceModel.Linear => ModelTerms.Linear(factors),
        SurfaceModel.Interactions => ModelTerms.WithInteractions(factors),
        SurfaceModel.Quadratic => ModelTerms.Quadratic(factors),
        _ => [.. ModelTerms.Quadratic(factors).Where(term => term.Powers.Max() == term.Order)],
    };

    private static (Plan Plan, Fraction? Fraction, SurfaceModel Model) Build(PlanSetting setting, IReadOnlyList<string> names)
    {
        switch (setting)
        {
            case PlanSetting.FullFactorial { Levels: 2 }:
                return (FullFactorial.TwoLevel(names), null, SurfaceModel.Interactions);
            case PlanSetting.FullFactorial full:
                return (FullFactorial.Build(names, [.. names.Select(_ => full.Levels)]), null, SurfaceModel.Quadratic);
            case PlanSetting.FractionWithGenerators generated:
                return Fractional(FractionalFactorial.Build(names, generated.Generators));
            case PlanSetting.FractionWithMaxRuns most:
                return Fractional(FractionalFactorial.WithMaxRuns(names, most.Runs));
            case PlanSetting.PlackettBurman burman:
                var screen = burman.Runs is { } runs ? PlackettBurman.Build(names, runs) : PlackettBurman.Build(names);
                return (screen, null, SurfaceModel.Linear);
            case PlanSetting.CentralComposite composite:
                return (CentralComposite.Build(names, composite.Axial, new CentrePoints(composite.CentrePoints, 0)), null,
                    SurfaceModel.Quadratic);
            case PlanSetting.BoxBehnken behnken:
                return (BoxBehnken.Build(names, behnken.CentrePoints), null, SurfaceModel.Quadratic);
            case PlanSetting.DefinitiveScreening:
                return (DefinitiveScreening.Build(names), null, SurfaceModel.LinearAndSquares);
            case PlanSetting.Optimal optimal:
                return (OptimalPlan.Build(Request(optimal, names)), null, optimal.Model);
            default:
                throw new InvalidOperationException();
        }
    }

    /// <summary>Products of two are fitted only where the fraction tells them apart from each other (resolution V or more).</summary>
    private static (Plan Plan, Fraction? Fraction, SurfaceModel Model) Fractional(FractionalPlan built) =>
        (built.Plan, built.Fraction, built.Fraction.Resolution is < 5 ? SurfaceModel.Linear : SurfaceModel.Interactions);

    private static OptimalRequest Request(PlanSetting.Optimal optimal, IReadOnlyList<string> names) => new()
    {
        Factors = names,
        Model = optimal.Model switch
        {
            SurfaceModel.Linear => PlanModel.Linear(names.Count),
            SurfaceModel.Interactions => PlanModel.Interactions(names.Count),
            _ => PlanModel.Quadratic(names.Count),
        },
        Runs = optimal.Runs,
        Levels = [.. names.Select(_ => CodedLevels.EvenlySpaced(5))],
        Criterion = optimal.Criterion,
        Seed = optimal.Seed,
    };
}
