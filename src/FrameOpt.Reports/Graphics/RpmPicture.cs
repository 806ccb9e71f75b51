using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Page;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Graphics;

/// <summary>Torque and residual against propeller speed, with the balanced band and the phases.</summary>
internal static class RpmPicture
{
    private const double Height = 300;
    private const int EveryPoint = 12;

    /// <summary>The phases that the picture marks, in the order of their numbers.</summary>
    public static IReadOnlyList<PhaseResult> Marked(DesignEvaluation design) => [.. design.Phases.Where(phase => phase.Phase.Power is not PhasePower.EngineOff)];

    /// <summary>The plot with room for every design that may be shown.</summary>
    public static Plot Plot(IReadOnlyList<DesignView> views)
    {
        var marked = views.SelectMany(view => Marked(view.Evaluation)).ToList();
        var points = views.SelectMany(view => view.Curve).ToList();
        return new Plot(
            PlotAxis.Around("propeller speed [rpm]", points.Select(point => point.Rpm).Concat(marked.Select(phase => phase[PhaseQuantity.Rpm]))),
            PlotAxis.Around(
                "torque [N·m]",
                [.. points.SelectMany(point => (double[])[point.ResidualNewtonMetres, point.TorqueNewtonMetres]), .. marked.Select(phase => phase[PhaseQuantity.Residual]), 0],
                "residual: above 0 steers right, below 0 left",
                6),
            Height);
    }

    public static XElement Of(Plot plot, DesignView view)
    {
        var within = view.Result.Study.Band.WithinNewtonMetres;
        var marked = Marked(view.Evaluation);
        var curve = view.Curve.Where((_, i) => i % EveryPoint == 0).ToList();
        return Svg.Picture("rpm-picture", Graphics.Plot.Width, Height, "Torque against propeller speed", Words(view, marked),
        [
            .. plot.Frame(),
            Svg.Path("band", string.Concat(view.Result.Bands.Select(band => plot.Box(band.FromRpm, band.ToRpm, -within, within)))),
            plot.LevelLine("zero", 0),
            Svg.Curve("line-2", curve.Select(point => (plot.X(point.Rpm), plot.Y(point.TorqueNewtonMetres)))),
            Svg.Curve("line-1", curve.Select(point => (plot.X(point.Rpm), plot.Y(point.ResidualNewtonMetres)))),
            .. marked.Select(phase => Mark.At("ranked", Mark.Diamond, plot.X(phase[PhaseQuantity.Rpm]), plot.Y(phase[PhaseQuantity.Residual]))),
            .. marked.Select((phase, p) => Svg.Text(
                "name", plot.X(phase[PhaseQuantity.Rpm]), plot.Y(phase[PhaseQuantity.Residual]) + (p % 2 == 0 ? -8 : 17), "middle", FormattableString.Invariant($"{p + 1}"))),
        ]);
    }

    private static string Words(DesignView view, IReadOnlyList<PhaseResult> marked)
    {
        var bands = string.Join(" and ", view.Result.Bands.Select(band => FormattableString.Invariant($"{band.FromRpm:0} to {band.ToRpm:0} rpm")));
        var balanced = bands.Length == 0 ? "no speed is balanced" : $"balanced from {bands}";
        return $"At one airspeed the propeller torque grows with speed, and so does the pull of the residual torque to one side; {balanced}. "
            + $"{string.Join("; ", marked.Select((phase, p) => $"{p + 1} {phase.Phase.Name} at {Figures.Text(phase[PhaseQuantity.Rpm], "rpm")}, {SideWords.Moment(phase[PhaseQuantity.Residual])}"))}.";
    }
}
