using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Reports.Workbook.Charts;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.Plans;

/// <summary>The charts of a plan, drawn from the tables beside them.</summary>
internal static class PlanCharts
{
    private const int MaxBars = 10;
    private static readonly SeriesStyle[] styles =
    [
        Line(Palette.Blue, "circle", "solid"),
        Line(Palette.Vermillion, "square", "solid"),
        Line(Palette.Green, "diamond", "solid"),
        Line(Palette.Orange, "triangle", "dash"),
        Line(Palette.Purple, "x", "dash"),
        Line(Palette.SkyBlue, "circle", "sysDot"),
        Line(Palette.Black, "square", "sysDot"),
    ];

    /// <summary>The terms of largest share; the table has the constant last.</summary>
    public static XElement Shares(Response response, PlacedTable terms)
    {
        var bars = Math.Min(MaxBars, terms.Table.RowCount - 1);
        return ChartXml.Bars(
            $"Shares of the terms of {PlanLabels.WithUnit(response)}",
            "term",
            new ChartAxis("share of the variation over the runs [%]", "General"),
            [new ChartSeries("share of variation", terms.Column(0, 0, bars), terms.Column(2, 0, bars), new SeriesStyle(Palette.Blue))]);
    }

    /// <summary>One line for each factor.</summary>
    public static XElement MainEffects(StudyPlan plan, Response response, PlacedTable mainEffects) => ChartXml.Scatter(
        $"{PlanLabels.WithUnit(response)} as one factor varies, others at mid-range",
        new ChartAxis("coded value: -1 low end, +1 high end", "General", (-1, 1)),
        ChartAxis.Spanning(PlanLabels.WithUnit(response), "General", mainEffects.NumbersAfterFirst()),
        [.. plan.Factors.Select((factor, f) => new ChartSeries(PlanLabels.Name(factor), mainEffects.Column(0), mainEffects.Column(1 + f),
            styles[f % styles.Length]))]);

    /// <summary>The runs, and the line on which a surface without error would have them all.</summary>
    public static XElement ObservedAgainstFitted(StudyPlan plan, Response response, int index, PlacedTable runs)
    {
        var observed = runs.Column(PlanSheet.ObservedColumn(plan, index));
        var fitted = runs.Column(PlanSheet.ObservedColumn(plan, index) + 1);
        var both = observed.Numbers.Concat(fitted.Numbers).ToList();
        return ChartXml.Scatter(
            $"{PlanLabels.WithUnit(response)}: model against surface for each run",
            ChartAxis.Spanning(PlanLabels.WithUnit("surface", response), "General", both),
            ChartAxis.Spanning(PlanLabels.WithUnit("model", response), "General", both),
            [
                new ChartSeries("equal", observed, observed, new SeriesStyle(Palette.Black, LinePoints: 1, Dash: "dash")),
                new ChartSeries("runs", fitted, observed, new SeriesStyle(Palette.Vermillion, "diamond", 8)),
            ]);
    }

    /// <summary>The response against one factor, a line for each of five levels of the other.</summary>
    public static XElement CurveFamily(StudyPlan plan, Response response, SurfaceGrid grid, PlacedTable table) => ChartXml.Scatter(
        $"{PlanLabels.WithUnit(response)} over the two factors of largest share, others at mid-range",
        ChartAxis.Spanning(PlanLabels.WithUnit(plan.Factors[grid.RowFactor]), "General", table.Column(0).Numbers),
        ChartAxis.Spanning(PlanLabels.WithUnit(response), "General", table.NumbersAfterFirst()),
        [.. Enumerable.Range(0, 5).Select(line => new ChartSeries(
            $"{PlanLabels.Name(plan.Factors[grid.ColumnFactor])} "
                + $"{PlainNumber.Text(PlanLabels.Natural(plan, grid.ColumnFactor, SurfaceGrid.Levels[line * 5]))} "
                + $"{plan.Factors[grid.ColumnFactor].Unit.Symbol}",
            table.Column(0),
            table.Column(1 + line * 5),
            styles[line] with { MarkerPoints = 5 }))]);

    private static SeriesStyle Line(string colour, string marker, string dash) => new(colour, marker, 7, 2, dash);
}
