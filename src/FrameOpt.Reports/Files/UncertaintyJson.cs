using System.Text.Json;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Reports.Files;

/// <summary>How sure an answer is, as JSON; deviations in m, rad, K, shares of the study's value, or from the low end of the model's range
/// (-1) to its high end (+1).</summary>
internal static class UncertaintyJson
{
    public static void Write(Utf8JsonWriter json, UncertaintyResult uncertainty, Study study)
    {
        var (setting, sample) = (uncertainty.Setting, uncertainty.Sample);
        json.WriteStartObject();
        json.WriteNumber("cases", sample.Cases);
        if (setting.Sources.Count > 0)
        {
            json.WriteShare("limits_met", sample.LimitsMet);
            json.WriteShare("every_settled_phase_held", sample.Held);
            json.WriteObjects("limits", study.Limits.Zip(sample.EachLimit), met =>
            {
                json.WriteString("limit", StudyText.Limit(met.First));
                json.WriteShare("met", met.Second);
            });
            json.WriteObjects("phases", study.Mission.Zip(sample.Phases), phase =>
            {
                json.WriteString("name", phase.First.Name);
                json.WritePercentiles("residual", phase.Second.Residual, "N·m");
                json.WritePercentiles("effort", phase.Second.Effort, "");
            });
        }

        json.WriteObjects("sources", setting.Sources, pair =>
        {
            json.WriteString("name", pair.Source.Name);
            json.WriteString("title", pair.Source.Title);
            json.WriteString("unit", Unit(pair.Source));
            json.WriteString("spread", NoiseText.Words(pair.Source, pair.Spread));
            json.WriteString("from", pair.Spread == pair.Source.Usual ? pair.Source.Source : "study");
        });
        json.WriteObjects("correlations", setting.Correlations, pair =>
        {
            json.WriteString("first", pair.First.Name);
            json.WriteString("second", pair.Second.Name);
            json.WriteDecimal("rank_correlation", pair.Rank);
        });
        json.WriteObjects("bars", uncertainty.Bars, bar =>
        {
            json.WriteString("source", bar.Source.Name);
            json.WriteEnd("low", study, bar.LowDeviation, bar.Low, bar.LowBest);
            json.WriteEnd("high", study, bar.HighDeviation, bar.High, bar.HighBest);
        });
        json.WriteOptional("choice", uncertainty.Choice, choice => Choice(json, study, choice));
        json.WriteObjects("shares", uncertainty.Shares, phase =>
        {
            json.WriteString("phase", study.Mission[phase.Phase].Name);
            json.WriteQuantity("standard_deviation", phase.StandardDeviation, "N·m");
            json.WriteObjects("sources", phase.Shares, share =>
            {
                json.WriteString("source", share.Source.Name);
                json.WriteDecimal("shapley", share.Shapley);
                json.WriteDecimal("total", share.Total);
            });
        });
        json.WriteEndObject();
    }

    private static void Choice(Utf8JsonWriter json, Study study, ChoiceResult choice)
    {
        json.WriteStartObject();
        json.WriteNumber("cases", choice.Cases);
        json.WriteDecimal("none_meets_every_limit", choice.NoneMeetsLimits);
        json.WriteObjects("designs", choice.Standings, one =>
        {
            json.WriteNumber("rank", one.Design.Rank);
            json.WriteDecimal("best", one.Best);
            json.WriteDecimal("before_chosen", one.BeforeChosen);
            json.WriteDecimal("limits_met", one.LimitsMet);
        });
        json.WriteObjects("other_weights", choice.Weights, share =>
        {
            json.WriteNumber("rank", share.Design.Rank);
            json.WriteDecimal("best", share.Share);
        });
        json.WriteObjects("weights_of_the_spread", choice.OfSpread, spread =>
        {
            json.WriteString("method", spread.Method);
            json.WriteStartArray("weights");
            foreach (var weight in spread.Weights)
                json.WriteNumberValue(Math.Round(weight, 6));
            json.WriteEndArray();
            json.WriteOptional("best_design", spread.Best, best => EvaluationJson.Design(json, best.Geometry, study));
        });
        json.WriteObjects("other_seeds", choice.Seeds, seed =>
        {
            json.WriteNumber("seed", seed.Seed);
            json.WriteOptional("best_design", seed.Best, best => EvaluationJson.Design(json, best.Geometry, study));
        });
        foreach (var (name, design) in new[]
        {
            ("best_by_other_method", choice.OtherMethod), ("easiest_to_build", choice.Easiest),
            ("best_every_number_exact", choice.AsDrawn.Design), ("best_over_the_cases", choice.Robust.Design),
        })
        {
            json.WriteOptional(name, design, best => EvaluationJson.Design(json, best.Geometry, study));
        }

        json.WriteEndObject();
    }

    private static string Unit(NoiseSource source) => source.Unit switch
    {
        NoiseUnit.Length => "m",
        NoiseUnit.Angle => "rad",
        NoiseUnit.Share => "share",
        NoiseUnit.Temperature => "K",
        _ => "-1 to 1",
    };

    private static void WriteShare(this Utf8JsonWriter json, string name, Estimate estimate)
    {
        json.WriteStartObject(name);
        json.WriteDecimal("share", estimate.Value);
        json.WriteDecimal("standard_error", estimate.StandardError);
        json.WriteEndObject();
    }

    private static void WritePercentiles(this Utf8JsonWriter json, string name, Percentiles values, string unit)
    {
        json.WriteStartObject(name);
        json.WriteDecimal("p10", values.Tenth);
        json.WriteDecimal("p50", values.Median);
        json.WriteDecimal("p90", values.NineTenths);
        json.WriteString("unit", unit);
        json.WriteEndObject();
    }

    private static void WriteEnd(
        this Utf8JsonWriter json, string name, Study study, double deviation, DesignEvaluation design, FrontDesign? best)
    {
        json.WriteStartObject(name);
        json.WriteDecimal("deviation", deviation);
        json.WriteStartObject("residual");
        foreach (var phase in design.Phases)
            json.WriteQuantity(phase.Phase.Name, phase[PhaseQuantity.Residual], "N·m");
        json.WriteEndObject();
        json.WriteDecimal("effort_worst", design.Failure is null ? design[MissionQuantity.EffortWorst] : double.NaN);
        json.WriteStrings("limits_violated", study.Limits.Where(limit => !limit.IsMetBy(design)).Select(StudyText.Limit));
        json.WriteOptional("best_design_there", best, other => EvaluationJson.Design(json, other.Geometry, study));
        json.WriteEndObject();
    }
}
