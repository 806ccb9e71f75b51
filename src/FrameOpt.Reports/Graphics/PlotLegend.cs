using System.Xml.Linq;

namespace FrameOpt.Reports.Graphics;

/// <summary>A key that says which mark is what.</summary>
internal static class PlotLegend
{
    private const double Row = 17;
    private const double Width = 340;

    /// <summary>In two columns.</summary>
    public static XElement Of(string id, string title, IReadOnlyList<(XElement Mark, string Name)> entries)
    {
        var rows = (entries.Count + 1) / 2;
        return new XElement("div", new XAttribute("class", "key"), Svg.Picture(
            id, Width, rows * Row + 2, title, $"Shown are: {string.Join(", ", entries.Select(entry => entry.Name))}.",
                entries.Select((entry, e) => new XElement(
                "g",
                new XAttribute("transform", $"translate({(e < rows ? 2 : Width / 2 - 20)} {Svg.Number(e % rows * Row)})"),
                entry.Mark,
                Svg.Text("axis", 42, 11.5, "start", entry.Name)))));
    }
}
