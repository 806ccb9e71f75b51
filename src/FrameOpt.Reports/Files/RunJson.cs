using System.Text.Json;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Files;

/// <summary>run.json: the study as understood and its answer, the same bytes for the same study, seed, version and CPU
/// architecture.</summary>
public static class RunJson
{
    /// <summary>Writes the whole run.</summary>
    /// <param name="report">The run.</param>
    /// <param name="stream">UTF-8; left open.</param>
    public static void Write(RunReport report, Stream stream)
    {
        var result = report.Result;
        using var json = JsonWriterExtensions.Writer(stream);
        json.WriteStartObject();
        json.WriteOrigin(report.Info, result.Study);
        json.WriteNumber("seed", report.Info.Seed);
        if (report.Info.Settings is { } settings)
            json.WriteStrings("settings", settings);
        foreach (var (option, value) in report.Info.Customer)
            json.WriteString(option.TrimStart('-'), value);
        json.WriteString("stop_reason", RunText.Of(result.StopReason));
        json.WriteBoolean("complete", result.IsComplete);
        Counts(json, result.Counts, result.Study);
        json.WriteOptional("certificate", result.Certificate, certificate => Certificate(json, certificate, result.Study));
        json.WritePropertyName("study");
        StudyJson.Write(json, result.Study);
        json.WriteOptional("chosen", result.Chosen, chosen => EvaluationJson.Write(json, chosen, result.Study));
        json.WriteOptional("baseline", result.Baseline, baseline => EvaluationJson.Write(json, baseline, result.Study));
        json.WriteOptional("nearest_miss", result.NearestMiss, miss => NearestMiss(json, miss, result.Study));
        json.WriteOptional("uncertainty", result.Uncertainty, uncertainty => UncertaintyJson.Write(json, uncertainty, result.Study));
        json.WriteObjects("wing_scenarios", result.Scenarios, scenario => Scenario(json, scenario, result.Study));
        json.WriteObjects("balanced_bands", result.Bands, band => Band(json, band));
        json.WriteOptional("throttle_opening", result.Chosen is { } chosen ? SpinUpSection.Find(result, chosen) : null,
            spin => SpinUp(json, spin, result.Study));
        json.WriteStrings("dropped_objectives", result.DroppedObjectives);
        if (result.Plan is { } plan)
        {
            json.WritePropertyName("plan");
            PlanJson.Write(json, plan);
        }

        json.WriteTable("front", FrontTable.WithPhases(result.Study, result.Front, report.FrontEvaluations));
        json.WriteObjects("assumptions", result.Study.Assumptions.Concat(ModelAssumptions.All), assumption => Assumption(json, assumption));
        json.WriteStrings("warnings", result.Study.Warnings);
        json.WriteStrings("cautions", [.. Cautions.Safety, .. Cautions.ModelLimits, .. Cautions.Standards]);
        json.WriteEndObject();
    }

    private static void Counts(Utf8JsonWriter json, RunCounts counts, Study study)
    {
        json.WriteStartObject("counts");
        json.WriteNumber("evaluated", counts.Evaluated);
        json.WriteNumber("failed", counts.Failed);
        json.WriteNumber("outside_limits", counts.Infeasible);
        json.WriteNumber("feasible", counts.Feasible);
        json.WriteObjects("failed_by", counts.FailedBy, failed => Reason(FailureText.Kind(study.Mission, failed.Failure), failed.Count));
        json.WriteObjects("outside_by", study.Limits.Zip(counts.ViolatedBy),
            violated => Reason(StudyText.Limit(violated.First), violated.Second));
        json.WriteEndObject();

        void Reason(string reason, long designs)
        {
            json.WriteString("reason", reason);
            json.WriteNumber("designs", designs);
        }
    }

    private static void Certificate(Utf8JsonWriter json, Certificate certificate, Study study)
    {
        json.WriteStartObject();
        json.WriteString("against", RunText.Grid(certificate));
        json.WriteBoolean("is_estimate", certificate.IsEstimate);
        json.WriteNumber("grid_designs", certificate.GridDesigns);
        json.WriteNumber("exact_front", certificate.ExactFront);
        json.WriteDecimal("hypervolume_share", certificate.Hypervolume.Ratio);
        json.WriteNumber("hypervolume_sample_points", certificate.Hypervolume.SamplePoints);
        json.WriteStartObject("largest_regret");
        foreach (var (o, objective) in study.Objectives.Index())
            json.WriteQuantity(objective.Response.Name, certificate.Regrets[o], objective.Response.Unit);
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void NearestMiss(Utf8JsonWriter json, NearestMiss miss, Study study)
    {
        json.WriteStartObject();
        json.WriteNumber("number", miss.Number);
        json.WriteStrings("broken_limits", miss.BrokenLimits.Select(limit => RunText.BrokenLimit(limit, miss.Evaluation)));
        json.WritePropertyName("evaluation");
        EvaluationJson.Write(json, miss.Evaluation, study);
        json.WriteEndObject();
    }

    private static void Scenario(Utf8JsonWriter json, WingScenario scenario, Study study)
    {
        json.WriteString("wing", StudyText.Name(scenario.Case));
        json.WritePropertyName("chosen");
        EvaluationJson.Write(json, scenario.Chosen, study);
        json.WriteOptional("best", scenario.BestEvaluation, best => EvaluationJson.Write(json, best, study));
    }

    private static void Band(Utf8JsonWriter json, BalancedBand band)
    {
        json.WriteQuantity("from", band.FromRpm, "rpm");
        json.WriteQuantity("to", band.ToRpm, "rpm");
    }

    /// <summary>A time that is not known, or that no opening keeps, is null: the verdict says which.</summary>
    private static void SpinUp(Utf8JsonWriter json, SpinUp spin, Study study)
    {
        json.WriteStartObject();
        json.WriteString("phase", study.Mission[spin.PhaseIndex].Name);
        json.WriteQuantity("twist_margin_at_least", spin.LeastMargin, "");
        json.WriteQuantity("twist_margin_steady", spin.SteadyMargin, "");
        json.WriteQuantity("twist_margin_at_engine_torque", spin.EngineMargin, "");
        json.WriteQuantity("engine_torque_at_propeller", spin.EngineTorqueNewtonMetres, "N·m");
        json.WriteQuantity("propeller_speed", spin.ToRpm, "rpm");
        json.WriteQuantity("extra_torque_at_limit", spin.ExtraNewtonMetres, "N·m");
        json.WriteQuantity("shortest_time", spin.ShortestSeconds, "s");
        json.WriteString("verdict", SpinUpSection.Verdict(study, spin));
        json.WriteEndObject();
    }

    private static void Assumption(Utf8JsonWriter json, Assumption assumption)
    {
        json.WriteString("what", assumption.What);
        json.WriteString("value", assumption.Value);
        json.WriteString("source", assumption.Source);
    }
}
