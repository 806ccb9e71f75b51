using System.Text;
using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>Pieces of HTML.</summary>
internal static class Html
{
    /// <summary>A numbered part of the page.</summary>
    public static XElement Section(string id, string title, params IEnumerable<XElement?> content) => new(
        "section",
        new XAttribute("id", id),
        new XAttribute("aria-labelledby", $"{id}-title"),
        new XElement("h2", new XAttribute("id", $"{id}-title"), title),
        Block("body", content));

    /// <summary>A block of elements.</summary>
    public static XElement Block(string cssClass, params IEnumerable<XElement?> content) =>
        new("div", new XAttribute("class", cssClass), content);

    public static XElement Heading(string title) => new("h3", title);

    public static XElement Paragraph(string text) => new("p", text);

    public static XElement Paragraph(string cssClass, string text) => new("p", new XAttribute("class", cssClass), text);

    /// <summary>A list of facts, the name of each before its value.</summary>
    public static XElement Facts(string cssClass, IEnumerable<(string What, string Value)> facts) => new(
        "dl", new XAttribute("class", cssClass), facts.Select(
            fact => new XElement("div", new XElement("dt", fact.What), new XElement("dd", fact.Value))));

    public static XElement List(IEnumerable<string> lines) => new("ul", lines.Select(line => new XElement("li", line)));

    /// <summary>A section of the answer without its title: the lines, each a paragraph, then the table.</summary>
    public static XElement SectionBody(AnswerSection section) => Block(
        "words", Block("lines", section.Lines.Select(Paragraph)),
            section.Table is null ? null : Table(section));

    /// <summary>The table of a section, named by its title.</summary>
    /// <summary>A section of its own, found by its title.</summary>
    public static XElement Decision(AnswerSection section) =>
        Section(section.Title.ToLowerInvariant().Replace(' ', '-'), section.Title, SectionBody(section));

    public static XElement Table(AnswerSection section) => Table(section.Title, section.Table!.Headers, section.Table.Rows);

    /// <summary>A table whose first column names the rows. Where it is wider than the screen it can be scrolled, by keyboard too.</summary>
    public static XElement Table(string name, IReadOnlyList<string> headers, IEnumerable<IReadOnlyList<string>> rows) => new(
        "div",
        new XAttribute("class", "wide"),
        new XAttribute("role", "group"),
        new XAttribute("tabindex", "0"),
        new XAttribute("aria-label", name),
        new XElement(
            "table",
            new XElement("thead", new XElement("tr", headers.Select(header => new XElement("th", new XAttribute("scope", "col"), header)))),
            new XElement("tbody", rows.Select(row => new XElement("tr", row.Select((cell, c) => c == 0
                ? new XElement("th", new XAttribute("scope", "row"), cell)
                : new XElement("td", cell)))))));

    /// <summary>A picture and what to read in it.</summary>
    public static XElement Figure(XElement picture, params IEnumerable<string> captions) => new(
        "figure", picture, new XElement("figcaption", captions.Select(caption => new XElement("span", caption))));
}

/// <summary>Writes a tree as HTML; all text is escaped here.</summary>
internal static class HtmlWriter
{
    private static readonly HashSet<string> voidElements = ["meta", "input", "br", "hr", "col", "link"];

    /// <summary>Elements that begin a line of the file.</summary>
    private static readonly HashSet<string> blocks =
    [
        "html", "head", "body", "meta", "title", "style", "script", "header", "aside", "nav", "main", "section", "footer", "h1", "h2",
            "h3", "h4", "p", "ul", "ol", "li", "dl", "div",
        "figure", "figcaption", "table", "caption", "thead", "tbody", "tr", "svg", "form", "fieldset", "legend",
    ];

    /// <summary>A whole page.</summary>
    public static string Render(XElement html)
    {
        var text = new StringBuilder("<!DOCTYPE html>");
        Write(html, text);
        return text.Append('\n').ToString();
    }

    private static void Write(XElement element, StringBuilder text)
    {
        var name = element.Name.LocalName;
        if (blocks.Contains(name))
            text.Append('\n');
        text.Append('<').Append(name);
        foreach (var attribute in element.Attributes())
            text.Append(' ').Append(attribute.Name.LocalName).Append("=\"").Append(Escaped(attribute.Value)).Append('"');
        text.Append('>');
        if (voidElements.Contains(name))
            return;
        var isRaw = name is "script" or "style";
        foreach (var node in element.Nodes())
        {
            if (node is XElement child)
                Write(child, text);
            else if (node is XText words)
                text.Append(isRaw ? words.Value : Escaped(words.Value));
        }

        text.Append("</").Append(name).Append('>');
    }

    private static string Escaped(string text) => TextSanitizer.Clean(text)
        .Replace("&", "&amp;", StringComparison.Ordinal)
        .Replace("<", "&lt;", StringComparison.Ordinal)
        .Replace(">", "&gt;", StringComparison.Ordinal)
        .Replace("\"", "&quot;", StringComparison.Ordinal);
}
