using System.Xml.Linq;
using FrameOpt.Reports.Answer;

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

    /// <summary>What belongs together.</summary>
    public static XElement Block(string cssClass, params IEnumerable<XElement?> content) =>
        new("div", new XAttribute("class", cssClass), content);

    public static XElement Heading(string title) => new("h3", title);

    public static XElement Paragraph(string text) => new("p", text);

    public static XElement Paragraph(string cssClass, string text) => new("p", new XAttribute("class", cssClass), text);

    public static XElement List(IEnumerable<string> lines) => new("ul", lines.Select(line => new XElement("li", line)));

    /// <summary>A section of the answer without its title: the lines, each a paragraph, then the table.</summary>
    public static XElement SectionBody(AnswerSection section) => Block(
        "words", Block("lines", section.Lines.Select(Paragraph)),
            section.Table is { } table ? Table(section.Title, table.Headers, table.Rows) : null);

    /// <summary>A table whose first column names the rows. Where it is wider than the screen it can be moved, by keyboard too.</summary>
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
