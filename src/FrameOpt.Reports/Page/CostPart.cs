using System.Xml.Linq;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>What the design gives up elsewhere: with the engine off, against others, at its limits.</summary>
internal static class CostPart
{
    public static IEnumerable<XElement> Of(PageContent content)
    {
        if (content.Binder is not { } binder)
            yield break;
        if (content.IsFeasible)
        {
            yield return Html.Section(
                "cost",
                CostSection.Of(content.Result, content.Result.Chosen!).Title,
                Html.Heading("The price of a fixed offset: with the engine off"),
                binder.Bind(view => Html.List(EngineOff(content.Result, view.Evaluation))),
                Html.Paragraph(
                    "A fixed offset is right at one power only. With the engine off nothing opposes it, and it turns the wing the other way."),
                Html.Heading("Response by response"),
                binder.Bind(view => Html.SectionBody(CostSection.Of(view.Result, view.Evaluation))));
        }

        yield return Html.Section("limits", LimitsSection.Of(content.Result).Title,
            binder.Bind(view => Html.SectionBody(LimitsSection.Of(view.Result))));
    }

    private static IEnumerable<string> EngineOff(StudyResult result, DesignEvaluation design)
    {
        for (var p = 0; p < design.Phases.Count; p++)
        {
            var phase = design.Phases[p];
            if (phase.Phase.Power is not PhasePower.EngineOff)
                continue;
            var baseline = result.Baseline is { Failure: null } other ? $" The baseline leaves {SideText.Residual(other.Phases[p])}." : "";
            yield return $"{phase.Phase.Name}: {SideText.Residual(phase)}; {SideText.Lean(phase[PhaseQuantity.Lean])}, "
                + $"effort {NumberFormat.Text(phase[PhaseQuantity.Effort], "")} of the largest lean.{baseline}";
        }
    }
}
