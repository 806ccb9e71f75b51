using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>Which factors matter, alone and in pairs, where the study has a plan.</summary>
internal static class EffectsPart
{
    public static XElement? Of(PageContent content)
    {
        if (content.Result.Plan is not { } answer || PlanSections.Summary(content.Result).FirstOrDefault() is not { } section)
            return null;
        return Html.Section("effects", section.Title, [Html.SectionBody(section),
            .. answer.Surfaces.SelectMany((surface, s) => Response(answer.Plan, surface, s))]);
    }

    private static IEnumerable<XElement> Response(StudyPlan plan, FittedSurface surface, int index)
    {
        if (surface.Fit is not { } fit)
            yield break;
        var pictures = new EffectsPlots(plan, surface.Response, fit, $"effects-{index + 1}");
        yield return Html.Heading(PlanLabels.WithUnit(surface.Response));
        yield return Html.Paragraph($"{surface.Response.Name}: {surface.Response.Entry.Meaning}.");
        yield return Html.Block(
            "pictures",
            Html.Figure(pictures.Shares(), "Outlined bars: interactions of two factors."),
            Html.Figure(pictures.MainEffects(), "Main effects: one factor varies, the others are at mid-range."),
            pictures.InteractionPlot() is { } pair
                ? Html.Figure(pair, "Lines that are not parallel show an interaction of the two factors.") : null);
    }
}
