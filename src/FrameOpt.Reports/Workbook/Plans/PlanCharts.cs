using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Reports.Workbook.Charts;
using FrameOpt.Running;

namespace FrameOpt.Reports.Workbook.Plans;

/// <summary>The charts of a plan, drawn from the tables beside them.</summary>
internal static class PlanCharts
{
    private const int MostBars = 10;
    private static readonly SeriesLook[] looks =
    [
        Line(SeriesLook.Blue, "circle", "solid"), Line(SeriesLook.Vermillion, "square", "solid"), Line(SeriesLook.Green, "diamond", "solid"),
        Line(SeriesLook.Orange, "triangle", "dash"), Line(SeriesLook.Purple, "x", "dash"), Line(SeriesLook.SkyBlue, "circle", "sysDot"), Line(SeriesLook.Black, "square", "sysDot"),
    ];

    /// <summary>The terms of largest share; the table has the constant last.</summary>
    public static XElement Shares(Response response, PlacedTable terms)
    {
        var bars = Math.Min(MostBars, terms.Rows.Count - 1);
        return ChartXml.Bars(
            $"Which terms matter to {PlanWords.WithUnit(response)}",
            "term",
            new ChartAxis("share of the variation over the runs [%]", "General"),
            [new ChartSeries("share of variation", terms.Column(0, bars), terms.Column(2, bars), new SeriesLook(SeriesLook.Blue))]);
    }

    /// <summary>One line for each factor.</summary>
    public static XElement Mains(StudyPlan plan, Response response, PlacedTable mains) => ChartXml.Scatter(
        $"{PlanWords.WithUnit(response)} as one factor moves, others at their middle",
        new ChartAxis("coded value: -1 low end, +1 high end", "General", (-1, 1)),
        ChartAxis.Around(PlanWords.WithUnit(response), "General", mains.Rows.SelectMany(row => row.Skip(1).OfType<double>())),
        [.. plan.Factors.Select((factor, f) => new ChartSeries(PlanWords.Name(factor), mains.Column(0), mains.Column(1 + f), looks[f % looks.Length]))]);

    /// <summary>The runs, and the line on which a surface without error would have them all.</summary>
    public static XElement ObservedAgainstFitted(StudyPlan plan, Response response, int index, PlacedTable runs)
    {
        var observed = runs.Column(PlanSheet.ObservedColumn(plan, index));
        var fitted = runs.Column(PlanSheet.ObservedColumn(plan, index) + 1);
        var both = observed.Values.Concat(fitted.Values).OfType<double>().ToList();
        return ChartXml.Scatter(
            $"{PlanWords.WithUnit(response)}: the model against the surface, run by run",
            ChartAxis.Around(PlanWords.WithUnit("the surface gives", response), "General", both),
            ChartAxis.Around(PlanWords.WithUnit("the model gives", response), "General", both),
            [
                new ChartSeries("equal", observed, observed, new SeriesLook(SeriesLook.Black, LinePoints: 1, Dash: "dash")),
                new ChartSeries("runs", fitted, observed, new SeriesLook(SeriesLook.Vermillion, "diamond", 8)),
            ]);
    }

    /// <summary>The response against one factor, a line for each of five levels of the other.</summary>
    public static XElement Family(StudyPlan plan, Response response, SurfaceGrid grid, PlacedTable table) => ChartXml.Scatter(
        $"{PlanWords.WithUnit(response)} over the two factors of largest share, others at their middle",
        ChartAxis.Around(PlanWords.WithUnit(plan.Factors[grid.Down]), "General", table.Column(0).Values.OfType<double>()),
        ChartAxis.Around(PlanWords.WithUnit(response), "General", table.Rows.SelectMany(row => row.Skip(1).OfType<double>())),
        [.. Enumerable.Range(0, 5).Select(line => new ChartSeries(
            $"{PlanWords.Name(plan.Factors[grid.Across])} {PlainNumber.Text(PlanWords.Natural(plan, grid.Across, SurfaceGrid.Levels[line * 5]))} {plan.Factors[grid.Across].Unit.Symbol}",
            table.Column(0),
            table.Column(1 + line * 5),
            looks[line] with { MarkerPoints = 5 }))]);

    private static SeriesLook Line(string colour, string marker, string dash) => new(colour, marker, 7, 2, dash);
}
