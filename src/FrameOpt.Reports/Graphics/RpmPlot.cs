using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Graphics;

/// <summary>Torque and residual against propeller speed, with the balanced band and the phases.</summary>
internal static class RpmPlot
{
    private const double Height = 300;
    private const int PointStride = 12;

    /// <summary>The phases that the picture marks, in the order of their numbers.</summary>
    public static IReadOnlyList<PhaseResult> Marked(DesignEvaluation design) =>
        [.. design.Phases.Where(phase => phase.Phase.Power is not PhasePower.EngineOff)];

    /// <summary>The plot with room for every design that may be shown.</summary>
    public static Plot Plot(IReadOnlyList<RpmCurve> designs)
    {
        var marked = designs.SelectMany(design => Marked(design.Evaluation)).ToList();
        var points = designs.SelectMany(design => design.Points).ToList();
        return new Plot(
            PlotAxis.Spanning(RpmText.Axis(designs[0].Machine), points.Select(point => point.Rpm)
                .Concat(marked.Select(phase => phase[PhaseQuantity.Rpm]))),
            PlotAxis.Spanning(
                "torque [N·m]",
                [.. points.SelectMany(point => (double[])[point.ResidualNewtonMetres, point.TorqueNewtonMetres]),
                    .. marked.Select(phase => phase[PhaseQuantity.Residual]), 0],
                "residual: above 0 steers right, below 0 left",
                6),
            Height);
    }

    /// <summary>The picture of one design.</summary>
    public static XElement Of(Plot plot, RpmCurve design)
    {
        var within = design.WithinNewtonMetres;
        var marked = Marked(design.Evaluation);
        var curve = design.Points.Where((_, i) => i % PointStride == 0).ToList();
        return Svg.Picture("rpm-picture", Graphics.Plot.Width, Height, "Torque against propeller speed", AltText(design, marked),
        [
            .. plot.Frame(),
            Svg.Path("band", string.Concat(design.Bands.Select(band => plot.Box(band.FromRpm, band.ToRpm, -within, within)))),
            plot.HorizontalLine("zero", 0),
            Svg.Curve("line-2", curve.Select(point => (plot.X(point.Rpm), plot.Y(point.TorqueNewtonMetres)))),
            Svg.Curve("line-1", curve.Select(point => (plot.X(point.Rpm), plot.Y(point.ResidualNewtonMetres)))),
            .. marked.Select(phase => PlotMarker.At("ranked", PlotMarker.Diamond, plot.X(phase[PhaseQuantity.Rpm]),
                plot.Y(phase[PhaseQuantity.Residual]))),
            .. marked.Select((phase, p) => Svg.Text(
                "name", plot.X(phase[PhaseQuantity.Rpm]), plot.Y(phase[PhaseQuantity.Residual]) + (p % 2 == 0 ? -8 : 17), "middle",
                    FormattableString.Invariant($"{p + 1}"))),
        ]);
    }

    private static string AltText(RpmCurve design, IReadOnlyList<PhaseResult> marked)
    {
        var bands = string.Join(" and ", design.Bands.Select(band =>
            RpmText.Range(design.Machine, band.FromRpm, band.ToRpm)));
        var balanced = bands.Length == 0 ? "no speed is balanced" : $"balanced from {bands}";
        var phases = marked.Select((phase, p) =>
            $"{p + 1} {phase.Phase.Name} at {RpmText.Of(design.Machine, phase[PhaseQuantity.Rpm])}, "
            + SideText.Moment(phase[PhaseQuantity.Residual]));
        return "At constant airspeed the propeller torque increases with propeller speed, and the residual torque shifts to one side; "
            + $"{balanced}. {string.Join("; ", phases)}.";
    }
}

/// <summary>A design over the range of propeller speeds.</summary>
/// <param name="Machine">For the speed of the engine.</param>
/// <param name="Evaluation">Of a design that flies.</param>
/// <param name="Points">Residual and torque against propeller speed.</param>
/// <param name="Bands">Ranges of speed in which it is balanced.</param>
/// <param name="WithinNewtonMetres">The residual that counts as balanced.</param>
internal sealed record RpmCurve(
    Machine Machine, DesignEvaluation Evaluation, IReadOnlyList<ResidualPoint> Points,
    IReadOnlyList<BalancedBand> Bands, double WithinNewtonMetres);
