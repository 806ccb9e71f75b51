using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>The answer first: what to drill, drawn and in words, or why there is nothing to drill.</summary>
internal static class AnswerPart
{
    public static XElement Of(PageContent content) => content.Binder is not { } binder
        ? Html.Section(
            "answer",
            "The answer",
            [Headline(content.Answer.Headline, true), Danger(), .. AnswerHeadline.Example(content.Result)
                .SelectMany(section => (XElement[])[Html.Heading(section.Title), Html.SectionBody(section)])])
        : Html.Section(
            "answer",
            "The answer",
            binder.Bind(view => HeadlineOf(content, view)),
            Danger(),
            content.IsFeasible ? Html.Heading(DrillingSection.Of(content.Study, content.Result.Chosen!.Geometry).Title)
                : Html.Heading("The nearest miss, seen from behind: do not drill"),
            binder.Bind(view => Drilling(content, view)));

    private static XElement Danger() => Html.Paragraph("danger", Cautions.FirstPage[0]);

    private static XElement Headline(string text, bool isWarning) => Html.Paragraph(isWarning ? "headline warning" : "headline", text);

    private static XElement HeadlineOf(PageContent content, DesignView view) =>
        view.Best is null || ReferenceEquals(view.Evaluation, view.Best)
        ? Headline(content.Answer.Headline, content.Answer.IsWarning)
        : Headline(AnswerHeadline.ForOtherDesign(view.Result.Study, view.FrontDesign!.Rank, view.Evaluation), true);

    private static XElement Drilling(PageContent content, DesignView view)
    {
        var scale = FrameScale.Of(content.Study.Machine, [.. content.Binder!.Views.Select(any => any.Evaluation.Geometry)]);
        return Html.Block(
            "beside",
            Html.Figure(FrameRearView.Of(content.Study, view.Evaluation.Geometry, scale)),
            Html.Block(
                "words",
                [.. content.IsFeasible ? DrillingSection.Of(content.Study, view.Evaluation.Geometry).Lines.Select(Html.Paragraph)
                    : [Html.Paragraph(GeometryText.Of(content.Study, view.Evaluation.Geometry) + ".")]]),
            Html.Figure(FrameTopView.Of(content.Study, view.Evaluation.Geometry, scale), "Both views at the same scale."));
    }
}
