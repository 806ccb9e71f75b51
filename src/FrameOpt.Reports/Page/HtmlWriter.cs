using System.Text;
using System.Xml.Linq;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Page;

/// <summary>Writes a tree as HTML: the one place where text is escaped.</summary>
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
