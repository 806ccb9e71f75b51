using System.Xml.Linq;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Compare;

/// <summary>The residual torque of each phase, design beside design, each bar with the letter of its design.</summary>
internal static class ComparisonBars
{
    private const double Width = 340;
    private const double Left = 8;
    private const double Right = Width - 8;
    private const double Bar = 11;
    private const double Step = 13;
    private const double Heading = 16;
    private const double Gap = 7;

    /// <summary>Room beside the longest bar for its figure.</summary>
    private const double LabelWidth = 54;

    public static XElement Of(Comparison comparison)
    {
        var (columns, phases) = (comparison.Columns, ComparisonTables.PhaseNames(comparison));
        var largest = Math.Max(0.1, columns.SelectMany(column => column.Phases).Max(phase => Math.Abs(phase.ResidualNewtonMetres)));
        var top = 22 + columns.Count * 14.0;
        var group = Heading + columns.Count * Step + Gap;
        var height = top + phases.Count * group + 34;
        double X(double residual) => (Left + Right) / 2 + residual / largest * ((Right - Left) / 2 - LabelWidth);
        var axis = PlotAxis.Spanning("residual torque [N·m]", [-largest, largest], steps: 6);
        var ticks = axis.Ticks.Where(tick => Math.Abs(tick) <= largest * 1.001).ToList();
        return Svg.Picture("bars", Width, height, "Residual torque in each phase", AltText(comparison),
        [
            .. columns.SelectMany((column, c) => (XElement[])[Svg.Rectangle(CssClass(c), Left, 3 + 14 * c, 20, Bar),
                Svg.Text("axis", Left + 26, 12 + 14 * c, "start", column.Name)]),
            .. ticks.Select(tick => Svg.Line(tick == 0 ? "zero" : "grid", X(tick), top - 2, X(tick), height - 32)),
            .. ticks.Select(tick => Svg.Text("tick", X(tick), height - 20, "middle", axis.Text(Math.Abs(tick)))),
            Svg.Text("axis", X(0), height - 6, "middle", axis.Title),
            Svg.Text("note", Left, top - 8, "start", "← steers left"),
            Svg.Text("note", Right, top - 8, "end", "steers right →"),
            .. phases.SelectMany((phase, p) => Group(columns, phase, top + p * group, X)),
        ]);
    }

    private static string CssClass(int column) => FormattableString.Invariant($"bar-{column + 1}");

    private static IEnumerable<XElement> Group(IReadOnlyList<ComparedColumn> columns, string phase, double top, Func<double, double> x)
    {
        yield return Svg.Text("name", Left, top + 11, "start", TextTruncation.Truncate(phase, 40));
        for (var c = 0; c < columns.Count; c++)
        {
            var y = top + Heading + c * Step;
            if (columns[c].Phases.FirstOrDefault(own => own.Name == phase) is not { ResidualNewtonMetres: var residual })
            {
                yield return Svg.Text("tick", x(0) + 4, y + 9, "start", $"{columns[c].Letter}: not in its mission");
                continue;
            }

            yield return Svg.Rectangle(CssClass(c), Math.Min(x(0), x(residual)), y, Math.Max(0.8, Math.Abs(x(residual) - x(0))), Bar);
            var figure = NumberFormat.Text(Math.Abs(residual), "N·m").Replace(" N·m", "", StringComparison.Ordinal);
            yield return Svg.Text("tick", x(residual) + (residual < 0 ? -4 : 4), y + 9, residual < 0 ? "end" : "start",
                $"{columns[c].Letter} {figure}");
        }
    }

    private static string AltText(Comparison comparison) => string.Join(" ", comparison.Columns.Select(column =>
        $"{column.Name}: {string.Join("; ", column.Phases.Select(phase => $"{phase.Name} {SideText.Residual(phase.ResidualNewtonMetres)}"))}."));
}
