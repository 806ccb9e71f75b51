using System.Text;
using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>report.html: one file that needs nothing else, for the screen, the phone and paper.</summary>
public static class ReportPage
{
    /// <summary>Writes the page of a run; the same bytes for the same run.</summary>
    /// <param name="report">The run.</param>
    /// <param name="stream">To write to; it stays open.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    public static void Write(RunReport report, Stream stream, int threads = 1)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false),
            leaveOpen: true)
        { NewLine = "\n" };
        writer.Write(Of(report, threads));
    }

    /// <summary>The page as text.</summary>
    public static string Of(RunReport report, int threads = 1)
    {
        var content = PageContent.Of(report, threads);
        var isLive = content is { IsFeasible: true, Binder.Views.Count: > 1 };
        var script = isLive ? PageTemplate.ReadResource("page.js") : null;
        return PageTemplate.Of($"{content.Answer.Title} - FrameOpt report", PageTemplate.ReadResource("page.css"), script,
        [
            Head(content),
            isLive ? DesignSelector(content.Binder!) : null,
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
        .. DecisionSection.Of(content.Result).Select(Html.Decision),
        .. AnswerPart.Reasons(content),
        DesignParts.Phases(content),
        UncertaintyPart.Of(content),
        DesignParts.Wing(content),
        DesignParts.Rounding(content),
        .. DesignParts.GroundChecks(content),
        DesignParts.Band(content),
        .. DesignParts.Cost(content),
        FrontPart.Of(content),
        EffectsPart.Of(content),
        .. SearchSection.Quality(content.Result).Where(_ => content.IsFeasible)
            .Select(section => Html.Section("search", section.Title, Html.SectionBody(section))),
        TestCardPart.Of(content),
        .. StudyPart.Of(content),
        StudyPart.Reproduce(content),
    ];

    /// <summary>The head of the page: what was asked. What identifies the run stands in its last part.</summary>
    private static XElement Head(PageContent content) => new(
        "header",
        Html.Paragraph("kind", $"Hang points and thrust line{(content.Study.IsOneFrame ? " of one frame" : "")}: "
            + content.Report.Info.StudyFileName),
        new XElement("h1", content.Answer.Title),
        content.Answer.Question.Length > 0 ? Html.Paragraph("question", content.Answer.Question) : null);

    /// <summary>The bar that chooses the design shown; visible only where the page's script runs.</summary>
    private static XElement DesignSelector(DesignBinder binder) => new(
        "aside",
        new XAttribute("id", "chooser"),
        new XAttribute("aria-label", "Design shown"),
        new XAttribute("hidden", "hidden"),
        new XElement("label", new XAttribute("for", "design"), "Design shown"),
        new XElement("select", new XAttribute("id", "design"), new XElement(
            "option", new XAttribute("value", "0"), DesignRow.Label(binder.Views[0]))),
        new XElement("button", new XAttribute("type", "button"), new XAttribute("id", "best"), "best compromise"),
        new XElement("p", new XAttribute("id", "status"), new XAttribute("role", "status"), new XAttribute("class", "unseen")));
}

/// <summary>What the parts of the page are made from.</summary>
/// <param name="Report">The run.</param>
/// <param name="Answer">The answer in words.</param>
/// <param name="Binder">The designs that can be shown.</param>
internal sealed record PageContent(RunReport Report, RunAnswer Answer, DesignBinder? Binder)
{
    public StudyResult Result => Report.Result;

    public Study Study => Report.Result.Study;

    /// <summary>True when there is a design to recommend.</summary>
    public bool IsFeasible => Result.Chosen is not null;

    public static PageContent Of(RunReport report, int threads)
    {
        var views = DesignView.Of(report, threads);
        return new PageContent(report, RunAnswer.Of(report.Result), views.Count > 0 ? new DesignBinder(views, threads) : null);
    }
}
