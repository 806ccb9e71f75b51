using System.Xml.Linq;

namespace FrameOpt.Reports.Graphics;

/// <summary>Markers of points, distinguished by shape as well as by colour.</summary>
internal static class PlotMarker
{
    public const string Square = "M-4.5-4.5H4.5V4.5H-4.5Z";
    public const string Diamond = "M0-5L5 0L0 5L-5 0Z";
    public const string Cross = "M-4.5-4.5L4.5 4.5M-4.5 4.5L4.5-4.5";
    public const string Triangle = "M0-5.5L5 4H-5Z";
    public const string Ring = "M-8 0A8 8 0 1 1 8 0A8 8 0 1 1-8 0Z";
    public const string Dot = "M-2.4 0A2.4 2.4 0 1 1 2.4 0A2.4 2.4 0 1 1-2.4 0Z";

    /// <summary>A marker at a place.</summary>
    public static XElement At(string cssClass, string shape, double x, double y) => new(
        "path", new XAttribute("class", cssClass), new XAttribute("d", shape),
            new XAttribute("transform", $"translate({Svg.Number(x)} {Svg.Number(y)})"));
}

/// <summary>A key that explains the markers.</summary>
internal static class PlotLegend
{
    private const double Row = 17;
    private const double Width = 340;

    /// <summary>In two columns.</summary>
    public static XElement Of(string id, string title, IReadOnlyList<(XElement Mark, string Name)> entries)
    {
        var rows = (entries.Count + 1) / 2;
        return new XElement("div", new XAttribute("class", "key"), Svg.Picture(
            id, Width, rows * Row + 2, title, $"Symbols: {string.Join(", ", entries.Select(entry => entry.Name))}.",
                entries.Select((entry, e) => new XElement(
                "g",
                new XAttribute("transform", $"translate({(e < rows ? 2 : Width / 2 - 20)} {Svg.Number(e % rows * Row)})"),
                entry.Mark,
                Svg.Text("axis", 42, 11.5, "start", entry.Name)))));
    }
}
