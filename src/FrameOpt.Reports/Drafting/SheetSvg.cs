using System.Text;
using System.Xml;
using System.Xml.Linq;

namespace FrameOpt.Reports.Drafting;

/// <summary>A sheet as SVG in mm.</summary>
internal static class SheetSvg
{
    private static readonly XNamespace svg = "http://www.w3.org/2000/svg";

    /// <summary>Writes it.</summary>
    public static void Write(Sheet sheet, Stream stream)
    {
        using var writer = XmlWriter.Create(stream, new XmlWriterSettings
        {
            Encoding = new UTF8Encoding(false),
            Indent = true,
            NewLineChars = "\n",
            CloseOutput = false,
        });
        Picture(sheet).Save(writer);
    }

    private static XElement Picture(Sheet sheet) => new(
        svg + "svg",
        new XAttribute("width", $"{Sheet.Number(sheet.Width)}mm"),
        new XAttribute("height", $"{Sheet.Number(sheet.Height)}mm"),
        new XAttribute("viewBox", $"0 0 {Sheet.Number(sheet.Width)} {Sheet.Number(sheet.Height)}"),
        new XElement(svg + "title", sheet.Title),
        new XElement(svg + "rect", new XAttribute("width", "100%"), new XAttribute("height", "100%"), new XAttribute("fill", "white")),
        new XElement(
            svg + "g",
            new XAttribute("fill", "none"),
            new XAttribute("stroke", "black"),
            new XAttribute("font-family", "'DejaVu Sans Condensed', 'Arial Narrow', sans-serif"),
            sheet.Marks.Select(mark => Element(mark, sheet.Height))));

    private static XElement Element(Mark mark, double height) => mark switch
    {
        Mark.Line line => new XElement(
            svg + "path",
            new XAttribute("d", "M" + string.Join('L', line.Points.Select(point =>
                $"{Sheet.Number(point.X)} {Sheet.Number(height - point.Y)}")) + (line.IsFilled ? "Z" : "")),
            Style(line.Pen, line.IsFilled)),
        Mark.Circle circle => new XElement(
            svg + "circle",
            new XAttribute("cx", Sheet.Number(circle.X)),
            new XAttribute("cy", Sheet.Number(height - circle.Y)),
            new XAttribute("r", Sheet.Number(circle.Radius)),
            Style(circle.Pen, circle.IsFilled)),
        Mark.Text text => Words(text, height),
        _ => throw new ArgumentOutOfRangeException(nameof(mark)),
    };

    /// <summary>The length is given too: whatever font a reader has, the text keeps its room.</summary>
    private static XElement Words(Mark.Text text, double height)
    {
        var (x, y) = (Sheet.Number(text.X), Sheet.Number(height - text.Y));
        return new XElement(
            svg + "text",
            new XAttribute("x", x),
            new XAttribute("y", y),
            new XAttribute("font-size", Sheet.Number(text.Height * SheetFont.SizePerCapital)),
            new XAttribute("textLength", Sheet.Number(text.Length)),
            new XAttribute("lengthAdjust", "spacingAndGlyphs"),
            new XAttribute("fill", "black"),
            new XAttribute("stroke", "none"),
            text.IsUpright ? new XAttribute("transform", $"rotate(-90 {x} {y})") : null,
            text.Words);
    }

    private static IEnumerable<XAttribute> Style(Pen pen, bool isFilled)
    {
        yield return new XAttribute("class", pen.Layer);
        yield return new XAttribute("stroke-width", Sheet.Number(pen.WidthMillimetres));
        if (pen.Dashes.Count > 0)
            yield return new XAttribute("stroke-dasharray", string.Join(' ', pen.Dashes.Select(Sheet.Number)));
        if (isFilled)
            yield return new XAttribute("fill", "black");
    }
}
