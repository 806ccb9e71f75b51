using FrameOpt.Model.Mission;
using FrameOpt.Plans;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Syntax;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.StudyFile.Sections;

/// <summary>Reads the plan of runs.</summary>
internal static class PlanReader
{
    private const int MaxRuns = 10_000;

    /// <summary>Every kind of plan, and the keys it takes beside kind and responses.</summary>
    private static readonly Dictionary<string, string[]> kinds = new()
    {
        ["full factorial"] = ["levels"],
        ["fractional factorial"] = ["generators", "most_runs"],
        ["Plackett-Burman"] = ["runs"],
        ["central composite"] = ["axial", "centre_runs"],
        ["Box-Behnken"] = ["centre_runs"],
        ["definitive screening"] = [],
        ["D-optimal"] = ["model", "runs", "seed"],
        ["I-optimal"] = ["model", "runs", "seed"],
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

    public static PlanSetting? Read(Section? plan, ResponseReader responses, Prerequisites needs, IReadOnlyList<StudyObjective> objectives)
    {
        if (plan is null || plan.Choice("kind", [.. kinds.Keys]) is not { } kind)
            return null;
        foreach (var key in kinds.Values.SelectMany(keys => keys).Distinct().Where(key => plan.Has(key) && !kinds[kind].Contains(key)))
        {
            plan.DiagnosticBag.Add(
                plan.KeyAt(key), $"A {kind} plan takes no {key}.",
                    $"Remove it; it belongs to {string.Join(", ", kinds.Where(k => k.Value.Contains(key)).Select(k => k.Key))}.");
        }

        return Request(plan, kind) is { } request ? new PlanSetting(request, Responses(plan, responses, needs, objectives)) : null;
    }

    /// <summary>Number of runs of a study's plan; reports a plan that does not exist for its factors and gives 0.</summary>
    public static int CountRuns(PlanSetting plan, IReadOnlyList<StudyFactor> factors, Section file)
    {
        try
        {
            return plan.Request.CountRuns([.. factors.Where(factor => factor.IsSwept).Select(factor => factor.Name)]);
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
        "full factorial" => new PlanRequest.FullFactorial(plan.Integer("levels", 2, 2, 21)),
        "fractional factorial" => Fraction(plan),
        "Plackett-Burman" => new PlanRequest.PlackettBurman(plan.Has("runs") ? plan.Integer("runs", 12, 4, MaxRuns) : null),
        "central composite" => new PlanRequest.CentralComposite(
            plan.Has("axial") && plan.Choice("axial", [.. axialRules.Keys]) is { } rule ? axialRules[rule] : Assumed(plan),
                plan.Integer("centre_runs", 1, 0, 100)),
        "Box-Behnken" => new PlanRequest.BoxBehnken(plan.Integer("centre_runs", 1, 0, 100)),
        "definitive screening" => new PlanRequest.DefinitiveScreening(),
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
        if (!plan.Has("runs"))
        {
            plan.DiagnosticBag.Add(plan.Owner, $"{plan.PathOf("runs")} is missing.",
                "Add `runs:` under plan, with a plain number: how many runs you can make.");
            return null;
        }

        var model = plan.Has("model") && plan.Choice("model", [.. models.Keys]) is { } name ? models[name] : SurfaceModel.Quadratic;
        if (!plan.Has("model"))
            plan.DiagnosticBag.AddAssumption("model of the plan", "quadratic", "assumption; other choices linear, interactions");
        return new PlanRequest.Optimal(criterion, model, plan.Integer("runs", 20, 2, 500), (ulong)plan.Integer("seed", 1, 0, int.MaxValue));
    }

    private static IReadOnlyList<Response> Responses(
        Section plan, ResponseReader responses, Prerequisites needs, IReadOnlyList<StudyObjective> objectives)
    {
        if (!plan.Has("responses"))
            return [.. objectives.Select(objective => objective.Response).Where(response => !response.IsOverCases)];
        var read = new List<Response>();
        foreach (var node in plan.List("responses"))
        {
            if (node is not Node.Scalar scalar)
            {
                plan.DiagnosticBag.Add(node, "plan.responses wants names of responses.",
                    "Write names from docs/study-file.md, in brackets with commas between.");
                continue;
            }

            if (responses.Read(scalar.Text, node) is not { } response)
                continue;
            needs.Check(response, node);
            if (read.Contains(response))
                plan.DiagnosticBag.Add(node, $"{response.Name} is listed twice.", "Remove one of the two.");
            read.Add(response);
        }

        if (plan.Value("responses") is Node.List list && list.Items.Count == 0)
            plan.DiagnosticBag.Add(
                list, "plan.responses is empty.", "Name one or more responses, or leave it out: then the objectives are analysed.");
        return read;
    }
}
