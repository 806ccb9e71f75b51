using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.Plans;

/// <summary>The runs of the plan with what the model gives for each, and what the plan can tell.</summary>
internal static class PlanSheet
{
    public const string Name = "Plan";
    private const double WidthCharacters = 13;

    /// <summary>Adds the sheet; the table of runs is given back.</summary>
    public static PlacedTable Add(Spreadsheet book, PlanResult answer)
    {
        var plan = answer.Plan;
        var page = new SheetBuilder(
            book, Name,
            [
                6, 11, 7, .. plan.Plan.WholePlots > 0 ? [7.0] : Array.Empty<double>(),
                .. Enumerable.Repeat(WidthCharacters, 2 * (plan.Factors.Count + answer.Surfaces.Count)),
            ],
            isPrinted: false);
        page.Paragraphs([.. PlanSections.Runs(answer).Lines, "Offsets, angles and residuals are positive to the pilot's right."]);
        page.Row++;
        var runs = page.Table(Runs(answer));
        var aliasStructure = PlanSections.AliasStructure(plan);
        page.Heading(aliasStructure.Title);
        page.Paragraphs(aliasStructure.Lines);
        if (aliasStructure.Table is { } aliases)
        {
            page.Row++;
            page.Paragraphs([$"{aliases.Headers[0]}:", .. aliases.Rows.Select(row => string.Join(": ", row))]);
        }

        var quality = PlanSections.Quality(plan);
        page.Heading(quality.Title);
        page.Paragraphs([quality.Lines[0], "`frameopt plan` gives standard error, variance inflation and power of each term."]);
        return runs;
    }

    /// <summary>The column, from 0, of what the model gives for a response; what the surface gives stands right of it.</summary>
    public static int ObservedColumn(StudyPlan plan, int response) =>
        (plan.Plan.WholePlots > 0 ? 4 : 3) + 2 * plan.Factors.Count + 2 * response;

    private static Table Runs(PlanResult answer)
    {
        var (plan, runs) = (answer.Plan, answer.Plan.Plan.Runs);
        return new(
            [
                Column.OfNumbers("run", "0", row => runs[row].Number),
                Column.OfTexts("kind", row => runs[row].Kind.ToString().ToLowerInvariant()),
                Column.OfNumbers("block", "0", row => runs[row].Block),
                .. PlanTable.WholePlots(runs),
                .. plan.Factors.Select((factor, f) => Column.OfNumbers(
                    $"{PlanLabels.Name(factor)} coded", Column.GeneralFormat, row => runs[row].Coded[f])),
                .. plan.Factors.Select(factor => Column.OfNumbers(PlanLabels.WithUnit(factor), Column.GeneralFormat,
                    row => factor.Unit.FromSi(plan.Designs[row][factor.Input]))),
                .. answer.Surfaces.SelectMany(surface => ObservedAndFitted(plan, surface)),
            ],
            runs.Count);
    }

    private static IEnumerable<Column> ObservedAndFitted(StudyPlan plan, FittedSurface surface)
    {
        var format = NumberFormat.FormatCode(surface.Response.Unit);
        var header = PlanLabels.WithUnit(surface.Response).Replace("[", " [").Replace("  ", " ");
        yield return Column.OfNumbers(header, format, row => surface.Values[row]);
        yield return Column.OfNumbers($"fitted {header}", format, row => double.IsFinite(surface.Values[row])
            ? surface.Fit?.Predict(plan.Plan.Runs[row].Coded) ?? double.NaN : double.NaN);
    }
}
