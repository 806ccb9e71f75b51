using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using System.Xml.Linq;

namespace FrameOpt.Reports;

/// <summary>report.html: one file that needs nothing else, for the screen, the phone and paper.</summary>
public static class ReportPage
{
    /// <summary>Writes the page of a run; the same bytes for the same run.</summary>
    public static void Write(RunReport report, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true) { NewLine = "\n" };
        writer.Write(Of(report));
    }

    /// <summary>The page as text.</summary>
    public static string Of(RunReport report)
    {
        var content = PageContent.Of(report);
        var (style, script) = (Resource("page.css"), Resource("page.js"));
        var main = new XElement("main", Parts(content));
        main.Element("section")!.AddAfterSelf(Contents(main));
        var isLive = content is { IsFeasible: true, Follow.Views.Count: > 1 };
        return HtmlText.Page(new XElement(
            "html",
            new XAttribute("lang", "en"),
            new XElement(
                "head",
                new XElement("meta", new XAttribute("charset", "utf-8")),
                new XElement("meta", new XAttribute("http-equiv", "Content-Security-Policy"), new XAttribute("content", Policy(style, script))),
                new XElement("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
                new XElement("meta", new XAttribute("name", "color-scheme"), new XAttribute("content", "light dark")),
                new XElement("title", $"{content.Answer.Title} - FrameOpt report"),
                new XElement("style", style)),
            new XElement(
                "body",
                TitlePart.Of(content),
                isLive ? ChooserPart.Of(content.Follow!) : null,
                main,
                new XElement("footer", Html.Paragraph($"{Cautions.Danger} {Cautions.TestFirst} {Cautions.NotValidated}")),
                isLive ? new XElement("script", new XAttribute("type", "application/json"), new XAttribute("id", "designs"), PageData.Of(content, content.Follow!)) : null,
                isLive ? new XElement("script", script) : null)));
    }

    private static IEnumerable<XElement?> Parts(PageContent content) =>
    [
        AnswerPart.Of(content),
        PhasesPart.Of(content),
        LeveragePart.Of(content),
        .. GroundPart.Of(content),
        BandPart.Of(content),
        .. CostPart.Of(content),
        FrontPart.Of(content),
        EffectsPart.Of(content),
        .. CertificateSection.Of(content.Result).Where(_ => content.IsFeasible).Select(section => Html.Section("search", section.Title, Html.Words(section))),
        CardPart.Of(content),
        .. StudyPart.Of(content),
        ReproducePart.Of(content),
    ];

    /// <summary>The list of the parts of a page.</summary>
    internal static XElement Contents(XElement main) => new(
        "nav",
        new XAttribute("aria-label", "Contents"),
        new XElement("ol", main.Elements("section").Select(section => new XElement(
            "li", new XElement("a", new XAttribute("href", $"#{section.Attribute("id")!.Value}"), section.Element("h2")!.Value)))));

    /// <summary>Nothing may be loaded; only this style and this script may act.</summary>
    private static string Policy(string style, string script) =>
        $"default-src 'none'; style-src '{Hash(style)}'; script-src '{Hash(script)}'; base-uri 'none'; form-action 'none'";

    internal static string Hash(string text) => $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}";

    internal static string Resource(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }
}
