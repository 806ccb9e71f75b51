using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using System.Xml.Linq;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>What every page of the program has around its own content: head, security policy, table of contents, foot.</summary>
internal static class PageTemplate
{
    /// <summary>A whole page as text.</summary>
    /// <param name="title">For the window.</param>
    /// <param name="style">The one style sheet.</param>
    /// <param name="script">The one script that may run, or null for none.</param>
    /// <param name="body">What stands above the foot.</param>
    public static string Of(string title, string style, string? script, IEnumerable<XElement?> body) => HtmlWriter.Render(new XElement(
        "html",
        new XAttribute("lang", "en"),
        new XElement(
            "head",
            new XElement("meta", new XAttribute("charset", "utf-8")),
            new XElement("meta", new XAttribute("http-equiv", "Content-Security-Policy"),
                new XAttribute("content", ContentSecurityPolicy(style, script))),
            new XElement("meta", new XAttribute("name", "viewport"), new XAttribute("content", "width=device-width, initial-scale=1")),
            new XElement("meta", new XAttribute("name", "color-scheme"), new XAttribute("content", "light dark")),
            new XElement("title", title),
            new XElement("style", style)),
        new XElement("body", body)));

    /// <summary>The main part with the list of its sections after the first.</summary>
    public static XElement Main(IEnumerable<XElement?> sections)
    {
        var main = new XElement("main", sections);
        main.Element("section")!.AddAfterSelf(new XElement(
            "nav",
            new XAttribute("aria-label", "Contents"),
            new XElement("ol", main.Elements("section").Select(section => new XElement(
                "li", new XElement("a", new XAttribute("href", $"#{section.Attribute("id")!.Value}"), section.Element("h2")!.Value))))));
        return main;
    }

    /// <summary>The cautions that close every page.</summary>
    public static XElement Footer() => new("footer", Html.Paragraph(
        $"{Cautions.Danger} {Cautions.GroundTestFirst} {Cautions.NotValidated}"));

    /// <summary>A style sheet or script that is part of the program.</summary>
    public static string ReadResource(string name)
    {
        using var stream = Assembly.GetExecutingAssembly().GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return reader.ReadToEnd().ReplaceLineEndings("\n");
    }

    /// <summary>Nothing may be loaded; only this style sheet and this script are allowed.</summary>
    private static string ContentSecurityPolicy(string style, string? script) =>
        $"default-src 'none'; style-src '{Hash(style)}'; {(script is null ? "" : $"script-src '{Hash(script)}'; ")}base-uri "
            + "'none'; form-action 'none'";

    private static string Hash(string text) => $"sha256-{Convert.ToBase64String(SHA256.HashData(Encoding.UTF8.GetBytes(text)))}";
}
