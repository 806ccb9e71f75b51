using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using System.Xml.Linq;

namespace FrameOpt.Reports;

/// <summary>line.html: one file that needs nothing else, for the screen, the phone and paper.</summary>
public static class ProductLinePage
{
    /// <summary>Writes the page of a line; the same bytes for the same line.</summary>
    public static void Write(ProductLineReport report, Stream stream)
    {
        using var writer = new StreamWriter(stream, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false), leaveOpen: true) { NewLine = "\n" };
        writer.Write(Of(report));
    }

    /// <summary>The page as text.</summary>
    public static string Of(ProductLineReport report)
    {
        var answer = ProductLineAnswer.Of(report.Result);
        var style = Style();
        var main = new XElement("main", new XAttribute("id", "main"), ProductLineParts.Of(report, answer));
        return HtmlText.Page(new XElement(
            "html",
            new XAttribute("lang", "en"),
            new XElement(
                "head",
                new XElement("meta", new XAttribute("charset", "utf-8")),
                new XElement("meta", new XAttribute("http-equiv", "Content-Security-Policy"), new XAttribute("content", Policy(style))),
                new XElement("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
                new XElement("meta", new XAttribute("name", "color-scheme"), new XAttribute("content", "light dark")),
                new XElement("title", $"{answer.Title} - FrameOpt product line"),
                new XElement("style", style)),
            new XElement(
                "body",
                ProductLineParts.Head(report, answer),
                Contents(main),
                main,
                new XElement("footer", Html.Paragraph($"{Cautions.Danger} {Cautions.TestFirst} {Cautions.NotValidated}")))));
    }

    private static XElement Contents(XElement main) => new(
        "nav",
        new XAttribute("aria-label", "Contents"),
        new XElement("ol", main.Elements("section").Select(section => new XElement(
            "li", new XElement("a", new XAttribute("href", $"#{section.Attribute("id")!.Value}"), section.Element("h2")!.Value)))));

    /// <summary>Nothing may be loaded and no script may run; only this style may act.</summary>
    private static string Policy(string style) =>
        $"default-src 'none'; style-src 'sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(style)))}'; base-uri 'none'; form-action 'none'";

    private static string Style()
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream("page.css")!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n") + FittingPicture.Rules.ReplaceLineEndings("\n") + """
            .chart { overflow-x: auto; margin-bottom: 1rem; }
            .chart svg { min-width: 36rem; max-width: 56rem; }
            @media print { .chart { overflow: visible; break-inside: avoid; } .chart svg { min-width: 0; } #chart { break-before: page; } }

            """.ReplaceLineEndings("\n");
    }
}
