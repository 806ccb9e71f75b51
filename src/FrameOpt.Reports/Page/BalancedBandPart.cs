using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>Where on the throttle the design is balanced.</summary>
internal static class BalancedBandPart
{
    public static XElement? Of(PageContent content)
    {
        if (content.Binder is not { } binder || !content.IsFeasible)
            return null;
        var plot = RpmPlot.Plot(binder.Views);
        return Html.Section(
            "band",
            BandSection.Of(content.Result, content.Result.Chosen!).Title,
            binder.Bind(view => Html.SectionBody(BandSection.Of(view.Result, view.Evaluation))),
            Key(),
            binder.Bind(view => Html.Figure(RpmPlot.Of(plot, view), [.. Marks(view)])));
    }

    private static XElement Key() => PlotLegend.Of("band-key", "Key to torque against propeller speed",
    [
        (Svg.Line("line-1", 0, 8, 34, 8), "residual torque"),
        (Svg.Line("line-2", 0, 8, 34, 8), "propeller torque"),
        (Svg.Path("band", "M2 2H32V14H2Z"), "balanced band"),
        (PlotMarker.At("ranked", PlotMarker.Diamond, 17, 8), "phase under power"),
    ]);

    private static IEnumerable<string> Marks(DesignView view)
    {
        yield return "Curves are for the airspeed above; each phase is marked at its own airspeed and weight, so it need not lie on the curve.";
        foreach (var (phase, number) in RpmPlot.Marked(view.Evaluation).Select((phase, p) => (phase, p + 1)))
            yield return $"{number} {phase.Phase.Name}: {NumberFormat.Text(phase[PhaseQuantity.Rpm], "rpm")}, {SideText.Residual(phase)}";
    }
}
