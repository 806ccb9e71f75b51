using System.Xml.Linq;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>The test card: to print, take along and fill in.</summary>
internal static class TestCardPart
{
    public static XElement? Of(PageContent content) => content.Binder is not { } binder || !content.IsFeasible
        ? null
        : Html.Section(
            "card",
            "Test card for the first flights",
            Html.Paragraph("danger", Cautions.FirstPage[0]),
            Html.Paragraph(
                "Figures to expect are the model's. What to do and when to stop is common practice, no published source. Go on only when a step is as expected; one step a time, one change a time."),
            binder.Bind(view => Html.Paragraph($"Built and tested: {GeometryText.Of(content.Study, view.Evaluation.Geometry)}.")),
            Html.Block("blanks", ((string[])["date", "pilot", "frame and engine", "wing", "place and wind", "temperature", "fuel",
                "witness"]).Select(TestCardStep.Blank)),
            binder.Bind(view => Html.Block("steps", TestCardSteps.Of(content.Study, view.Evaluation).Select(step => step.Block()))),
            Html.Paragraph("Signed, with what to change before the next flight:"),
            Html.Block("blanks", TestCardStep.Blank("signed"), TestCardStep.Blank("to change")));
}
