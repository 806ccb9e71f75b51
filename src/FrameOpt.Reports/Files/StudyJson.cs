using System.Text.Json;
using FrameOpt.Model;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Files;

/// <summary>A study as understood, every default made explicit.</summary>
internal static class StudyJson
{
    public static void Write(Utf8JsonWriter json, Study study)
    {
        json.WriteStartObject();
        json.WriteString("title", study.Title);
        json.WriteString("variant", study.Variant);
        json.WriteString("question", study.Question);
        MachineJson.Write(json, study.Machine, study.Wing);
        json.WriteObjects("mission", study.Mission, phase => Phase(json, phase));
        json.WriteStartObject("factors");
        foreach (var factor in study.Factors)
            Factor(json, factor);
        json.WriteEndObject();
        if (study.Holes is { } holes)
        {
            json.WriteStartObject("holes");
            json.WriteObjects("left", Enumerable.Range(0, holes.Left.Places.Count), hole => Hole(json, holes.Left, hole, holes.Unit));
            json.WriteObjects("right", Enumerable.Range(0, holes.Right.Places.Count), hole => Hole(json, holes.Right, hole, holes.Unit));
            json.WriteEndObject();
        }

        json.WriteObjects("objectives", study.Objectives.Index(), item => Objective(json, item.Item, study.Ranking.Weights[item.Index]));
        json.WriteObjects("limits", study.Limits, limit => Limit(json, limit));
        json.WriteString("search", StudyText.Search(study.Search));
        json.WriteObjects("files", study.Files, file =>
        {
            json.WriteString("name", file.Name);
            json.WriteString("sha256", file.Hash);
        });
        json.WriteString("noise", NoiseText.Setting(study.Noise));
        json.WriteString("ranking_method", StudyText.Method(study.Ranking.Method));
        json.WritePropertyName("baseline");
        if (study.Baseline is { } baseline)
            EvaluationJson.Design(json, baseline, study);
        else
            json.WriteNullValue();
        json.WriteOptional("decision", study.Decision, decision =>
        {
            json.WriteStartObject();
            json.WriteString("chosen", decision.Design is { } design ? GeometryText.Of(study, design)
                : string.Join(", ", decision.Geometries));
            json.WriteString("date", decision.Date);
            json.WriteString("by", decision.By);
            json.WriteString("reason", decision.Reason);
            json.WriteStrings("rejected", decision.Rejected);
            json.WriteEndObject();
        });
        if (study.Reasons.Count > 0)
            json.WriteObjects("reasons", study.Reasons, figure =>
            {
                json.WriteString("name", figure.Path);
                foreach (var (key, text) in new[] { ("written", figure.Value), ("reason", figure.Reason), ("source", figure.Source) })
                {
                    if (text.Length > 0)
                        json.WriteString(key, text);
                }
            });
        json.WriteOptional("strength", study.Strength, strength => Strength(json, strength));
        json.WriteStartObject("balanced_band");
        json.WriteString("phase", study.Mission[study.Band.PhaseIndex].Name);
        json.WriteQuantity("within", study.Band.WithinNewtonMetres, "N·m");
        json.WriteEndObject();
        json.WriteEndObject();
    }

    /// <summary>What the figures of a design depend on: machine, wing, mission, limits and strength figures.</summary>
    public static void Flown(Utf8JsonWriter json, Study study)
    {
        MachineJson.Write(json, study.Machine, study.Wing);
        json.WriteObjects("mission", study.Mission, phase => Phase(json, phase));
        json.WriteObjects("limits", study.Limits, limit => Limit(json, limit));
        json.WriteOptional("strength", study.Strength, strength => Strength(json, strength));
    }

    private static void Phase(Utf8JsonWriter json, Phase phase)
    {
        json.WriteString("name", phase.Name);
        json.WriteDecimal("weight", phase.Weight);
        json.WriteString("power", StudyText.Power(phase.Power));
        switch (phase.Speed)
        {
            case FlightSpeed.AtFraction at:
                json.WriteDecimal("fraction", at.Fraction);
                break;
            case FlightSpeed.AtAirspeed at:
                json.WriteQuantity("airspeed", at.MetresPerSecond, "m/s");
                break;
        }

        json.WriteQuantity("altitude", phase.AltitudeMetres, "m");
        json.WriteQuantity("temperature_offset", phase.TemperatureOffsetKelvin, "K");
        json.WriteDecimal("load_factor", phase.LoadFactor);
        json.WriteDecimal("carried", phase.CarriedShare);
        json.WriteQuantity("pitch_rate", phase.PitchRateRadiansPerSecond, "rad/s");
        json.WriteBoolean("settled", phase.IsSettled);
    }

    private static void Factor(Utf8JsonWriter json, StudyFactor factor)
    {
        json.WriteStartObject(factor.Name);
        json.WriteString("unit", factor.Unit.Symbol);
        json.WriteBoolean("any_value_between", factor.IsContinuous);
        json.WritePropertyName("levels");
        json.WriteRawValue($"[{string.Join(',', factor.LevelsSi.Select(level => PlainNumber.Text(factor.Unit.FromSi(level))))}]");
        json.WriteEndObject();
    }

    private static void Hole(Utf8JsonWriter json, HoleRow row, int hole, DisplayUnit unit)
    {
        json.WriteQuantity("from_symmetry", unit.FromSi(row.Places[hole]), unit.Symbol);
        if (row.Drilled is not null)
            json.WriteBoolean("drilled", row.IsDrilled(hole));
    }

    private static void Objective(Utf8JsonWriter json, StudyObjective objective, double weight)
    {
        json.WriteString("response", objective.Response.Name);
        json.WriteString("unit", objective.Response.Unit);
        json.WriteString("goal", StudyText.Goal(objective));
        json.WriteBoolean("size_only", objective.Magnitude);
        json.WriteDecimal("resolution", objective.Resolution);
        json.WriteDecimal("weight", weight);
    }

    private static void Limit(Utf8JsonWriter json, StudyLimit limit)
    {
        json.WriteString("response", limit.Response.Name);
        json.WriteString("unit", limit.Response.Unit);
        json.WriteBoolean("size_only", limit.Magnitude);
        json.WriteDecimal("at_least", limit.AtLeast ?? double.NaN);
        json.WriteDecimal("at_most", limit.AtMost ?? double.NaN);
    }

    private static void Strength(Utf8JsonWriter json, StrengthSetting strength)
    {
        json.WriteStartObject();
        json.WriteDecimal("limit_load_factor", strength.LimitLoadFactor);
        json.WriteQuantity("overhang", strength.OverhangMetres, "m");
        json.WriteEndObject();
    }
}
