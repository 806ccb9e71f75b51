using System.Xml.Linq;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The value of the line against the number of geometries.</summary>
internal static class GainPicture
{
    private const double Height = 230;

    /// <summary>The drawing, or null when fewer than two numbers were worked out.</summary>
    public static XElement? Of(LineResult result)
    {
        var points = result.Curve.Where(point => point.Solution.Feasible).ToList();
        if (points.Count < 2)
            return null;
        var setting = result.Setting;
        var unit = setting.Goal.Response.Unit;
        var plot = new Plot(
            new PlotAxis("geometries", "", points[0].Count - 1, points[^1].Count + 1, 1),
            PlotAxis.Around(unit.Length > 0 ? $"value [{unit}]" : "value", [0, .. points.Select(point => point.Solution.Value)], ProductLineWords.Value(setting)),
            Height);
        return Svg.Picture("gain-curve", Plot.Width, Height, "What each further geometry buys", Words(result, points.Select(point => (point.Count, point.Solution.Value))),
        [
            .. plot.Frame(),
            Svg.Curve("line-1", points.Select(point => (plot.X(point.Count), plot.Y(point.Solution.Value)))),
            .. points.Select(point => Mark.At(point.Count == setting.Count ? "best" : "ranked", Mark.Diamond, plot.X(point.Count), plot.Y(point.Solution.Value))),
            .. points.Select(point => Svg.Text("name", plot.X(point.Count), plot.Y(point.Solution.Value) - 9, "middle", FormattableString.Invariant($"{point.Count}"))),
        ]);
    }

    private static string Words(LineResult result, IEnumerable<(int Count, double Value)> points) => string.Join(
        "; ", points.Select(point => $"{ProductLineWords.Geometries(point.Count)}: {ProductLineWords.Amount(result.Setting, point.Value)}")) + ".";
}
