using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Page;

namespace FrameOpt.Tests.Reports;

/// <summary>A page read back: as text, as a tree, and the data its script reads.</summary>
public sealed partial class PageText
{
    public PageText(RunReport report) : this(ReportPage.Of(report))
    {
    }

    /// <summary>Any page of the program.</summary>
    public PageText(string raw)
    {
        Raw = raw;
        Scripts = [.. ScriptElements().Matches(raw).Select(match => match.Groups["text"].Value)];
        Style = StyleElement().Match(raw).Groups["text"].Value;
        var words = StyleElement().Replace(ScriptElements().Replace(raw, ""), "");
        var plain = Voids().Replace(words, "$&/>").Replace(">/>", "/>").Replace("<!DOCTYPE html>", "");
        Tree = XElement.Parse(plain);
    }

    public string Raw { get; }

    public IReadOnlyList<string> Scripts { get; }

    public string Style { get; }

    public XElement Tree { get; }

    public JsonElement Data => JsonDocument.Parse(Scripts[0]).RootElement;

    /// <summary>The words of every element that holds nothing but words, those that are hidden left out.</summary>
    public HashSet<string> Words => [.. Tree.Descendants().Where(
        element => !element.HasElements && element.AncestorsAndSelf().All(any => any.Attribute("hidden") is null))
        .Select(element => element.Value)];

    public XElement ById(string id) => Tree.Descendants().Single(element => element.Attribute("id")?.Value == id);

    /// <summary>Elements of a class inside another.</summary>
    public static IReadOnlyList<XElement> Of(XElement parent, string look) =>
        [.. parent.Descendants().Where(element => element.Attribute("class")?.Value == look)];

    public static double Number(XElement element, string attribute) =>
        double.Parse(element.Attribute(attribute)!.Value, System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>The page with another design shown, put together as the script does it.</summary>
    public PageText Showing(int design)
    {
        var page = new PageText(Raw);
        string? Value(string slot)
        {
            var number = int.Parse(slot, System.Globalization.CultureInfo.InvariantCulture);
            var own = page.Data.GetProperty("designs")[design].GetProperty("values")[number].GetString();
            return own is null ? null : page.Data.GetProperty("slots")[number][0].GetString() + own
                + page.Data.GetProperty("slots")[number][1].GetString();
        }

        foreach (var element in page.Tree.Descendants().ToList())
        {
            if (element.Attribute("data-t") is { } text)
                element.Value = Value(text.Value)!;
            foreach (var mark in element.Attribute("data-a")?.Value.Split(' ') ?? [])
                element.SetAttributeValue(mark.Split(':')[0], Value(mark.Split(':')[1]));
        }

        return page;
    }

    [GeneratedRegex("<script[^>]*>(?<text>.*?)</script>", RegexOptions.Singleline)]
    private static partial Regex ScriptElements();

    [GeneratedRegex("<style>(?<text>.*?)</style>", RegexOptions.Singleline)]
    private static partial Regex StyleElement();

    [GeneratedRegex("<(meta|input)[^>]*>")]
    private static partial Regex Voids();
}
