using System.Globalization;
using System.Xml.Linq;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Graphics;

namespace FrameOpt.Tests.Reports.Drafting;

/// <summary>What another program reads from a drawing: circles, straight lines and texts in mm, x to the right and y up.</summary>
/// <param name="Width">Of the page.</param>
/// <param name="Height">Of the page.</param>
/// <param name="Circles">Centre, radius, and whether it is black inside.</param>
/// <param name="Lines">Single lines from one end to the other.</param>
/// <param name="Words">All text of the page in one.</param>
public sealed record ReadSheet(
    double Width, double Height, IReadOnlyList<(double X, double Y, double Radius, bool IsFilled)> Circles,
    IReadOnlyList<(double X1, double Y1, double X2, double Y2)> Lines, string Words);

/// <summary>Reads drawings back: PDF with PdfPig, SVG as XML, DXF by its pairs of code and value.</summary>
public static class SheetReader
{
    private const double MillimetresPerPoint = 25.4 / 72;

    public static IReadOnlyList<ReadSheet> Pdf(byte[] file)
    {
        using var document = PdfDocument.Open(file);
        return [.. document.GetPages().Select(page =>
        {
            var parts = page.Paths.SelectMany(path => path.Select(part => (path, part))).ToList();
            return new ReadSheet(
                page.Width * MillimetresPerPoint, page.Height * MillimetresPerPoint,
                [.. parts.Where(pair => pair.part.Commands.OfType<PdfSubpath.CubicBezierCurve>().Any())
                    .Select(pair => Circle(pair.path, pair.part))],
                [.. parts.Where(pair => pair.part.Commands.Count == 2).SelectMany(pair => pair.part.Commands.OfType<PdfSubpath.Line>())
                    .Select(line => (Millimetres(line.From.X), Millimetres(line.From.Y), Millimetres(line.To.X), Millimetres(line.To.Y)))],
                string.Concat(page.Letters.Select(letter => letter.Value)));
        })];
    }

    public static ReadSheet Svg(byte[] file)
    {
        var root = XDocument.Load(new MemoryStream(file)).Root!;
        double[] box = [.. root.Attribute("viewBox")!.Value.Split(' ').Select(Number)];
        Assert.Equal($"{box[2].ToString(CultureInfo.InvariantCulture)}mm", root.Attribute("width")!.Value);
        return new ReadSheet(
            box[2], box[3],
            [.. root.Descendants().Where(element => element.Name.LocalName == "circle").Select(circle => (
                Number(circle, "cx"), box[3] - Number(circle, "cy"), Number(circle, "r"), circle.Attribute("fill") is not null))],
            [.. root.Descendants().Where(element => element.Name.LocalName == "path").Select(path => path.Attribute("d")!.Value)
                .Where(path => path.Count(letter => letter == 'L') == 1)
                .Select(path => path[1..].Split('L', ' ').Select(Number).ToArray())
                .Select(ends => (ends[0], box[3] - ends[1], ends[2], box[3] - ends[3]))],
            string.Concat(root.Descendants().Where(element => element.Name.LocalName == "text").Select(text => text.Value)));
    }

    public static ReadSheet Dxf(byte[] file, string layer)
    {
        var lines = System.Text.Encoding.ASCII.GetString(file).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var entities = new List<Dictionary<int, string>>();
        foreach (var pair in lines.Chunk(2))
        {
            var code = int.Parse(pair[0], CultureInfo.InvariantCulture);
            if (code == 0)
                entities.Add([]);
            entities[^1].TryAdd(code, pair[1]);
        }

        Assert.Equal("EOF", entities[^1][0]);
        var drawn = entities.Where(entity => entity.GetValueOrDefault(8) == layer).ToList();
        return new ReadSheet(
            0, 0,
            [.. drawn.Where(entity => entity[0] == "CIRCLE").Select(circle => (
                Number(circle[10]), Number(circle[20]), Number(circle[40]), false))],
            [.. drawn.Where(entity => entity[0] == "LINE").Select(line => (
                Number(line[10]), Number(line[20]), Number(line[11]), Number(line[21])))],
            string.Concat(entities.Where(entity => entity[0] == "TEXT").Select(text => text[1])));
    }

    private static (double X, double Y, double Radius, bool IsFilled) Circle(PdfPath path, PdfSubpath part)
    {
        var box = part.GetBoundingRectangle()!.Value;
        return (Millimetres((box.Left + box.Right) / 2), Millimetres((box.Bottom + box.Top) / 2), Millimetres(box.Width / 2),
            path.IsFilled);
    }

    private static double Millimetres(double points) => points * MillimetresPerPoint;

    private static double Number(XElement element, string name) => Number(element.Attribute(name)!.Value);

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
