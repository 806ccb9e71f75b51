using System.Xml.Linq;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Graphics;

/// <summary>The front in two of its objectives.</summary>
internal sealed class FrontPlot
{
    private const double Height = 276;
    private const int Ranked = 10;

    /// <summary>A baseline or a limit that would make an axis more than this many times longer is described instead of drawn.</summary>
    private const double MaxAxisExtension = 1.8;

    private readonly StudyResult result;
    private readonly IReadOnlyList<int> shown;
    private readonly (int X, int Y) pair;
    private readonly Plot plot;

    public FrontPlot(StudyResult result, IReadOnlyList<int> shown, int across, int up)
    {
        (this.result, this.shown, pair) = (result, shown, (across, up));
        plot = new Plot(Axis(across), Axis(up), Height);
    }

    private Study Study => result.Study;

    /// <summary>The picture.</summary>
    /// <param name="marker">What marks the design shown.</param>
    public XElement Of(XElement marker) => Svg.Picture(
        $"front-{pair.X + 1}-{pair.Y + 1}", Plot.Width, Height, $"The front: {Header(pair.Y)} against {Header(pair.X)}", AltText(),
            [.. plot.Frame(), .. Limits(), .. Points(), .. Baseline(), marker]);

    /// <summary>A ring around one design.</summary>
    public XElement Marker(FrontDesign design) =>
        PlotMarker.At("now", PlotMarker.Ring, plot.X(design.Objectives[pair.X]), plot.Y(design.Objectives[pair.Y]));

    /// <summary>What lies too far outside to be drawn.</summary>
    public IEnumerable<string> OutsideNotes()
    {
        foreach (var axis in (int[])[pair.X, pair.Y])
        {
            foreach (var bound in Bounds(axis).Where(bound => !IsNear(axis, bound)))
                yield return $"The limit on {Header(axis)}, {Text(axis, bound)}, is outside the range shown.";
            if (BaselineValue(axis) is { } value && !IsNear(axis, value))
                yield return $"The baseline, {Header(axis)} {Text(axis, value)}, is outside the range shown.";
        }
    }

    private string Header(int objective) => StudyText.AxisLabel(Study.Objectives[objective]);

    private string Text(int objective, double value) => NumberFormat.Text(value, Study.Objectives[objective].Response.Entry);

    private PlotAxis Axis(int objective)
    {
        IEnumerable<double> others = [.. Bounds(objective), .. BaselineValue(objective) is { } value ? [value] : Array.Empty<double>()];
        return PlotAxis.Spanning(
            Header(objective), Values(objective).Concat(others.Where(other => IsNear(objective, other))),
                Study.Objectives[objective].Maximise ? "higher is better" : "lower is better");
    }

    private IEnumerable<double> Values(int objective) => shown.Select(i => result.Front[i].Objectives[objective]);

    private IEnumerable<double> Bounds(int objective) => Study.Limits
        .Where(limit => limit.Response == Study.Objectives[objective].Response && limit.Magnitude == Study.Objectives[objective].Magnitude)
        .SelectMany(limit => (double?[])[limit.AtLeast, limit.AtMost])
        .OfType<double>();

    private double? BaselineValue(int objective) => result.Baseline is { Failure: null } baseline
        ? Study.Objectives[objective].Magnitude ? Math.Abs(baseline[Study.Objectives[objective].Response])
            : baseline[Study.Objectives[objective].Response]
        : null;

    private bool IsNear(int objective, double value)
    {
        var (low, high) = (Values(objective).Min(), Values(objective).Max());
        return Math.Max(high, value) - Math.Min(low, value) <= MaxAxisExtension * (high - low);
    }

    private IEnumerable<XElement> Limits()
    {
        foreach (var bound in Bounds(pair.X).Where(bound => IsNear(pair.X, bound)))
            yield return plot.VerticalLine("limit", bound);
        foreach (var bound in Bounds(pair.Y).Where(bound => IsNear(pair.Y, bound)))
            yield return plot.HorizontalLine("limit", bound);
    }

    private IEnumerable<XElement> Points()
    {
        XElement At(int place, string cssClass, string shape)
        {
            var design = result.Front[shown[place]];
            return PlotMarker.At(cssClass, shape, plot.X(design.Objectives[pair.X]), plot.Y(design.Objectives[pair.Y]));
        }

        yield return Svg.Group("points", shown.Select(i => Svg.Circle(
            "dot", plot.X(result.Front[i].Objectives[pair.X]), plot.Y(result.Front[i].Objectives[pair.Y]), 2.2)));
        for (var place = Math.Min(Ranked, shown.Count) - 1; place > 0; place--)
            yield return At(place, "ranked", PlotMarker.Diamond);
        var knee = shown.ToList().FindIndex(i => result.Front[i].IsKnee);
        if (knee > 0)
            yield return At(knee, "knee", PlotMarker.Triangle);
        yield return At(0, "best", PlotMarker.Square);
    }

    private IEnumerable<XElement> Baseline()
    {
        if (BaselineValue(pair.X) is { } x && BaselineValue(pair.Y) is { } y && IsNear(pair.X, x) && IsNear(pair.Y, y))
            yield return PlotMarker.At("baseline", PlotMarker.Cross, plot.X(x), plot.Y(y));
    }

    private string AltText()
    {
        var best = result.Front[shown[0]];
        string Range(int axis) => $"{Header(axis)} from {Text(axis, Values(axis).Min())} to {Text(axis, Values(axis).Max())}";
        var baseline = BaselineValue(pair.X) is { } x && BaselineValue(pair.Y) is { } y
            ? $" The baseline has {Text(pair.X, x)} and {Text(pair.Y, y)}." : "";
        return $"{NumberFormat.Count(shown.Count, "design")}: {Range(pair.X)}; {Range(pair.Y)}. "
            + $"The best compromise has {Text(pair.X, best.Objectives[pair.X])} and {Text(pair.Y, best.Objectives[pair.Y])}.{baseline}";
    }
}
