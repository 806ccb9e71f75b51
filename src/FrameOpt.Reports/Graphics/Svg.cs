using System.Globalization;
using System.Xml.Linq;

namespace FrameOpt.Reports.Graphics;

/// <summary>Pieces of SVG. Their style comes from classes alone, so that pictures follow light, dark and print.</summary>
internal static class Svg
{
    /// <summary>A coordinate, to a tenth of a unit.</summary>
    /// <remarks>A page has a hundred thousand of them: a whole number of tenths is written several times faster than by a format.</remarks>
    public static string Number(double value)
    {
        if (!(Math.Abs(value) < 1e9))
            return value.ToString("0.#", CultureInfo.InvariantCulture);
        var tenths = (long)Math.Round(10 * Math.Round(value, 1));
        var (whole, rest) = Math.DivRem(Math.Abs(tenths), 10);
        var sign = tenths < 0 ? "-" : "";
        return rest == 0
            ? string.Create(CultureInfo.InvariantCulture, $"{sign}{whole}")
            : string.Create(CultureInfo.InvariantCulture, $"{sign}{whole}.{rest}");
    }

    /// <summary>A whole picture with a description for screen readers.</summary>
    /// <param name="id">Unlike every other on the page.</param>
    /// <param name="width">In picture units; a unit is about a pixel on a phone.</param>
    /// <param name="height">In picture units.</param>
    /// <param name="title">A few words.</param>
    /// <param name="description">What it shows, in figures.</param>
    /// <param name="content">Drawn in order.</param>
    public static XElement Picture(string id, double width, double height, string title, string description,
        IEnumerable<XElement> content) => new(
        "svg",
        new XAttribute("id", id),
        new XAttribute("viewBox", $"0 0 {Number(width)} {Number(height)}"),
        new XAttribute("width", Number(width)),
        new XAttribute("height", Number(height)),
        new XAttribute("role", "img"),
        new XAttribute("aria-labelledby", $"{id}-title {id}-words"),
        new XElement("title", new XAttribute("id", $"{id}-title"), title),
        new XElement("desc", new XAttribute("id", $"{id}-words"), description),
        content);

    public static XElement Group(string cssClass, IEnumerable<XElement> content) => new("g", new XAttribute("class", cssClass), content);

    public static XElement Line(string cssClass, double x1, double y1, double x2, double y2) => new(
        "line",
        new XAttribute("class", cssClass),
        new XAttribute("x1", Number(x1)),
        new XAttribute("y1", Number(y1)),
        new XAttribute("x2", Number(x2)),
        new XAttribute("y2", Number(y2)));

    public static XElement Rectangle(string cssClass, double x, double y, double width, double height) => new(
        "rect",
        new XAttribute("class", cssClass),
        new XAttribute("x", Number(x)),
        new XAttribute("y", Number(y)),
        new XAttribute("width", Number(Math.Max(0, width))),
        new XAttribute("height", Number(Math.Max(0, height))));

    public static XElement Circle(string cssClass, double x, double y, double radius) => new(
        "circle", new XAttribute("class", cssClass), new XAttribute("cx", Number(x)), new XAttribute("cy", Number(y)),
            new XAttribute("r", Number(radius)));

    public static XElement Path(string cssClass, string path) => new("path", new XAttribute("class", cssClass), new XAttribute("d", path));

    /// <summary>A line through points; broken where one is not a number.</summary>
    public static XElement Curve(string cssClass, IEnumerable<(double X, double Y)> points)
    {
        var path = new System.Text.StringBuilder();
        var isBroken = true;
        foreach (var (x, y) in points)
        {
            if (double.IsFinite(x) && double.IsFinite(y))
                path.Append(isBroken ? 'M' : 'L').Append(Number(x)).Append(' ').Append(Number(y));
            isBroken = !double.IsFinite(x) || !double.IsFinite(y);
        }

        return Path(cssClass, path.ToString());
    }

    /// <summary>Text with its base line at a place.</summary>
    /// <param name="cssClass">Class.</param>
    /// <param name="x">Where it is anchored.</param>
    /// <param name="y">Its base line.</param>
    /// <param name="anchor">start, middle or end.</param>
    /// <param name="text">One line.</param>
    public static XElement Text(string cssClass, double x, double y, string anchor, string text) => new(
        "text", new XAttribute("class", cssClass), new XAttribute("x", Number(x)), new XAttribute("y", Number(y)),
            new XAttribute("text-anchor", anchor), text);

    /// <summary>About how wide a text of the usual size is.</summary>
    public static double Width(string text) => 5.7 * text.Length;
}
