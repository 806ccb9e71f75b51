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
        var lines = ModelAndFitPlot.Of(answer.Plan, content.Result.Mission, content.Result.Chosen?.Geometry);
        var through = content.Result.Chosen is null ? "the middle of the plan" : "the best compromise (dotted)";
        return Html.Section("effects", section.Title, [Html.SectionBody(section),
            .. answer.Surfaces.SelectMany((surface, s) => Response(answer, surface, s, lines, through))]);
    }

    private static IEnumerable<XElement> Response(PlanResult answer, FittedSurface surface, int index,
        ModelAndFitPlot lines, string through)
    {
        var shares = answer.Shares.Responses[index];
        if (surface.Fit is null && shares.Everywhere.Count == 0)
            yield break;
        yield return Html.Heading(PlanLabels.WithUnit(surface.Response));
        yield return Html.Paragraph($"{surface.Response.Name}: {surface.Response.Entry.Meaning}.");
        var pictures = surface.Fit is { } fitted ? new EffectsPlots(answer.Plan, surface.Response, fitted, $"effects-{index + 1}") : null;
        yield return Html.Block(
            "pictures",
            shares.Everywhere.Count == 0 ? null : Html.Figure(ModelSharesBars.Of($"shares-{index + 1}", answer.Shares, shares),
                "The model itself: nothing is sampled, no polynomial is fitted."),
            pictures is null ? null : Html.Figure(
                pictures.Shares(), "The plan's runs. Outlined bars: interactions of two factors; dashed: of no single term."),
            surface.Fit is not { } fit ? null : Html.Figure(lines.Picture(surface.Response, fit, $"effects-{index + 1}-mains"),
                $"Through {through}: one factor varies, the others stay. Where the lines part, the surface misses the model."),
            pictures?.InteractionPlot() is { } pair
                ? Html.Figure(pair, "The fitted surface, others at mid-range. Lines that are not parallel show an interaction.") : null);
    }
}
