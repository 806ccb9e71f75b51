using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Running;

namespace FrameOpt.Reports.Workbook.Plans;

/// <summary>The runs of the plan with what the model gives for each, and what the plan can tell.</summary>
internal static class PlanSheet
{
    public const string Name = "Plan";
    private const double WidthCharacters = 13;

    /// <summary>Adds the sheet; the table of runs is given back.</summary>
    public static PlacedTable Add(XLWorkbook book, RunReport report, PlanResult answer)
    {
        var plan = answer.Plan;
        var page = new SheetBuilder(
            book, report, Name, [6, 11, 7, .. Enumerable.Repeat(WidthCharacters, 2 * (plan.Factors.Count + answer.Surfaces.Count))]);
        page.Paragraphs([.. PlanSections.Runs(answer).Lines, "Offsets, angles and residuals: to the pilot's right is +."]);
        page.Row++;
        var runs = page.Table(
            [
                ("run", "0"), ("kind", "@"), ("block", "0"),
                .. plan.Factors.Select(factor => ((object)$"{PlanLabels.Name(factor)} coded", "General")),
                .. plan.Factors.Select(factor => ((object)PlanLabels.WithUnit(factor), "General")),
                .. answer.Surfaces.SelectMany(Columns),
            ],
            [.. Enumerable.Range(0, plan.Plan.Runs.Count).Select(i => Row(answer, i))]);
        var aliasStructure = PlanSections.AliasStructure(plan);
        page.Heading(aliasStructure.Title);
        page.Paragraphs(aliasStructure.Lines);
        if (aliasStructure.Table is { } aliases)
        {
            page.Row++;
            page.Paragraphs([$"{aliases.Headers[0]}:", .. aliases.Rows.Select(row => row[0])]);
        }

        var quality = PlanSections.Quality(plan);
        page.Heading(quality.Title);
        page.Paragraphs([quality.Lines[0], "`frameopt plan` gives standard error, variance inflation and power of each term."]);
        return runs;
    }

    /// <summary>The column, from 0, of what the model gives for a response; what the surface gives stands right of it.</summary>
    public static int ObservedColumn(StudyPlan plan, int response) => 3 + 2 * plan.Factors.Count + 2 * response;

    private static IEnumerable<(object Header, string FormatCode)> Columns(FittedSurface surface)
    {
        var format = NumberFormat.FormatCode(surface.Response.Unit);
        var header = PlanLabels.WithUnit(surface.Response).Replace("[", " [").Replace("  ", " ");
        yield return (header, format);
        yield return ($"fitted {header}", format);
    }

    private static IReadOnlyList<object> Row(PlanResult answer, int index)
    {
        var plan = answer.Plan;
        var run = plan.Plan.Runs[index];
        return
        [
            (double)run.Number, run.Kind.ToString().ToLowerInvariant(), (double)run.Block,
            .. run.Coded.Cast<object>(),
            .. plan.Factors.Select(factor => (object)factor.Unit.FromSi(plan.Designs[index][factor.Input])),
            .. answer.Surfaces.SelectMany(surface => (object[])
                [surface.Values[index], double.IsFinite(surface.Values[index]) ? surface.Fit?.Predict(run.Coded) ?? double.NaN
                    : double.NaN]),
        ];
    }
}
