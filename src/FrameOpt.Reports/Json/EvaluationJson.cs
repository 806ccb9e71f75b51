using System.Text.Json;
using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>One evaluated design as JSON: {design: {factor: {value, unit}}, phases: {phase: {quantity: {value, unit}}}, mission: {response: {value, unit}}}.</summary>
public static class EvaluationJson
{
    /// <summary>Writes one design; a design that cannot fly has empty phases and mission, and its reason under "failure".</summary>
    /// <param name="evaluation">The design.</param>
    /// <param name="study">Names its factors and the units the user typed.</param>
    /// <param name="stream">UTF-8; left open.</param>
    public static void Write(DesignEvaluation evaluation, Study study, Stream stream)
    {
        using var json = PlainJson.Writer(stream);
        Write(json, evaluation, study);
    }

    internal static void Write(Utf8JsonWriter json, DesignEvaluation evaluation, Study study)
    {
        json.WriteStartObject();
        json.WritePropertyName("design");
        Design(json, evaluation.Geometry, study);
        json.WriteStartObject("phases");
        foreach (var phase in evaluation.Phases)
            Phase(json, phase);
        json.WriteEndObject();
        json.WriteStartObject("mission");
        for (var i = 0; i < evaluation.Mission.Count; i++)
            json.Quantity(ResponseCatalogue.OfMissions[i].Name, evaluation.Mission[i], ResponseCatalogue.OfMissions[i].Unit);
        json.WriteEndObject();
        if (evaluation.Failure is { } reason)
            json.WriteString("failure", reason);
        json.WriteEndObject();
    }

    internal static void Design(Utf8JsonWriter json, FrameGeometry geometry, Study study)
    {
        json.WriteStartObject();
        foreach (var factor in study.Factors)
            json.Quantity(factor.Name, factor.Unit.FromSi(geometry[factor.Input]), factor.Unit.Symbol);
        json.WriteEndObject();
    }

    private static void Phase(Utf8JsonWriter json, PhaseResult phase)
    {
        json.WriteStartObject(phase.Phase.Name);
        for (var i = 0; i < phase.Values.Count; i++)
            json.Quantity(ResponseCatalogue.OfPhases[i].Name, phase.Values[i], ResponseCatalogue.OfPhases[i].Unit);
        json.WriteStartObject("steers");
        json.WriteString("value", phase.Steers);
        json.WriteEndObject();
        json.WriteEndObject();
    }
}
