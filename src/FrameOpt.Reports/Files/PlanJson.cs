using System.Text.Json;
using FrameOpt.Analysis;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Files;

/// <summary>A study's plan and what it taught as JSON.</summary>
internal static class PlanJson
{
    public static void Write(Utf8JsonWriter json, PlanResult answer)
    {
        json.WriteStartObject();
        json.WriteString("kind", answer.Plan.Plan.Kind);
        if (answer.Plan.HardToChange.Count > 0)
            json.WriteString("hard_to_change", string.Join(", ", answer.Plan.HardToChange.Select(factor => factor.Name)));
        json.WriteObjects("runs", Enumerable.Range(0, answer.Plan.Plan.Runs.Count), index => Run(json, answer, index));
        Shares(json, answer.Shares);
        Screening(json, answer.Screening);
        json.WriteObjects("surfaces", answer.Surfaces, surface => Surface(json, answer.Plan, surface));
        json.WriteEndObject();
    }

    private static void Shares(Utf8JsonWriter json, ModelShares shares)
    {
        json.WriteStartObject("model_shares");
        json.WriteNumber("designs", shares.Designs);
        json.WriteNumber("within_limits", shares.WithinLimits);
        json.WriteBoolean("thinned", shares.IsThinned);
        json.WriteObjects("responses", shares.Responses, response =>
        {
            json.WriteString("response", response.Response.Name);
            Write("everywhere", response.Everywhere);
            Write("within_limits", response.WithinLimits);
        });
        json.WriteEndObject();

        void Write(string where, IReadOnlyList<FactorShare> of) => json.WriteObjects(where, of.Zip(shares.Factors), pair =>
        {
            json.WriteString("factor", pair.Second.Name);
            json.WriteDecimal("alone_percent", Percent(pair.First.Alone));
            json.WriteDecimal("total_percent", Percent(pair.First.Total));
            json.WriteDecimal("shapley_percent", Percent(pair.First.Shapley));
        });
    }

    private static void Screening(Utf8JsonWriter json, Screening screening)
    {
        json.WriteStartObject("elementary_effects");
        json.WriteNumber("paths", screening.Paths);
        json.WriteObjects("responses", screening.Responses, response =>
        {
            json.WriteString("response", response.Response.Name);
            json.WriteString("unit", response.Response.Unit);
            json.WriteObjects("inputs", screening.Inputs.Zip(response.Effects), pair =>
            {
                json.WriteString("input", pair.First.Name);
                json.WriteBoolean("uncertain", !pair.First.IsFactor);
                json.WriteNumber("steps", pair.Second.Steps);
                json.WriteDecimal("mean", Math.Round(pair.Second.Mean, 9));
                json.WriteDecimal("mean_magnitude", Math.Round(pair.Second.MeanMagnitude, 9));
                json.WriteDecimal("deviation", Math.Round(pair.Second.Deviation, 9));
            });
        });
        json.WriteEndObject();
    }

    /// <summary>Sums of thousands of terms differ in their last digits between libraries of mathematics.</summary>
    private static double Percent(double share) => Math.Round(100 * share, 8);

    private static void Run(Utf8JsonWriter json, PlanResult answer, int index)
    {
        var plan = answer.Plan;
        var run = plan.Plan.Runs[index];
        json.WriteNumber("number", run.Number);
        json.WriteString("kind", run.Kind.ToString().ToLowerInvariant());
        json.WriteNumber("block", run.Block);
        if (run.WholePlot > 0)
            json.WriteNumber("whole_plot", run.WholePlot);
        json.WriteStartObject("coded");
        for (var f = 0; f < plan.Factors.Count; f++)
            json.WriteDecimal(plan.Factors[f].Name, run.Coded[f]);
        json.WriteEndObject();
        json.WriteStartObject("design");
        foreach (var factor in plan.Factors)
            json.WriteQuantity(factor.Name, factor.Unit.FromSi(plan.Designs[index][factor.Input]), factor.Unit.Symbol);
        json.WriteEndObject();
        json.WriteStartObject("responses");
        foreach (var surface in answer.Surfaces)
            json.WriteQuantity(surface.Response.Name, surface.Values[index], surface.Response.Unit);
        json.WriteEndObject();
        if (answer.Failures[index] is { } failure)
            json.WriteString("failure", FailureText.Describe(failure));
    }

    private static void Surface(Utf8JsonWriter json, StudyPlan plan, FittedSurface surface)
    {
        json.WriteString("response", surface.Response.Name);
        json.WriteString("unit", surface.Response.Unit);
        if (surface.Fit is not { } fit)
        {
            json.WriteString("no_fit", "too few runs can fly");
            return;
        }

        IReadOnlyList<string> names = [.. plan.Factors.Select(factor => factor.Name)];
        json.WriteObjects("terms", PlanLabels.Terms(fit), row =>
        {
            json.WriteString("term", row.Term.NamedWith(names));
            json.WriteDecimal("coefficient", row.Coefficient);
            json.WriteDecimal("share_percent", row.Share ?? double.NaN);
        });
        json.WriteDecimal("r_squared", fit.Anova.RSquared);
        json.WriteDecimal("unassigned_percent", fit.Anova.UnassignedPercent);
        json.WriteOptional("leave_one_out", surface.LeaveOneOut, crossValidation => LeaveOneOut(json, crossValidation));
        json.WriteOptional("check", surface.Check, check => Check(json, plan, check));
        json.WriteString("why_no_tests", fit.NoTestsReason);
    }

    private static void LeaveOneOut(Utf8JsonWriter json, CrossValidatedError crossValidation)
    {
        json.WriteStartObject();
        json.WriteDecimal("typical_error", crossValidation.RootMeanSquare);
        json.WriteDecimal("worst_error", crossValidation.Worst);
        json.WriteEndObject();
    }

    private static void Check(Utf8JsonWriter json, StudyPlan plan, SurfaceCheck check)
    {
        json.WriteStartObject();
        Error(json, check.Everywhere);
        json.WriteOptional("within_limits", check.WithinLimits, error =>
        {
            json.WriteStartObject();
            Error(json, error);
            json.WriteEndObject();
        });
        json.WriteStartObject("largest_error_at");
        for (var f = 0; f < plan.Factors.Count; f++)
            json.WriteQuantity(plan.Factors[f].Name, plan.Factors[f].Unit.FromSi(plan.Scales[f].Natural(check.WorstCoded[f])),
                plan.Factors[f].Unit.Symbol);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Error(Utf8JsonWriter json, SurfaceError error)
    {
        json.WriteNumber("points", error.Points);
        json.WriteDecimal("largest_error", error.Largest);
        json.WriteDecimal("rms_error", error.RootMeanSquare);
        json.WriteDecimal("range", error.Range);
        json.WriteDecimal("r_squared", error.RSquared);
    }
}
