using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>The same design where the yaw leverage is otherwise.</summary>
internal static class LeveragePart
{
    public static XElement? Of(PageContent content)
    {
        if (!content.IsFeasible || LeverageSection.Of(content.Result).ToList() is not { Count: 2 } sections)
            return null;
        return Html.Section(
            "leverage",
            sections[0].Title,
            content.Binder!.Bind(view => Html.SectionBody(LeverageSection.Of(view.Result).First())),
            Html.Heading(sections[1].Title),
            Html.List(sections[1].Lines),
            Html.Paragraph(Cautions.YawLeverageUncertainty));
    }
}
