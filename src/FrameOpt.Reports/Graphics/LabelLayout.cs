using System.Globalization;
using System.Xml.Linq;

namespace FrameOpt.Reports.Graphics;

/// <summary>Keeps the labels of a picture from touching: one that would cover another moves up or down.</summary>
internal static class LabelLayout
{
    private const double Step = 1;

    /// <summary>Width of a letter over the size of the text: of figures in common fonts, which are wider than most words.</summary>
    private const double LetterWidth = 0.62;

    /// <summary>The same of bold letters.</summary>
    private const double BoldLetterWidth = 0.7;

    /// <summary>Classes of labels that stay where they are, then those that give way to them.</summary>
    private static readonly string[] order = ["note", "name", "figure", "small"];

    /// <summary>The same content, in the same order, with its labels apart.</summary>
    /// <param name="height">Of the picture: no label leaves it.</param>
    /// <param name="content">Labels that stand directly in the picture are moved; others and lines stay.</param>
    public static IReadOnlyList<XElement> Apart(double height, IReadOnlyList<XElement> content)
    {
        var placed = new List<LabelBox>();
        var labels = content.Where(element => element.Name == "text" && Rank(element) >= 0).OrderBy(Rank);
        foreach (var label in labels)
        {
            var box = LabelBox.Of(label);
            var shift = Shifts(height).FirstOrDefault(shift => Fits(box.Moved(shift), placed, height));
            placed.Add(box.Moved(shift));
            label.SetAttributeValue("y", Svg.Number(Number(label, "y") + shift));
        }

        return content;
    }

    /// <summary>Where a label lies, in picture units.</summary>
    internal readonly record struct LabelBox(double Left, double Top, double Right, double Bottom)
    {
        /// <summary>About, from its text, its class and its anchor.</summary>
        public static LabelBox Of(XElement label)
        {
            var (size, letter) = label.Attribute("class")?.Value is "small" or "note" ? (9.5, LetterWidth) : (10.5, BoldLetterWidth);
            var width = letter * size * label.Value.Length;
            var (x, y) = (Number(label, "x"), Number(label, "y"));
            var left = label.Attribute("text-anchor")?.Value switch { "end" => x - width, "middle" => x - width / 2, _ => x };
            return new LabelBox(left, y - 0.8 * size, left + width, y + 0.2 * size);
        }

        public LabelBox Moved(double down) => this with { Top = Top + down, Bottom = Bottom + down };

        public bool Touches(LabelBox other) =>
            Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;
    }

    private static bool Fits(LabelBox box, List<LabelBox> placed, double height) =>
        box.Top >= 0 && box.Bottom <= height && !placed.Exists(box.Touches);

    /// <summary>Nowhere, then a little down, a little up, and so on.</summary>
    private static IEnumerable<double> Shifts(double height)
    {
        yield return 0;
        for (var shift = Step; shift < height; shift += Step)
        {
            yield return shift;
            yield return -shift;
        }
    }

    private static int Rank(XElement label) => Array.IndexOf(order, label.Attribute("class")?.Value);

    private static double Number(XElement label, string name) =>
        double.Parse(label.Attribute(name)!.Value, CultureInfo.InvariantCulture);
}
