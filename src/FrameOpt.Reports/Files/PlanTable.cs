using CsvHelper;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Files;

/// <summary>The runs of a plan as CSV, with the model's value of each response analysed.</summary>
public static class PlanTable
{
    /// <summary>Writes one row for each run, UTF-8, units in the header, nothing where a design cannot fly.</summary>
    /// <param name="answer">The plan.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(PlanResult answer, Stream stream)
    {
        using var csv = CsvWriter.Create(stream, CsvWriterOptions.Default with { NewLine = "\n" }, leaveOpen: true);
        var plan = answer.Plan;
        csv.WriteField("run");
        csv.WriteField("kind");
        csv.WriteField("block");
        foreach (var factor in plan.Factors)
            csv.WriteField($"{factor.Name} [{factor.Unit.Symbol}]");
        foreach (var surface in answer.Surfaces)
            csv.WriteField(TextSanitizer.ForCsv(surface.Response.Unit.Length > 0 ? $"{surface.Response.Name} [{surface.Response.Unit}]"
                : surface.Response.Name));
        csv.EndRecord();
        for (var i = 0; i < plan.Plan.Runs.Count; i++)
        {
            var run = plan.Plan.Runs[i];
            csv.WriteField(PlainNumber.Text(run.Number));
            csv.WriteField(run.Kind.ToString().ToLowerInvariant());
            csv.WriteField(PlainNumber.Text(run.Block));
            foreach (var factor in plan.Factors)
                csv.WriteField(PlainNumber.Text(factor.Unit.FromSi(plan.Designs[i][factor.Input])));
            foreach (var surface in answer.Surfaces)
                csv.WriteField(double.IsFinite(surface.Values[i]) ? PlainNumber.Text(surface.Values[i]) : "");
            csv.EndRecord();
        }
    }
}
