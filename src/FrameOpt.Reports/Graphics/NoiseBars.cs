using System.Xml.Linq;

namespace FrameOpt.Reports.Graphics;

/// <summary>What uncertain numbers do to one response, each alone: a bar from its low to its high end, about the design as drawn.</summary>
internal static class NoiseBars
{
    private const double Width = 340;
    private const double Middle = Width / 2;
    private const double Side = 8;
    private const double ValueWidth = 66;
    private const double Reach = Middle - Side - ValueWidth;
    private const double Top = 46;
    private const double RowStep = 28;
    private const double Bar = 10;

    /// <summary>The picture.</summary>
    /// <param name="id">Unlike every other on the page.</param>
    /// <param name="panel">What it shows.</param>
    public static XElement Of(string id, NoisePanel panel)
    {
        var bottom = Top + panel.Rows.Count * RowStep + 4;
        double X(double value) => Middle + Math.Clamp((value - panel.AsDrawn) / panel.Scale, -1, 1) * Reach;
        var axis = PlotAxis.Spanning(panel.Axis, [panel.AsDrawn - panel.Scale, panel.AsDrawn + panel.Scale], steps: 4);
        var ticks = axis.Ticks.Where(tick => Math.Abs(tick - panel.AsDrawn) <= panel.Scale).ToList();
        return Svg.Picture(id, Width, bottom + 34, panel.Title, AltText(panel),
        [
            Svg.Text("name", Side, 12, "start", panel.Title),
            Svg.Rectangle("bar-2", Side, 19, 20, Bar),
            Svg.Text("axis", Side + 26, 28, "start", "10 % point"),
            Svg.Rectangle("bar-1", Side + 88, 19, 20, Bar),
            Svg.Text("axis", Side + 114, 28, "start", "90 % point"),
            Svg.Line("zero", Side + 178, 24, Side + 198, 24),
            Svg.Text("axis", Side + 204, 28, "start", $"as drawn: {panel.Words(panel.AsDrawn)}"),
            .. ticks.Select(tick => Svg.Line("grid", X(tick), Top - 8, X(tick), bottom)),
            .. ticks.Select(tick => Svg.Text("tick", X(tick), bottom + 12, "middle", axis.Text(panel.IsSided ? Math.Abs(tick) : tick))),
            Svg.Text("axis", Middle, bottom + 26, "middle", panel.Axis),
            .. panel.IsSided ? [Svg.Text("note", Side, bottom + 26, "start", "← left"),
                Svg.Text("note", Width - Side, bottom + 26, "end", "right →")] : Array.Empty<XElement>(),
            .. panel.Limits.Where(limit => Math.Abs(limit - panel.AsDrawn) <= panel.Scale)
                .Select(limit => Svg.Line("limit", X(limit), Top - 8, X(limit), bottom)),
            Svg.Line("zero", Middle, Top - 8, Middle, bottom),
            .. panel.Rows.SelectMany((row, r) => Row(panel, row, Top + r * RowStep, X)),
        ]);
    }

    private static IEnumerable<XElement> Row(NoisePanel panel, NoiseRow row, double top, Func<double, double> x)
    {
        yield return Svg.Text("tick", Side, top + 8, "start", $"{row.Name}: {row.Ends}");
        var bars = new[] { (Class: "bar-2", Value: row.First), (Class: "bar-1", Value: row.Other) }
            .OrderByDescending(bar => Math.Abs(bar.Value - panel.AsDrawn)).ToList();
        foreach (var (bar, isLonger) in bars.Select((bar, b) => (bar, b == 0)))
        {
            if (double.IsNaN(bar.Value))
                continue;
            // Both ends to one side of the design as drawn: the shorter bar lies in the longer one, thinner and without its value.
            var isHidden = !isLonger && (bar.Value - panel.AsDrawn) * (bars[0].Value - panel.AsDrawn) > 0;
            yield return Svg.Rectangle(bar.Class, Math.Min(Middle, x(bar.Value)), top + (isHidden ? 15 : 12),
                Math.Abs(x(bar.Value) - Middle), isHidden ? Bar - 6 : Bar);
            var isLeft = bar.Value < panel.AsDrawn;
            if (!isHidden)
                yield return Svg.Text("tick", x(bar.Value) + (isLeft ? -4 : 4), top + 21, isLeft ? "end" : "start", panel.Words(bar.Value));
        }

        if (double.IsNaN(row.First) || double.IsNaN(row.Other))
            yield return Svg.Text("tick", Width - Side, top + 21, "end", "cannot fly at an end");
    }

    private static string AltText(NoisePanel panel)
    {
        string Words(double value) => double.IsNaN(value) ? "cannot fly" : panel.Words(value);
        return $"As drawn: {panel.Words(panel.AsDrawn)}. " + string.Join("; ", panel.Rows.Select(row =>
            $"{row.Name}, {row.Ends}: {Words(row.First)} | {Words(row.Other)}")) + ".";
    }
}

/// <summary>One response over some uncertain numbers.</summary>
/// <param name="Title">The response, in words.</param>
/// <param name="Axis">What is measured along the bars, with its unit.</param>
/// <param name="IsSided">True where the sign is a side.</param>
/// <param name="AsDrawn">Its value when nothing is off.</param>
/// <param name="Scale">How far the picture reaches to either side of that; above 0.</param>
/// <param name="Limits">Bounds drawn where they are in reach.</param>
/// <param name="Rows">The longest bar first.</param>
/// <param name="Words">A value in words, short.</param>
internal sealed record NoisePanel(
    string Title, string Axis, bool IsSided, double AsDrawn, double Scale, IReadOnlyList<double> Limits, IReadOnlyList<NoiseRow> Rows,
    Func<double, string> Words);

/// <summary>One uncertain number alone.</summary>
/// <param name="Name">Of the number.</param>
/// <param name="Ends">Its deviations at the 10 % point and at the 90 % point, in words.</param>
/// <param name="First">The response there; NaN when the design cannot fly.</param>
/// <param name="Other">The same at the other end.</param>
internal sealed record NoiseRow(string Name, string Ends, double First, double Other);
