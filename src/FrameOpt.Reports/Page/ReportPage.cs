using System.Text;
using System.Xml.Linq;
using FrameOpt.Reports.Answer;

namespace FrameOpt.Reports.Page;

/// <summary>report.html: one file that needs nothing else, for the screen, the phone and paper.</summary>
public static class ReportPage
{
    /// <summary>Writes the page of a run; the same bytes for the same run.</summary>
    public static void Write(RunReport report, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            leaveOpen: true)
        { NewLine = "\n" };
        writer.Write(Of(report));
    }

    /// <summary>The page as text.</summary>
    public static string Of(RunReport report)
    {
        var content = PageContent.Of(report);
        var isLive = content is { IsFeasible: true, Binder.Views.Count: > 1 };
        var script = isLive ? PageTemplate.ReadResource("page.js") : null;
        return PageTemplate.Of($"{content.Answer.Title} - FrameOpt report", PageTemplate.ReadResource("page.css"), script,
        [
            TitlePart.Of(content),
            isLive ? DesignSelectorPart.Of(content.Binder!) : null,
            PageTemplate.Main(Parts(content)),
            PageTemplate.Footer(),
            isLive ? new XElement("script", new XAttribute("type", "application/json"), new XAttribute("id", "designs"),
                PageData.Of(content, content.Binder!)) : null,
            isLive ? new XElement("script", script) : null,
        ]);
    }

    private static IEnumerable<XElement?> Parts(PageContent content) =>
    [
        AnswerPart.Of(content),
        PhasesPart.Of(content),
        LeveragePart.Of(content),
        Rounding(content),
        .. GroundChecksPart.Of(content),
        BalancedBandPart.Of(content),
        .. CostPart.Of(content),
        FrontPart.Of(content),
        EffectsPart.Of(content),
        .. SearchQualitySection.Of(content.Result).Where(_ => content.IsFeasible)
            .Select(section => Html.Section("search", section.Title, Html.SectionBody(section))),
        TestCardPart.Of(content),
        .. StudyPart.Of(content),
        ReproducePart.Of(content),
    ];

    private static XElement? Rounding(PageContent content) =>
        content is { IsFeasible: true, Binder: { } binder }
            && RoundingSection.Of(content.Result, content.Result.Chosen!).FirstOrDefault() is { } section
            ? Html.Section("rounded", section.Title, binder.Bind(view =>
                Html.SectionBody(RoundingSection.Of(content.Result, view.Evaluation).First())))
            : null;
}
