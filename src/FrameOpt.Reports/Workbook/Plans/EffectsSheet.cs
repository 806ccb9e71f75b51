using FrameOpt.Analysis;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.Plans;

/// <summary>For each response which terms matter, and what each factor does alone.</summary>
internal static class EffectsSheet
{
    public const string Name = "Effects";
    private const double FirstWidth = 42;
    private const double OtherWidth = 13;
    private const int MaxCharts = 5;
    private const int RowsPerChart = 23;
    private const int ColumnsPerChart = 7;
    private static readonly double[] levels = [-1, -0.5, 0, 0.5, 1];

    public static void Add(Spreadsheet book, PlanResult answer)
    {
        var plan = answer.Plan;
        var tables = Math.Max(4, 1 + plan.Factors.Count);
        var page = new SheetBuilder(
            book, Name,
            [FirstWidth, .. Enumerable.Repeat(OtherWidth, tables - 1), 3, .. Enumerable.Repeat(OtherWidth, ColumnsPerChart)],
            isPrinted: false);
        page.Paragraphs([
            "Coefficients are in coded units: the change of the response due to that term when its factors go from the centre to the "
                + "high level. "
                + "A share is the fraction of the variation over the runs due to a term; shares and residual add up to 100 % only in a "
                + "plan whose terms are uncorrelated (variance inflation 1).",
            .. PlanSections.OmittedTermsWarning(plan),
        ]);
        for (var r = 0; r < answer.Surfaces.Count; r++)
        {
            var surface = answer.Surfaces[r];
            page.Heading(PlanLabels.WithUnit(surface.Response), newPage: r > 0);
            ModelShares(page, answer.Shares, answer.Shares.Responses[r]);
            if (surface.Fit is not { } fit)
            {
                page.Paragraphs(["Too few runs can fly for a surface to be fitted."]);
                continue;
            }

            var top = page.Row;
            var terms = Terms(page, plan, surface, fit);
            page.Row++;
            var mainEffects = MainEffects(page, plan, surface, fit);
            if (r >= MaxCharts)
                continue;
            var (title, column) = (PlanLabels.WithUnit(surface.Response), tables + 2);
            book.AddChart(new PlacedChart(Name, top, column, $"Shares of {title}", PlanCharts.Shares(surface.Response, terms)));
            book.AddChart(new PlacedChart(Name, top + RowsPerChart, column, $"Main effects on {title}",
                PlanCharts.MainEffects(plan, surface.Response, mainEffects)));
            page.Row = Math.Max(page.Row, top + 2 * RowsPerChart);
        }
    }

    /// <summary>What the factors do in the model itself.</summary>
    private static void ModelShares(SheetBuilder page, ModelShares shares, ResponseShares response)
    {
        if (response.Everywhere.Count == 0)
            return;
        double Percent(IReadOnlyList<FactorShare> list, int f, Func<FactorShare, double> which) =>
            list.Count == 0 ? double.NaN : 100 * Math.Max(0, which(list[f]));
        page.Table(new Table(
            [
                Column.OfTexts("in the model itself", row => PlanLabels.Name(shares.Factors[row])),
                Column.OfNumbers("alone [%]", "0.0", row => Percent(response.Everywhere, row, share => share.Alone)),
                Column.OfNumbers("with interactions [%]", "0.0", row => Percent(response.Everywhere, row, share => share.Total)),
                Column.OfNumbers("Shapley effect [%]", "0.0", row => Percent(response.Everywhere, row, share => share.Shapley)),
                Column.OfNumbers("the same within the limits [%]", "0.0",
                    row => Percent(response.WithinLimits, row, share => share.Shapley)),
            ],
            shares.Factors.Count));
        page.Row++;
    }

    /// <summary>The terms by share; the constant comes last, so that the others are a piece for the chart.</summary>
    private static PlacedTable Terms(SheetBuilder page, StudyPlan plan, FittedSurface surface, RegressionFit fit)
    {
        var names = plan.Factors.Select(PlanLabels.Name).ToList();
        var inflations = fit.Coefficients.ToDictionary(coefficient => coefficient.Term.Name, coefficient => coefficient.VarianceInflation);
        var terms = PlanLabels.Terms(fit).OrderBy(row => row.Term.Order == 0).ToList();
        return page.Table(new Table(
            [
                Column.OfTexts("term", row => terms[row].Term.Order == 0
                    ? "constant: the centre of the cube" : terms[row].Term.NamedWith(names)),
                Column.OfNumbers(PlanLabels.WithUnit("coefficient, coded", surface.Response), "0.0000", row => terms[row].Coefficient),
                Column.OfNumbers("share over the runs [%]", "0.00", row => terms[row].Share ?? double.NaN),
                Column.OfNumbers("variance inflation", "0.00", row => inflations[terms[row].Term.Name] ?? double.NaN),
            ],
            terms.Count));
    }

    private static PlacedTable MainEffects(SheetBuilder page, StudyPlan plan, FittedSurface surface, RegressionFit fit)
    {
        var format = NumberFormat.FormatCode(surface.Response.Unit);
        page.Paragraphs(
            [$"Fitted {PlanLabels.WithUnit(surface.Response)} when one factor varies and all others are at mid-range:"]);
        return page.Table(new Table(
            [
                Column.OfNumbers("coded value", "0.0", row => levels[row]),
                .. plan.Factors.Select((factor, f) => Column.OfNumbers(
                    PlanLabels.Name(factor), format, row => MainEffectAt(plan, fit, f, levels[row]))),
            ],
            levels.Length));
    }

    private static double MainEffectAt(StudyPlan plan, RegressionFit fit, int factor, double level)
    {
        var coded = new double[plan.Factors.Count];
        coded[factor] = level;
        return fit.Predict(coded);
    }
}
