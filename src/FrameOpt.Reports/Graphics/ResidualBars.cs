using System.Xml.Linq;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Graphics;

/// <summary>The residual torque of each phase, design beside design.</summary>
internal static class ResidualBars
{
    private const double Width = 340;
    private const double Left = 8;
    private const double Right = Width - 8;
    private const double Bar = 11;
    private const double BarStep = 13;
    private const double Heading = 16;
    private const double Gap = 7;

    /// <summary>The picture.</summary>
    /// <param name="id">Unlike every other on the page.</param>
    /// <param name="designs">One to six.</param>
    /// <param name="largest">The largest residual the picture has room for, in N·m.</param>
    public static XElement Of(string id, IReadOnlyList<ResidualSeries> designs, double largest)
    {
        var phases = designs.SelectMany(design => design.Phases).Select(phase => phase.Name).Distinct().ToList();
        // Room beside the longest bar for its figure, and for the letter of its design.
        var labelWidth = designs.Any(design => design.Letter.Length > 0) ? 54 : 42;
        var holdable = designs[0].Holdable;
        var spread = designs[0].Spread;
        var top = 22 + (designs.Count + (holdable.Count > 0 ? 1 : 0) + (spread.Count > 0 ? 1 : 0)) * 14.0;
        var group = Heading + designs.Count * BarStep + Gap;
        var height = top + phases.Count * group + 34;
        double X(double residual) => (Left + Right) / 2 + residual / Math.Max(largest, 0.1) * ((Right - Left) / 2 - labelWidth);
        var axis = PlotAxis.Spanning("residual torque [N·m]", [-largest, largest], steps: 6);
        var ticks = axis.Ticks.Where(tick => Math.Abs(tick) <= largest * 1.001).ToList();
        return Svg.Picture(id, Width, height, "Residual torque in each phase", AltText(designs),
        [
            .. Key(designs),
            .. holdable.Count > 0 ? HoldKey(designs.Count) : [],
            .. ticks.Select(tick => Svg.Line(tick == 0 ? "zero" : "grid", X(tick), top - 2, X(tick), height - 32)),
            .. ticks.Select(tick => Svg.Text("tick", X(tick), height - 20, "middle", axis.Text(Math.Abs(tick)))),
            Svg.Text("axis", X(0), height - 6, "middle", axis.Title),
            Svg.Text("note", Left, top - 8, "start", "← steers left"),
            Svg.Text("note", Right, top - 8, "end", "steers right →"),
            .. holdable.Take(phases.Count).SelectMany((most, p) =>
                Hold(most, largest, top + p * group + Heading, group - Heading - Gap, X)),
            .. phases.SelectMany((phase, p) => Group(designs, phase, top + p * group, X)),
            .. spread.SelectMany((ends, p) => Whisker(ends, X, top + p * group + Heading + Bar / 2)),
            .. spread.Count > 0 ? SpreadKey(designs.Count + (holdable.Count > 0 ? 1 : 0)) : [],
        ]);
    }

    private static string CssClass(int design) => FormattableString.Invariant($"bar-{design + 1}");

    private static IEnumerable<XElement> Key(IReadOnlyList<ResidualSeries> designs) => designs.SelectMany((design, d) => (XElement[])
    [
        Svg.Rectangle(CssClass(d), Left, 3 + 14 * d, 20, Bar),
        Svg.Text("axis", Left + 26, 12 + 14 * d, "start", design.Name),
    ]);

    private static IEnumerable<XElement> HoldKey(int row) =>
    [
        Svg.Line("limit", Left + 10, 3 + 14 * row, Left + 10, 14 + 14 * row),
        Svg.Text("axis", Left + 26, 12 + 14 * row, "start", "the most a pilot can hold by weight shift"),
    ];

    private static IEnumerable<XElement> SpreadKey(int row) =>
    [
        .. Whisker((Left, Left + 20), x => x, 9 + 14 * row),
        Svg.Text("axis", Left + 26, 12 + 14 * row, "start", "8 of 10 cases lie in this band (docs/noise.md)"),
    ];

    /// <summary>A line between two ends, with a stroke at each; of no length where there are none.</summary>
    private static IEnumerable<XElement> Whisker((double Low, double High) ends, Func<double, double> x, double y)
    {
        var isShown = double.IsFinite(ends.Low);
        var (low, high, stroke) = isShown ? (x(ends.Low), x(ends.High), 3) : (x(0), x(0), 0);
        yield return Svg.Line("whisker", low, y, high, y);
        yield return Svg.Line("whisker", low, y - stroke, low, y + stroke);
        yield return Svg.Line("whisker", high, y - stroke, high, y + stroke);
    }

    /// <summary>A line to either side at the most a pilot can hold; beyond the picture's range it has no length.</summary>
    private static IEnumerable<XElement> Hold(double most, double largest, double top, double height, Func<double, double> x)
    {
        var isShown = most >= 0 && most <= largest * 1.001;
        return new[] { -1, 1 }.Select(side =>
            Svg.Line("limit", x(isShown ? side * most : 0), top, x(isShown ? side * most : 0), top + (isShown ? height : 0)));
    }

    private static IEnumerable<XElement> Group(IReadOnlyList<ResidualSeries> designs, string phase, double top, Func<double, double> x)
    {
        yield return Svg.Text("name", Left, top + 11, "start", TextTruncation.Truncate(phase, 40));
        for (var d = 0; d < designs.Count; d++)
        {
            var (design, y) = (designs[d], top + Heading + d * BarStep);
            if (design.Phases.All(own => own.Name != phase))
            {
                yield return Svg.Text("tick", x(0) + 4, y + 9, "start", $"{design.Letter}: not in its mission");
                continue;
            }

            var residual = design.Phases.First(own => own.Name == phase).ResidualNewtonMetres;
            yield return Svg.Rectangle(CssClass(d), Math.Min(x(0), x(residual)), y, Math.Max(0.8, Math.Abs(x(residual) - x(0))), Bar);
            var figure = NumberFormat.Text(Math.Abs(residual), "N·m").Replace(" N·m", "", StringComparison.Ordinal);
            // The figure stands beyond bar and band.
            var end = d == 0 && design.Spread.Count > 0 && design.Spread[design.IndexOf(phase)] is var (low, high) && double.IsFinite(low)
                ? residual < 0 ? Math.Min(residual, low) : Math.Max(residual, high) : residual;
            yield return Svg.Text("tick", x(end) + (residual < 0 ? -4 : 4), y + 9, residual < 0 ? "end" : "start",
                design.Letter.Length > 0 ? $"{design.Letter} {figure}" : figure);
        }
    }

    private static string AltText(IReadOnlyList<ResidualSeries> designs) => string.Join(" ", designs.Select(design =>
    {
        var phases = design.Phases.Select((phase, p) => $"{phase.Name} {SideText.Residual(phase.ResidualNewtonMetres)}"
            + (p < design.Spread.Count && double.IsFinite(design.Spread[p].Low)
                ? $" (8 of 10 cases from {SideText.Moment(design.Spread[p].Low)} to {SideText.Moment(design.Spread[p].High)})" : ""));
        return $"{design.Name}: {string.Join("; ", phases)}.";
    }));
}

/// <summary>The residual torques of one design.</summary>
/// <param name="Name">What the design is, in few words.</param>
/// <param name="Letter">Stands beside each of its bars; empty for none.</param>
/// <param name="Phases">In mission order, each phase once; to the right +.</param>
internal sealed record ResidualSeries(string Name, string Letter, IReadOnlyList<(string Name, double ResidualNewtonMetres)> Phases)
{
    /// <summary>The residual torque a pilot can hold by weight shift in each phase, N·m; empty where no line is drawn.</summary>
    public IReadOnlyList<double> Holdable { get; init; } = [];

    /// <summary>Between which 8 of 10 cases lie in each phase, N·m; NaN for no band; empty where no picture shows one.</summary>
    public IReadOnlyList<(double Low, double High)> Spread { get; init; } = [];

    /// <summary>The index of a phase.</summary>
    public int IndexOf(string phase) => Phases.Index().First(own => own.Item.Name == phase).Index;
}
