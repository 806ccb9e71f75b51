using System.Text.Json;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.StudyFile;

namespace FrameOpt.Reports.Files;

/// <summary>One evaluated design as JSON: {design: {factor: {value, unit}}, phases: {phase: {quantity: {value, unit}}}, mission: {response:
/// {value, unit}}}.</summary>
public static class EvaluationJson
{
    /// <summary>Writes one design that was asked for, with the study's limits beside it; one that cannot fly has the phases that it can
    /// fly, empty mission and limits, its reason under "failure" and those of all phases under "failures".</summary>
    /// <param name="evaluation">The design.</param>
    /// <param name="eachPhase">The design in each phase alone, where it cannot fly the mission; empty otherwise.</param>
    /// <param name="study">Its limits are told kept or broken.</param>
    /// <param name="values">The inputs of the design.</param>
    /// <param name="uncertainty">How sure that is; null for a design that cannot fly.</param>
    /// <param name="stream">UTF-8; left open.</param>
    public static void Write(
        DesignEvaluation evaluation, IReadOnlyList<DesignEvaluation> eachPhase, Study study, IReadOnlyList<DesignValue> values,
        UncertaintyResult? uncertainty, Stream stream)
    {
        using var json = JsonWriterExtensions.Writer(stream);
        json.WriteStartObject();
        json.WriteStartObject("design");
        foreach (var value in values)
            json.WriteQuantity(value.Factor.Name, value.Factor.Unit.FromSi(value.Si), value.Factor.Unit.Symbol);
        json.WriteEndObject();
        Results(json, evaluation, evaluation.Phases.Concat(eachPhase.SelectMany(phase => phase.Phases)));
        if (evaluation.Failure is not null)
        {
            json.WriteStartObject("failures");
            foreach (var failure in eachPhase.Select(phase => phase.Failure).OfType<DesignFailure>())
                json.WriteString(failure.Phase.Name, FailureText.Describe(failure));
            json.WriteEndObject();
        }

        json.WriteObjects("limits", evaluation.Failure is null ? study.Limits : [], limit =>
        {
            var value = limit.ValueOf(evaluation);
            json.WriteString("limit", StudyText.Limit(limit));
            json.WriteQuantity("value", value, limit.Response.Unit);
            json.WriteBoolean("kept", limit.AsConstraint.IsSatisfiedBy(value));
        });
        json.WriteOptional("uncertainty", uncertainty, sure => UncertaintyJson.Write(json, sure, study));
        json.WriteEndObject();
    }

    internal static void Write(Utf8JsonWriter json, DesignEvaluation evaluation, Study study)
    {
        json.WriteStartObject();
        json.WritePropertyName("design");
        Design(json, evaluation.Geometry, study);
        Results(json, evaluation, evaluation.Phases);
        json.WriteEndObject();
    }

    private static void Results(Utf8JsonWriter json, DesignEvaluation evaluation, IEnumerable<PhaseResult> phases)
    {
        json.WriteStartObject("phases");
        foreach (var phase in phases)
            Phase(json, phase);
        json.WriteEndObject();
        json.WriteStartObject("mission");
        for (var i = 0; i < evaluation.Mission.Count; i++)
            json.WriteQuantity(ResponseCatalogue.OfMissions[i].Name, evaluation.Mission[i], ResponseCatalogue.OfMissions[i].Unit);
        json.WriteEndObject();
        if (evaluation.Failure is { } failure)
            json.WriteString("failure", FailureText.Describe(failure));
    }

    internal static void Design(Utf8JsonWriter json, FrameGeometry geometry, Study study)
    {
        json.WriteStartObject();
        foreach (var factor in study.Factors)
            json.WriteQuantity(factor.Name, factor.Unit.FromSi(geometry[factor.Input]), factor.Unit.Symbol);
        json.WriteEndObject();
    }

    private static void Phase(Utf8JsonWriter json, PhaseResult phase)
    {
        json.WriteStartObject(phase.Phase.Name);
        for (var i = 0; i < phase.Values.Count; i++)
            json.WriteQuantity(ResponseCatalogue.OfPhases[i].Name, phase.Values[i], ResponseCatalogue.OfPhases[i].Unit);
        json.WriteStartObject("steers");
        json.WriteString("value", phase.Steers);
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
