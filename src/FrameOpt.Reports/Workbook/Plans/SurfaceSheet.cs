using FrameOpt.Analysis;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.Plans;

/// <summary>For each response how well its surface stands for the model, its shape, and the surface itself over two factors.</summary>
internal static class SurfaceSheet
{
    public const string Name = "Surface";
    private const double FirstWidth = 42;
    private const double OtherWidth = 9.5;
    private const int RowsPerChart = 23;
    private const int FirstChart = 3;
    private const int SecondChart = 13;

    public static void Add(Spreadsheet book, PlanResult answer, PlacedTable runs)
    {
        var page = new SheetBuilder(book, Name, [FirstWidth, .. Enumerable.Repeat(OtherWidth, SurfaceGrid.Levels.Count)], isPrinted: false);
        for (var r = 0; r < answer.Surfaces.Count; r++)
        {
            var surface = answer.Surfaces[r];
            var response = surface.Response;
            page.Heading(PlanLabels.WithUnit(response), newPage: r > 0);
            page.Paragraphs(SurfaceSection.Of(answer.Plan, surface).Lines);
            if (surface.Fit is not { } fit)
                continue;
            page.Row++;
            var top = page.Row;
            var facts = Statistics(answer.Plan, surface, fit).ToList();
            page.Table(new Table(
                [Column.OfTexts("statistic", row => facts[row].What), Column.OfNumbers("value", "#,##0.####", row => facts[row].Value)],
                facts.Count));
            page.Row = Math.Max(page.Row + 1, top + RowsPerChart);
            book.AddChart(new PlacedChart(
                Name, top, FirstChart, $"Model against surface, {response.Name}",
                PlanCharts.ObservedAgainstFitted(answer.Plan, response, r, runs)));
            if (answer.Plan.Factors.Count < 2)
                continue;
            var grid = SurfaceGrid.Of(answer.Plan, fit);
            var table = Grid(page, answer.Plan, surface, grid);
            book.AddChart(new PlacedChart(Name, top, SecondChart, $"Surface of {response.Name}",
                PlanCharts.CurveFamily(answer.Plan, response, grid, table)));
        }
    }

    private static IEnumerable<(string What, double Value)> Statistics(StudyPlan plan, FittedSurface surface, RegressionFit fit)
    {
        string Unit(string label) => PlanLabels.WithUnit(label, surface.Response);
        yield return ("R²: fraction of the variation explained", fit.Anova.RSquared);
        if (fit.Anova.AdjustedRSquared is { } adjusted)
            yield return ("adjusted R²", adjusted);
        if (surface.LeaveOneOut is { } crossValidation)
        {
            yield return (Unit("leave-one-out: root mean square error"), crossValidation.RootMeanSquare);
            yield return (Unit("leave-one-out: maximum error"), crossValidation.Worst);
        }

        if (surface.Check is { } check)
        {
            foreach (var (error, where) in new[] { (check.Everywhere, ""), (check.WithinLimits, ", within the limits") })
            {
                if (error is null)
                    continue;
                yield return ($"designs compared with the model{where}", error.Points);
                yield return (Unit($"largest error on that grid{where}"), error.Largest);
                yield return (Unit($"root mean square error{where}"), error.RootMeanSquare);
                yield return (Unit($"range of the response{where}"), error.Range);
                yield return ($"R² against the model{where}", error.RSquared);
            }

            for (var f = 0; f < plan.Factors.Count; f++)
                yield return ($"largest error at {PlanLabels.WithUnit(plan.Factors[f])}", PlanLabels.Natural(plan, f, check.WorstCoded[f]));
        }

        if (surface.Shape is not { } shape)
            yield break;
        for (var i = 0; i < shape.Eigenvalues.Count; i++)
            yield return ($"{Unit("curvature, coded")} {DominantFactor(plan, shape.Eigenvectors[i])}", shape.Eigenvalues[i]);
    }

    /// <summary>The factor that an axis mostly lies along, and how much of it.</summary>
    private static string DominantFactor(StudyPlan plan, IReadOnlyList<double> axis)
    {
        var most = Enumerable.Range(0, axis.Count).MaxBy(f => Math.Abs(axis[f]));
        return FormattableString.Invariant($"mostly along {PlanLabels.Name(plan.Factors[most])} ({100 * axis[most] * axis[most]:0} %)");
    }

    private static PlacedTable Grid(SheetBuilder page, StudyPlan plan, FittedSurface surface, SurfaceGrid grid)
    {
        page.Paragraphs(
            [$"The surface of {PlanLabels.WithUnit(surface.Response)} over the two factors of largest share, the others at mid-range: "
                + $"lowest blue, highest orange."]);
        var format = NumberFormat.FormatCode(surface.Response.Unit);
        var table = page.Table(
            new Table(
                [
                    Column.OfNumbers("", Column.GeneralFormat, row => PlanLabels.Natural(plan, grid.RowFactor, SurfaceGrid.Levels[row])),
                    .. SurfaceGrid.Levels.Select((_, level) => Column.OfNumbers("", format, row => grid.Rows[row][level])),
                ],
                grid.Rows.Count),
            [
                $"{PlanLabels.WithUnit(plan.Factors[grid.RowFactor])} down, {PlanLabels.WithUnit(plan.Factors[grid.ColumnFactor])} across",
                .. SurfaceGrid.Levels.Select(level => (object)PlanLabels.Natural(plan, grid.ColumnFactor, level)),
            ]);
        page.Shade(table);
        return table;
    }
}
