using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>How sure the best compromise is: what each uncertain number does alone, and what the phases leave over the cases.</summary>
internal static class UncertaintyPart
{
    public static XElement? Of(PageContent content)
    {
        if (content.Result is not { Chosen: { } chosen, Uncertainty: { Bars.Count: > 0 } uncertainty })
            return null;
        var (study, phases) = (content.Study, UncertaintySection.Phases(content.Study, uncertainty));
        var bars = NoiseBarsSection.Of(study, chosen, uncertainty, HowSurePictures.MostRows);
        return Html.Section(
            "how-sure",
            UncertaintySection.Title,
            Html.List([.. UncertaintySection.Of(study, uncertainty).Lines, $"Taken: {NoiseText.Setting(study.Noise)}.",
                .. study.IsOneFrame ? Array.Empty<string>() : ["All of this part is of the best compromise."]]),
            Html.Heading(bars.Title),
            Html.Block("lines", bars.Lines.Select(Html.Paragraph)),
            Html.Block("pictures", HowSurePictures.Of(study, chosen, uncertainty.Bars).Select(picture => Html.Figure(picture))),
            Html.Table(bars),
            Html.Block("words", ChoiceSection.Of(study, uncertainty).Prepend(phases)
                .SelectMany(section => new[] { Html.Heading(section.Title), Html.SectionBody(section) })));
    }
}
