using FrameOpt.Plans;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the plan of runs.</summary>
internal static class PlanReader
{
    private const int MaxRuns = 10_000;
    private const int MaxCentreRuns = 100;
    private const int MaxRepeats = 20;
    private const int MaxLevels = 21;
    private const int MaxFilling = 500;

    /// <summary>In place of a number of levels: those of the factors.</summary>
    private const string OwnLevels = "as made";

    /// <summary>Every kind of plan, and the keys it takes beside kind and responses.</summary>
    private static readonly Dictionary<string, string[]> kinds = new()
    {
        ["full factorial"] = ["levels", "centre_runs", "hard_to_change"],
        ["fractional factorial"] = ["generators", "most_runs", "centre_runs", "hard_to_change"],
        ["Plackett-Burman"] = ["runs", "centre_runs"],
        ["central composite"] = ["axial", "centre_runs", "hard_to_change"],
        ["Box-Behnken"] = ["centre_runs", "hard_to_change"],
        ["definitive screening"] = ["centre_runs"],
        ["D-optimal"] = ["model", "runs", "seed", "levels", "within", "made", "centre_runs", "hard_to_change", "whole_plots"],
        ["I-optimal"] = ["model", "runs", "seed", "levels", "within", "made", "centre_runs", "hard_to_change", "whole_plots"],
        ["Latin hypercube"] = ["runs", "seed"],
        ["Sobol sequence"] = ["runs"],
        ["Halton sequence"] = ["runs"],
    };

    private static readonly Dictionary<string, AxialRule> axialRules = new()
    {
        ["rotatable"] = AxialRule.Rotatable,
        ["spherical"] = AxialRule.Spherical,
        ["face-centred"] = AxialRule.FaceCentred,
        ["orthogonal"] = AxialRule.Orthogonal,
    };

    private static readonly Dictionary<string, SurfaceModel> models = new()
    {
        ["linear"] = SurfaceModel.Linear,
        ["interactions"] = SurfaceModel.Interactions,
        ["quadratic"] = SurfaceModel.Quadratic,
    };

    public static PlanSetting? Read(Section? plan, ResponseReader responses, Prerequisites needs,
        IReadOnlyList<StudyObjective> objectives, IReadOnlyList<StudyFactor> factors)
    {
        if (plan is null || plan.Choice("kind", [.. kinds.Keys]) is not { } kind)
            return null;
        foreach (var key in kinds.Values.SelectMany(keys => keys).Distinct().Where(key => plan.Has(key) && !kinds[kind].Contains(key)))
        {
            plan.DiagnosticBag.Add(
                plan.KeyAt(key), $"A {kind} plan takes no {key}.",
                    $"Remove it; it belongs to {string.Join(", ", kinds.Where(k => k.Value.Contains(key)).Select(k => k.Key))}.");
        }

        if (Request(plan, kind) is not { } request)
            return null;
        var hasOwnCentre = request is PlanRequest.CentralComposite or PlanRequest.BoxBehnken;
        return new PlanSetting(request, PlanLists.Responses(plan, responses, needs, objectives))
        {
            CentreRuns = hasOwnCentre ? 0 : plan.Integer("centre_runs", 0, 0, MaxCentreRuns),
            Repeats = plan.Integer("repeats", 1, 1, MaxRepeats),
            IsWithinLimits = plan.Has("within") && plan.Choice("within", ["limits"]) is not null,
            HardToChange = PlanLists.HardToChange(plan, factors),
            Made = plan.Has("made") ? StartReader.FromFile(plan, "made", factors) ?? [] : [],
        };
    }

    /// <summary>Number of runs of a study's plan; reports a plan that does not exist for its factors and gives 0.</summary>
    public static int CountRuns(PlanSetting plan, IReadOnlyList<StudyFactor> factors, Section file)
    {
        try
        {
            return plan.CountRuns([.. factors.Where(factor => factor.IsSwept).Select(factor => factor.Name)]);
        }
        catch (ArgumentException problem)
        {
            file.DiagnosticBag.Add(file.KeyAt("plan"), $"This plan cannot be made: {problem.Message}.",
                "docs/plans.md says what each kind of plan takes.");
            return 0;
        }
    }

    private static PlanRequest? Request(Section plan, string kind) => kind switch
    {
        "full factorial" => new PlanRequest.FullFactorial(plan.Integer("levels", 2, 2, MaxLevels)),
        "fractional factorial" => Fraction(plan),
        "Plackett-Burman" => new PlanRequest.PlackettBurman(plan.Has("runs") ? plan.Integer("runs", 12, 4, MaxRuns) : null),
        "central composite" => new PlanRequest.CentralComposite(
            plan.Has("axial") && plan.Choice("axial", [.. axialRules.Keys]) is { } rule ? axialRules[rule] : Assumed(plan),
                plan.Integer("centre_runs", 1, 0, MaxCentreRuns)),
        "Box-Behnken" => new PlanRequest.BoxBehnken(plan.Integer("centre_runs", 1, 0, MaxCentreRuns)),
        "definitive screening" => new PlanRequest.DefinitiveScreening(),
        "Latin hypercube" => Filling(plan, FillingKind.LatinHypercube),
        "Sobol sequence" => Filling(plan, FillingKind.Sobol),
        "Halton sequence" => Filling(plan, FillingKind.Halton),
        _ => Optimal(plan, kind == "D-optimal" ? OptimalCriterion.D : OptimalCriterion.I),
    };

    private static AxialRule Assumed(Section plan)
    {
        if (!plan.Has("axial"))
            plan.DiagnosticBag.AddAssumption("axial runs of the plan", "face-centred",
                "assumption: no run leaves the cube; other choices rotatable, spherical, orthogonal");
        return AxialRule.FaceCentred;
    }

    private static PlanRequest? Fraction(Section plan)
    {
        if (plan.Has("generators") == plan.Has("most_runs"))
        {
            plan.DiagnosticBag.Add(plan.Owner, "A fractional factorial wants either generators or most_runs.",
                "Write the generators, or the most runs you can make; docs/plans.md describes both.");
            return null;
        }

        if (plan.Has("most_runs"))
            return new PlanRequest.FractionWithMaxRuns(plan.Integer("most_runs", 8, 4, MaxRuns));
        return new PlanRequest.FractionWithGenerators(
            [.. plan.List("generators").OfType<Node.Scalar>().Select(generator => generator.Text)]);
    }

    private static PlanRequest? Optimal(Section plan, OptimalCriterion criterion)
    {
        if (LacksRuns(plan))
            return null;
        var model = plan.Has("model") && plan.Choice("model", [.. models.Keys]) is { } name ? models[name] : SurfaceModel.Quadratic;
        if (!plan.Has("model"))
            plan.DiagnosticBag.AddAssumption("model of the plan", "quadratic", "assumption; other choices linear, interactions");
        int? levels = plan.Has("levels") && (plan.Value("levels") as Node.Scalar)?.Text.Trim() == OwnLevels ? null
            : plan.Integer("levels", PlanRoom.UsualLevels, 2, MaxLevels);
        if (plan.Has("hard_to_change") != plan.Has("whole_plots"))
            plan.DiagnosticBag.Add(plan.Owner, "An optimal plan wants both hard_to_change and whole_plots, or neither.",
                "Name the factors that are hard to change, and say as whole_plots how often you can set them.");
        return new PlanRequest.Optimal(criterion, model, plan.Integer("runs", 20, 1, 500), Seed(plan), levels)
        {
            WholePlots = plan.Has("whole_plots") ? plan.Integer("whole_plots", 8, 2, 500) : null,
        };
    }

    private static PlanRequest? Filling(Section plan, FillingKind kind) =>
        LacksRuns(plan) ? null : new PlanRequest.Filling(kind, plan.Integer("runs", 20, 2, MaxFilling), Seed(plan));

    private static ulong Seed(Section plan) => (ulong)plan.Integer("seed", 1, 0, int.MaxValue);

    private static bool LacksRuns(Section plan)
    {
        if (plan.Has("runs"))
            return false;
        plan.DiagnosticBag.Add(plan.Owner, $"{plan.PathOf("runs")} is missing.",
            "Add `runs:` under plan, with a plain number: how many runs you can make.");
        return true;
    }
}
