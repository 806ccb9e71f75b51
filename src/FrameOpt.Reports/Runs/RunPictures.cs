using System.Xml.Linq;
using FrameOpt.Analysis;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Runs;

/// <summary>Pictures of one response of measured runs.</summary>
/// <param name="Analysis">Of the response.</param>
/// <param name="Id">Prefix of the ids of its pictures.</param>
internal sealed record RunPictures(RunAnalysis Analysis, string Id)
{
    /// <summary>Each with what to look for.</summary>
    public IEnumerable<(XElement Drawing, string Caption)> All => new (XElement? Drawing, string Caption)[]
    {
        (BesideModel(), "On the dashed line model and measurement are equal."),
        (HalfNormalPlot(isBetweenPlots: true), "Effects between whole plots have an error of their own; without a line none is beyond it."),
        (HalfNormalPlot(isBetweenPlots: false), "Effects right of the line are more than errors."),
        (Residuals(), "A bow says that the fit lacks a term, a funnel that larger values scatter more."),
        (InOrder(), "A trend says that something drifted while measuring."),
    }.Where(picture => picture.Drawing is not null).Select(picture => (picture.Drawing!, picture.Caption));

    private const double Height = 260;
    private const double FarOut = 0.7;

    /// <summary>Effects named where nothing says which are more than errors.</summary>
    private const int MostNamed = 3;

    private string Title => TextTruncation.Truncate(Analysis.Response.Measured.Header, 40);

    /// <summary>Model against measurement; null where the file has no model's values.</summary>
    public XElement? BesideModel()
    {
        if (Analysis.Response.Predicted is not { } predicted)
            return null;
        List<(double X, double Y)> points = [.. Analysis.Used.Select(run =>
            (predicted.Values[run], Analysis.Response.Measured.Values[run])).Where(pair => double.IsFinite(pair.Item1))];
        var both = points.SelectMany(point => new[] { point.X, point.Y }).ToList();
        var plot = new Plot(PlotAxis.Spanning("by the model", both), PlotAxis.Spanning($"measured: {Title}", both), Height);
        var (from, to) = (Math.Max(plot.XAxis.From, plot.YAxis.From), Math.Min(plot.XAxis.To, plot.YAxis.To));
        return Picture("model", $"{Title}: measured against the model; on the line both are equal", plot, points,
            [Svg.Line("pointed", plot.X(from), plot.Y(from), plot.X(to), plot.Y(to))]);
    }

    /// <summary>Effects against the quantiles that errors alone would have; null where there are none, or it is no two-level
    /// plan.</summary>
    /// <param name="isBetweenPlots">True for the effects between whole plots, which have an error of their own.</param>
    public XElement? HalfNormalPlot(bool isBetweenPlots)
    {
        if (Analysis.TwoLevel is not { } runs)
            return null;
        var places = runs.HalfNormalPoints()
            .Where(place => runs.BetweenPlots.Contains(runs.Effects[place.Index].Term) == isBetweenPlots).ToList();
        if (places.Count == 0)
            return null;
        var margins = isBetweenPlots ? runs.PlotMargins : runs.Margins;
        var which = runs.BetweenPlots.Count == 0 ? "effects"
            : isBetweenPlots ? "effects between whole plots" : "effects within whole plots";
        List<string> names = [.. Analysis.Table.Factors.Select(factor => factor.Name)];
        var plot = new Plot(PlotAxis.Spanning($"size of {which} on {Title}", places.Select(place => place.Magnitude).Append(0)),
            PlotAxis.Spanning("half-normal quantile", places.Select(place => place.Quantile).Append(0)), Height);
        var named = isBetweenPlots || margins is null ? places.TakeLast(MostNamed)
            : places.Where(place => place.Magnitude > margins.MarginOfError);
        return Picture(isBetweenPlots ? "half-normal-plots" : "half-normal",
            $"Half-normal plot of the {which} on {Title}: those that are errors only lie on a line", plot,
            [.. places.Select(place => (place.Magnitude, place.Quantile))],
            [
                .. margins is not null && margins.MarginOfError < plot.XAxis.To
                    ? [plot.VerticalLine("limit", margins.MarginOfError)] : Array.Empty<XElement>(),
                .. named.Select(place =>
                {
                    var isFarOut = place.Magnitude > FarOut * plot.XAxis.To;
                    return Svg.Text("tick", plot.X(place.Magnitude) + (isFarOut ? -7 : 7), plot.Y(place.Quantile) + 4,
                        isFarOut ? "end" : "start", TextTruncation.Truncate(runs.Effects[place.Index].Term.NamedWith(names), 28));
                }),
            ]);
    }

    /// <summary>Residuals against fitted values: a band without a pattern is good.</summary>
    public XElement Residuals()
    {
        var runs = Analysis.Fit.Runs;
        var plot = new Plot(PlotAxis.Spanning($"fitted: {Title}", runs.Select(run => run.Fitted)),
            PlotAxis.Spanning("residual (measured less fitted)", runs.Select(run => run.Residual).Append(0)), Height);
        return Picture("residuals", $"Residuals of {Title} against the fit: look for a bow or a funnel", plot,
            [.. runs.Select(run => (run.Fitted, run.Residual))], [plot.HorizontalLine("zero", 0)]);
    }

    /// <summary>Residuals in the order of the runs: a trend says that something drifted.</summary>
    public XElement InOrder()
    {
        var runs = Analysis.Fit.Runs;
        var plot = new Plot(PlotAxis.Spanning("row of the file", Enumerable.Range(1, runs.Count).Select(row => (double)row)),
            PlotAxis.Spanning("residual (measured less fitted)", runs.Select(run => run.Residual).Append(0)), Height);
        return Picture("order", $"Residuals of {Title} in the order of the file: a trend says that something drifted", plot,
            [.. runs.Select((run, i) => (i + 1.0, run.Residual))], [plot.HorizontalLine("zero", 0)]);
    }

    private XElement Picture(
        string name, string title, Plot plot, IReadOnlyList<(double X, double Y)> points, IEnumerable<XElement> between) =>
        Svg.Picture($"{Id}-{name}", Plot.Width, Height, title,
            $"{NumberFormat.Count(points.Count, "point")}; the tables have the figures.",
            [.. plot.Frame(), .. between, .. points.Select(point => Svg.Circle("bar-1", plot.X(point.X), plot.Y(point.Y), 3.2))]);
}
