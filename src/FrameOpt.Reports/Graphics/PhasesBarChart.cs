using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Graphics;

/// <summary>The residual torque of each phase, design beside design.</summary>
internal static class PhasesBarChart
{
    private const double Width = 340;
    private const double Left = 8;
    private const double Right = Width - 8;
    private const double Bar = 11;
    private const double BarStep = 13;
    private const double Heading = 16;
    private const double Gap = 7;

    /// <summary>Room beside the longest bar for its figure.</summary>
    private const double LabelWidth = 42;

    private static readonly string[] barClasses = ["bar-1", "bar-2", "bar-3", "bar-4"];

    /// <summary>The picture.</summary>
    /// <param name="designs">One to four, of one mission.</param>
    /// <param name="largest">The largest residual the picture has room for, in N·m.</param>
    public static XElement Of(IReadOnlyList<ComparedDesign> designs, double largest)
    {
        var phases = designs[0].Evaluation.Phases;
        var top = 22 + designs.Count * 14.0;
        var group = Heading + designs.Count * BarStep + Gap;
        var height = top + phases.Count * group + 34;
        double X(double residual) => (Left + Right) / 2 + residual / Math.Max(largest, 0.1) * ((Right - Left) / 2 - LabelWidth);
        var axis = PlotAxis.Spanning("residual torque [N·m]", [-largest, largest], steps: 6);
        var ticks = axis.Ticks.Where(tick => Math.Abs(tick) <= largest * 1.001).ToList();
        return Svg.Picture("phases-picture", Width, height, "Residual torque in each phase", AltText(designs),
        [
            .. Key(designs),
            .. ticks.Select(tick => Svg.Line(tick == 0 ? "zero" : "grid", X(tick), top - 2, X(tick), height - 32)),
            .. ticks.Select(tick => Svg.Text("tick", X(tick), height - 20, "middle", axis.Text(Math.Abs(tick)))),
            Svg.Text("axis", X(0), height - 6, "middle", "residual torque [N·m]"),
            Svg.Text("note", Left, top - 8, "start", "← steers left"),
            Svg.Text("note", Right, top - 8, "end", "steers right →"),
            .. phases.SelectMany((phase, p) => Group(designs, p, top + p * group, X)),
        ]);
    }

    private static IEnumerable<XElement> Key(IReadOnlyList<ComparedDesign> designs) => designs.SelectMany((design, d) => (XElement[])
    [
        Svg.Rectangle(barClasses[d], Left, 3 + 14 * d, 20, Bar),
        Svg.Text("axis", Left + 26, 12 + 14 * d, "start", design.Name),
    ]);

    private static IEnumerable<XElement> Group(IReadOnlyList<ComparedDesign> designs, int phase, double top, Func<double, double> x)
    {
        yield return Svg.Text("name", Left, top + 11, "start", TextTruncation.Truncate(designs[0].Evaluation.Phases[phase].Phase.Name, 40));
        for (var d = 0; d < designs.Count; d++)
        {
            var residual = designs[d].Evaluation.Phases[phase][PhaseQuantity.Residual];
            var y = top + Heading + d * BarStep;
            yield return Svg.Rectangle(barClasses[d], Math.Min(x(0), x(residual)), y, Math.Max(0.8, Math.Abs(x(residual) - x(0))), Bar);
            yield return Svg.Text(
                "tick", x(residual) + (residual < 0 ? -4 : 4), y + 9, residual < 0 ? "end" : "start",
                    NumberFormat.Text(Math.Abs(residual), "N·m").Replace(" N·m", ""));
        }
    }

    private static string AltText(IReadOnlyList<ComparedDesign> designs) => string.Join(" ", designs.Select(design =>
        $"{design.Name}: {string.Join("; ", design.Evaluation.Phases.Select(phase => $"{phase.Phase.Name} {SideText.Residual(phase)}"))}."));
}
