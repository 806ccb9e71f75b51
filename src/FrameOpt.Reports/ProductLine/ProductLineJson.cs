using System.Text.Json;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Reports.Files;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>line.json: the study as understood and its line, the same bytes for the same study, version and CPU architecture; customers one
/// by one are in customers.csv.</summary>
public static class ProductLineJson
{
    /// <summary>Writes the line.</summary>
    /// <param name="report">Of the line.</param>
    /// <param name="stream">UTF-8; left open.</param>
    public static void Write(ProductLineReport report, Stream stream)
    {
        var result = report.Result;
        using var json = JsonWriterExtensions.Writer(stream);
        json.WriteStartObject();
        json.WriteOrigin(report.Info, result.Study);
        json.WriteBoolean("complete", result.IsComplete);
        json.WritePropertyName("study");
        StudyJson.Write(json, result.Study);
        Request(json, result);
        json.WriteStartObject("line");
        Solution(json, result.Setting, result.Solution);
        Geometries(json, result);
        json.WriteStrings("who_gets_which", ProductLineText.Boundaries(result));
        json.WriteStrings("unserved", ProductLineText.Unserved(result));
        json.WriteStrings("how_sure", ProductLineOptimality.Of(result));
        json.WriteEndObject();
        json.WriteObjects("curve", result.Curve, point =>
        {
            json.WriteNumber("geometries", point.Count);
            Solution(json, result.Setting, point.Solution);
            json.WriteQuantity("gain", point.Gain ?? double.NaN, result.Setting.CostResponse.Response.Unit);
        });
        Chart(json, result);
        json.WriteObjects("stress", result.Stress, stress =>
        {
            json.WriteString("otherwise", LineStressSection.What(stress));
            json.WriteDecimal("effort_worst", stress.WorstEffort);
            json.WriteQuantity("mean_cost", stress.MeanCost, result.Setting.CostResponse.Response.Unit);
            json.WriteQuantity("worst_cost", stress.WorstCost, result.Setting.CostResponse.Response.Unit);
            json.WriteDecimal("outside_limits_percent", 100 * stress.OutsideLimits);
            json.WriteDecimal("another_better_percent", 100 * stress.BetterWithAnother);
        });
        Sureness(json, result);
        json.WriteObjects("assumptions", result.Study.Assumptions.Concat(ModelAssumptions.All), assumption =>
        {
            json.WriteString("what", assumption.What);
            json.WriteString("value", assumption.Value);
            json.WriteString("source", assumption.Source);
        });
        json.WriteStrings("warnings", result.Study.Warnings);
        json.WriteStrings("cautions", [.. Cautions.Safety, .. Cautions.ModelLimits, .. Cautions.Standards]);
        json.WriteEndObject();
    }

    private static void Request(Utf8JsonWriter json, ProductLineResult result)
    {
        var setting = result.Setting;
        json.WriteStartObject("asked");
        json.WriteNumber("geometries", setting.Count);
        json.WriteString("objective", ProductLineText.Value(setting));
        json.WriteString("cost", ProductLineText.Cost(setting));
        json.WriteString("weights", setting.InPieces ? "pieces" : "shares");
        json.WriteString("candidates", result.CandidatesDescription);
        json.WriteNumber("candidates_count", result.Candidates);
        json.WriteBoolean("allow_both_rotations", setting.AllowBothRotations);
        json.WriteString("common", ProductLineText.CommonalityText(setting));
        json.WriteString("customers", setting.CustomersDescription);
        json.WriteNumber("customers_count", setting.Customers.Count);
        json.WriteNumber("customers_unlike", result.Assignments.Count);
        json.WriteObjects("options", setting.Options, option =>
        {
            json.WriteString("name", option.Name);
            json.WriteStrings("choices", option.Choices);
        });
        json.WriteEndObject();
        json.WriteObjects("configurations", setting.Configurations, configuration =>
        {
            json.WriteString("name", configuration.Description);
            StudyJson.Flown(json, configuration.Study);
        });
    }

    private static void Solution(Utf8JsonWriter json, ProductLineSetting setting, ProductLineSolution solution)
    {
        var unit = setting.CostResponse.Response.Unit;
        json.WriteQuantity("value", solution.Value, unit);
        json.WriteQuantity("bound", solution.Bound, unit);
        json.WriteQuantity("gap", solution.Gap, unit);
        json.WriteString("stop", solution.Stop switch
        {
            ProductLineStopReason.Proven => "proven",
            ProductLineStopReason.Representatives => "proven for representatives",
            ProductLineStopReason.TimeLimit => "time",
            ProductLineStopReason.Fixed => "nothing to choose",
            _ => "stopped",
        });
        json.WriteBoolean("serves_all", solution.Feasible);
    }

    private static void Geometries(Utf8JsonWriter json, ProductLineResult result)
    {
        var dimensions = GeometryColumns.Of(result.Study, row => result.Geometries[row].Design);
        json.WriteObjects("geometries", result.Geometries.Index(), item =>
        {
            var (row, geometry) = item;
            json.WriteString("letter", geometry.Name);
            json.WriteBoolean("fixed", geometry.IsFixed);
            json.WriteStrings("turns", geometry.Rotations.Select(StudyText.RotationName));
            json.WriteNumber("candidate", geometry.Candidate);
            json.WriteNumber("customers", geometry.Customers);
            json.WriteDecimal("share", geometry.Share);
            json.WriteDecimal("missed_by", LineHelp.Helped(result, row));
            json.WriteStartObject("design");
            foreach (var dimension in dimensions)
                json.WriteQuantity(dimension.Name, (double)dimension.Value(row), dimension.Unit);
            json.WriteEndObject();
        });
    }

    /// <summary>Simpler lines, samples of the customers and other weights; nothing where they were not looked at.</summary>
    private static void Sureness(Utf8JsonWriter json, ProductLineResult result)
    {
        if (result.Sureness is not { } sureness)
            return;
        var unit = result.Setting.CostResponse.Response.Unit;
        json.WriteObjects("simpler", sureness.Simpler, line =>
        {
            json.WriteString("kind", LineSurenessSection.Kind(line.Kind));
            json.WriteNumber("jigs", LineSureness.Jigs(line.Designs));
            json.WriteQuantity("value", line.Value, unit);
            json.WriteStrings("geometries", line.Designs.Select(design => ProductLineText.Design(result.Study, design)));
        });
        foreach (var (name, trials) in new[] { ("samples_of_customers", sureness.Samples), ("other_weights", sureness.Weights) })
            json.WriteObjects(name, trials, trial =>
            {
                json.WriteString("objective", ProductLineText.Value(result.Setting with { Objective = trial.Objective }));
                json.WriteQuantity("best", trial.Best, unit);
                json.WriteQuantity("this_line", trial.Ours, unit);
                json.WriteStrings("geometries", trial.Designs.Select(design => ProductLineText.Design(result.Study, design)));
            });
    }

    private static void Chart(Utf8JsonWriter json, ProductLineResult result) =>
        json.WriteObjects("fitting_chart", result.Chart.Blocks.SelectMany(block => block.Columns, (block, column) => (block, column)),
        item =>
    {
        json.WriteString("column", item.column.Name);
        json.WriteString("turns", StudyText.RotationName(item.column.Rotation));
        json.WriteString("block", item.block.Title);
        json.WriteObjects("spans", item.column.Spans, span =>
        {
            json.WriteQuantity("from", span.FromKilograms, "kg");
            json.WriteQuantity("to", span.ToKilograms, "kg");
            json.WriteString("geometry", span.Geometry < 0 ? "none" : ProductLineText.GeometryName(result, span.Geometry));
        });
    });
}
