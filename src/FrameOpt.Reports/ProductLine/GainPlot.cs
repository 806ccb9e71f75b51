using System.Xml.Linq;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The value of the line against the number of geometries.</summary>
internal static class GainPlot
{
    private const double Height = 230;

    /// <summary>The drawing, or null when fewer than two numbers were worked out.</summary>
    public static XElement? Of(ProductLineResult result)
    {
        var points = result.Curve.Where(point => point.Solution.Feasible).ToList();
        if (points.Count < 2)
            return null;
        var setting = result.Setting;
        var unit = setting.CostResponse.Response.Unit;
        var plot = new Plot(
            new PlotAxis("geometries", "", points[0].Count - 1, points[^1].Count + 1, 1),
            PlotAxis.Spanning(unit.Length > 0 ? $"value [{unit}]" : "value", [0, .. points.Select(point => point.Solution.Value)],
                ProductLineText.Value(setting)),
            Height);
        return Svg.Picture("gain-curve", Plot.Width, Height, "Gain from each additional geometry",
            AltText(result, points.Select(point => (point.Count, point.Solution.Value))),
        [
            .. plot.Frame(),
            Svg.Curve("line-1", points.Select(point => (plot.X(point.Count), plot.Y(point.Solution.Value)))),
            .. points.Select(point => PlotMarker.At(point.Count == setting.Count ? "best" : "ranked", PlotMarker.Diamond,
                plot.X(point.Count), plot.Y(point.Solution.Value))),
            .. points.Select(point => Svg.Text("name", plot.X(point.Count), plot.Y(point.Solution.Value) - 9, "middle",
                FormattableString.Invariant($"{point.Count}"))),
        ]);
    }

    private static string AltText(ProductLineResult result, IEnumerable<(int Count, double Value)> points) => string.Join(
        "; ", points.Select(point => $"{ProductLineText.Geometries(point.Count)}: {ProductLineText.Amount(result.Setting, point.Value)}"))
            + ".";
}
