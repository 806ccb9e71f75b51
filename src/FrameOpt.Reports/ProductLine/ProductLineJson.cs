using System.Text.Json;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Reports.Files.Json;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>line.json: the study as understood and its line, the same bytes for the same study, version and CPU architecture; customers one by one are in customers.csv.</summary>
public static class ProductLineJson
{
    /// <summary>Writes the line.</summary>
    /// <param name="report">Of the line.</param>
    /// <param name="stream">UTF-8; left open.</param>
    public static void Write(ProductLineReport report, Stream stream)
    {
        var result = report.Result;
        using var json = PlainJson.Writer(stream);
        json.WriteStartObject();
        json.WriteString("tool", "FrameOpt");
        json.WriteString("version", report.Info.ToolVersion);
        json.WriteString("study_file", report.Info.StudyFileName);
        json.WriteString("study_sha256", result.Study.Hash);
        json.WriteBoolean("complete", result.IsComplete);
        json.WritePropertyName("study");
        StudyJson.Write(json, result.Study);
        Asked(json, result);
        json.WriteStartObject("line");
        Solution(json, result.Setting, result.Solution);
        json.Objects("geometries", result.Geometries, geometry => Geometry(json, result.Study, geometry));
        json.Texts("who_gets_which", ProductLineWords.Boundaries(result));
        json.Texts("unserved", result.Unserved);
        json.Texts("how_sure", ProductLineProof.Of(result));
        json.WriteEndObject();
        json.Objects("curve", result.Curve, point =>
        {
            json.WriteNumber("geometries", point.Count);
            Solution(json, result.Setting, point.Solution);
            json.Quantity("gain", point.Gain ?? double.NaN, result.Setting.Goal.Response.Unit);
        });
        Chart(json, result);
        json.Objects("assumptions", result.Study.Assumptions.Concat(StandingAssumptions.All), assumption =>
        {
            json.WriteString("what", assumption.What);
            json.WriteString("value", assumption.Value);
            json.WriteString("source", assumption.Source);
        });
        json.Texts("warnings", result.Study.Warnings);
        json.Texts("cautions", [.. Cautions.Safety, .. Cautions.ModelLimits, .. Cautions.Standards]);
        json.WriteEndObject();
    }

    private static void Asked(Utf8JsonWriter json, LineResult result)
    {
        var setting = result.Setting;
        json.WriteStartObject("asked");
        json.WriteNumber("geometries", setting.Count);
        json.WriteString("objective", ProductLineWords.Value(setting));
        json.WriteString("candidates", result.CandidatesWords);
        json.WriteNumber("candidates_count", result.Candidates);
        json.WriteString("common", ProductLineWords.Common(setting));
        json.WriteString("customers", setting.CustomersWords);
        json.WriteNumber("customers_count", setting.Customers.Count);
        json.WriteNumber("customers_unlike", result.Served.Count);
        json.Objects("options", setting.Options, option =>
        {
            json.WriteString("name", option.Name);
            json.Texts("choices", option.Choices);
        });
        json.WriteEndObject();
    }

    private static void Solution(Utf8JsonWriter json, LineSetting setting, LineSolution solution)
    {
        var unit = setting.Goal.Response.Unit;
        json.Quantity("value", solution.Value, unit);
        json.Quantity("bound", solution.Bound, unit);
        json.Quantity("gap", solution.Gap, unit);
        json.WriteString("stop", solution.Stop switch
        {
            LineStop.Proven => "proven",
            LineStop.Representatives => "proven for representatives",
            LineStop.TimeLimit => "time",
            _ => "stopped",
        });
        json.WriteBoolean("serves_all", solution.Feasible);
    }

    private static void Geometry(Utf8JsonWriter json, Study study, LineGeometry geometry)
    {
        json.WriteString("letter", geometry.Letter.ToString());
        json.WriteNumber("candidate", geometry.Candidate);
        json.WriteNumber("customers", geometry.Customers);
        json.Plain("share", geometry.Share);
        json.WriteStartObject("design");
        foreach (var field in GeometryFields.Of(study))
            json.Quantity(field.Name, field.Value(geometry.Design), field.Unit);
        json.WriteEndObject();
    }

    private static void Chart(Utf8JsonWriter json, LineResult result) => json.Objects("fitting_chart", result.Chart.Blocks.SelectMany(block => block.Columns, (block, column) => (block, column)), item =>
    {
        json.WriteString("column", item.column.Name);
        json.WriteString("block", item.block.Title);
        json.Objects("spans", item.column.Spans, span =>
        {
            json.Quantity("from", span.FromKilograms, "kg");
            json.Quantity("to", span.ToKilograms, "kg");
            json.WriteString("geometry", span.Geometry < 0 ? "none" : ProductLineWords.Letter(result, span.Geometry));
        });
    });
}
