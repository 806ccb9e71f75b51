using System.Xml.Linq;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>The answer on one sheet of A4: what to drill, drawn and in words, what the scales read, what the pilot feels, which limits are
/// met; or why there is nothing to drill.</summary>
internal static class AnswerPart
{
    public static XElement Of(PageContent content) => content.Binder is { } binder ? Of(content, binder)
        : Html.Section(
            "answer",
            "The answer",
            [Headline(content.Answer.Headline, true), Danger(), .. AnswerHeadline.Example(content.Result)
                .SelectMany(section => (XElement[])[Html.Heading(section.Title), Html.SectionBody(section)])]);

    private static XElement Of(PageContent content, DesignBinder binder)
    {
        var scale = Scale(content);
        return Html.Section(
            "answer",
            "The answer",
            binder.Bind(view => HeadlineOf(content, view)),
            Danger(),
            content.IsFeasible ? Html.Heading(DrillingSection.Of(content.Study, content.Result.Chosen!.Geometry).Title)
                : Html.Heading("The nearest miss, seen from behind: do not drill"),
            binder.Bind(view => Drawing(content, view, scale)),
            binder.Bind(view => Html.Block("columns", Feel(content, view), Scales(content, view))),
            Html.Heading("Limits of the study"),
            binder.Bind(view => Html.List(LimitsSection.Verdicts(view.Result))),
            content.IsFeasible ? Html.Heading(UncertaintySection.Title) : null,
            content.IsFeasible ? binder.Bind(view => Html.List(UncertaintySection.Verdict(content.Study, view.Result.Uncertainty))) : null);
    }

    /// <summary>The frame from above, and why the design works: the first of the workings.</summary>
    public static IEnumerable<XElement> Reasons(PageContent content)
    {
        if (content.Binder is not { } binder)
            yield break;
        var scale = Scale(content);
        var reasons = binder.Views.SelectMany(view => ReasonsSection.Of(content.Study, view.Evaluation)).FirstOrDefault();
        yield return Html.Section("from-above", "The frame from above",
            reasons is null ? null : Html.Heading(reasons.Title),
            binder.Bind(view => Html.Block("words", Html.List(ReasonsSection.Of(content.Study, view.Evaluation)
                .SelectMany(section => section.Lines)))),
            binder.Bind(view => Html.Figure(FrameTopView.Of(content.Study, view.Evaluation.Geometry, scale),
                "At the same scale as the other two views.")));
    }

    private static XElement Danger() => Html.Paragraph("danger", Cautions.FirstPage[0]);

    private static XElement Headline(string text, bool isWarning) => Html.Paragraph(isWarning ? "headline warning" : "headline", text);

    private static XElement HeadlineOf(PageContent content, DesignView view) =>
        view.Best is null || ReferenceEquals(view.Evaluation, view.Best)
        ? Headline(content.Answer.Headline, content.Answer.IsWarning)
        : Headline(AnswerHeadline.ForOtherDesign(view.Result.Study, view.FrontDesign!.Rank, view.Evaluation), true);

    /// <summary>That of all three views, with room for every design.</summary>
    private static FrameScale Scale(PageContent content) =>
        FrameScale.Of(content.Study.Machine, [.. content.Binder!.Views.Select(any => any.Evaluation.Geometry)]);

    private static XElement Drawing(PageContent content, DesignView view, FrameScale scale) => Html.Block(
        "beside",
        Html.Figure(FrameRearView.Of(content.Study, view.Evaluation.Geometry, scale)),
        Html.Figure(FrameSideView.Of(content.Study, view.Evaluation.Geometry, scale)),
        Holes(content, view));

    private static XElement Holes(PageContent content, DesignView view) => Html.Block(
        "holes",
        [.. content.IsFeasible ? DrillingSection.Of(content.Study, view.Evaluation.Geometry).Lines.Select(Html.Paragraph)
            : [Html.Paragraph(GeometryText.Of(content.Study, view.Evaluation.Geometry) + ".")]]);

    private static XElement Feel(PageContent content, DesignView view)
    {
        var section = FeelSection.Of(content.Result, view.Evaluation);
        return Html.Block("words", Html.Heading(section.Title), Html.List(section.Lines));
    }

    private static XElement Scales(PageContent content, DesignView view) => Html.Block(
        "hang",
        Html.Heading("What the scales read"),
        Html.Table(GroundChecksSection.Scales(content.Study, view.Evaluation.Geometry)),
        Html.Paragraph($"Propeller speed: {string.Join(", ", view.Evaluation.Phases.Where(phase => phase[PhaseQuantity.Rpm] > 0)
            .Select(phase => $"{phase.Phase.Name} {RpmText.Of(content.Study.Machine, phase[PhaseQuantity.Rpm])}"))}."));
}
