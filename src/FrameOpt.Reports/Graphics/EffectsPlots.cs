using System.Xml.Linq;
using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Graphics;

/// <summary>What a plan shows about one response.</summary>
/// <param name="Plan">The plan, with its factors.</param>
/// <param name="Response">The response that is shown.</param>
/// <param name="Fit">The surface.</param>
/// <param name="Id">Prefix of the ids of its pictures.</param>
internal sealed record EffectsPlots(StudyPlan Plan, Response Response, RegressionFit Fit, string Id)
{
    private const int MaxBars = 8;
    private const double Height = 250;
    private static readonly string[] lines = ["line-1", "line-2", "line-3", "line-4", "line-5", "line-6"];

    private string Title => PlanLabels.WithUnit(Response);

    /// <summary>The terms of largest share: main effects, pairs and squares.</summary>
    public XElement Shares()
    {
        List<string> names = [.. Plan.Factors.Select(PlanLabels.Name)];
        var bars = PlanLabels.Terms(Fit).Where(row => row.Term.Order > 0 && row.Share is not null).Take(MaxBars).Select(row => (
            Name: row.Term.NamedWith(names), Share: row.Share!.Value,
            Class: row.Term.Powers.Count(power => power > 0) > 1 ? "bar-2" : "bar-1")).ToList();
        if (Fit.Anova.UnassignedPercent > PlanLabels.LeastUnassigned)
            bars.Add(("of no single term", Fit.Anova.UnassignedPercent, "bar-3"));
        var height = 26 + bars.Count * 29.0;
        double X(double share) => 8 + share / 100 * 270;
        return Svg.Picture($"{Id}-shares", Plot.Width, height, $"Shares of the terms of {Title}: share of the variation over the runs [%]",
            $"{string.Join("; ", bars.Select(bar => FormattableString.Invariant($"{bar.Name} {bar.Share:0.0} %")))}.",
            [
                Svg.Text("axis", 4, 12, "start", "share of the variation over the runs [%]"),
                .. bars.SelectMany((bar, b) => (XElement[])
                [
                    Svg.Text("name", 8, 32 + 29 * b, "start", TextTruncation.Truncate(bar.Name, 52)),
                    Svg.Rectangle(bar.Class, 8, 36 + 29 * b, Math.Max(0.8, X(bar.Share) - 8), 10),
                    Svg.Text("tick", X(bar.Share) + 5, 45 + 29 * b, "start", FormattableString.Invariant($"{bar.Share:0.0} %")),
                ]),
            ]);
    }

    /// <summary>The two factors of largest share together: lines that are not parallel show an interaction.</summary>
    public XElement? InteractionPlot()
    {
        if (Plan.Factors.Count < 2)
            return null;
        var grid = SurfaceGrid.Of(Plan, Fit);
        var (down, across) = (Plan.Factors[grid.RowFactor], Plan.Factors[grid.ColumnFactor]);
        var curves = ((double[])[-1, 0, 1]).Select(level => (
            Name: $"{PlanLabels.Name(across)} {PlainNumber.Text(PlanLabels.Natural(Plan, grid.ColumnFactor, level))} {across.Unit.Symbol}",
            Points: Points(coded => Predict((grid.RowFactor, coded), (grid.ColumnFactor, level))))).ToList();
        var axis = new PlotAxis($"{PlanLabels.Name(down)}, coded: -1 is {Natural(grid.RowFactor, -1)}, +1 is {Natural(grid.RowFactor, 1)}",
            "", -1, 1, 0.5);
        return CurveFamily($"{Id}-pair", $"{Title} over {PlanLabels.Name(down)} at three values of {PlanLabels.Name(across)}", axis,
            curves);
    }

    private XElement CurveFamily(string id, string title, PlotAxis across,
        IReadOnlyList<(string Name, IReadOnlyList<(double X, double Y)> Points)> curves)
    {
        var unit = Response.Unit;
        var key = 14.0 * curves.Count + 4;
        var plot = new Plot(across, PlotAxis.Spanning(Title, curves.SelectMany(curve => curve.Points).Select(point => point.Y)), Height);
        return Svg.Picture(id, Plot.Width, Height + key, title,
            string.Join(" ",
                curves.Select(
                    curve => $"{curve.Name}: {PlanLabels.FourDigits(curve.Points[0].Y, unit)} at the low "
                        + $"end, {PlanLabels.FourDigits(curve.Points[curve.Points.Count / 2].Y, unit)} in the "
                        + $"middle, {PlanLabels.FourDigits(curve.Points[^1].Y, unit)} at the high end.")),
            [
                .. plot.Frame(),
                .. curves.Select((curve, c) => Svg.Curve(lines[c % lines.Length],
                    curve.Points.Select(point => (plot.X(point.X), plot.Y(point.Y))))),
                .. curves.SelectMany((curve, c) => (XElement[])
                [
                    Svg.Line(lines[c % lines.Length], 8, Height + 6 + 14 * c, 44, Height + 6 + 14 * c),
                    Svg.Text("axis", 50, Height + 10 + 14 * c, "start", TextTruncation.Truncate(curve.Name, 44)),
                ]),
            ]);
    }

    private static IReadOnlyList<(double X, double Y)> Points(Func<double, double> at) =>
        [.. Enumerable.Range(-10, 21).Select(i => (i / 10.0, at(i / 10.0)))];

    private double Predict(params ReadOnlySpan<(int Factor, double Coded)> moved)
    {
        var coded = new double[Plan.Factors.Count];
        foreach (var (factor, value) in moved)
            coded[factor] = value;
        return Fit.Predict(coded);
    }

    private string Natural(int factor, double coded) =>
        $"{PlainNumber.Text(PlanLabels.Natural(Plan, factor, coded))} {Plan.Factors[factor].Unit.Symbol}";
}
