using System.Text;
using System.Xml;
using System.Xml.Linq;
using FrameOpt.Reports.Graphics;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The fitting chart as a drawing: pilot mass down, engines across, a letter and a hole in every cell.</summary>
internal static class FittingChartDrawing
{
    private const double Left = 104;
    private const double MinWidth = 640;
    private const double CellWidth = 186;
    private const double LineHeight = 17;
    private const double CellHeight = 36;
    private const double HeadHeight = 26;
    private const int ColumnsAcross = 6;
    private const double NameLeft = 77;
    private const double NameLetter = 6.2;

    /// <summary>Of 20 px: bold letters are wider.</summary>
    private const double TitleSize = 24;

    /// <summary>To fill in by hand: the file is the same whenever it is made.</summary>
    private const string Stamp = "Date: ____________  Revision: ____________  Checked by: ____________";

    /// <summary>Writes fitting-chart.svg, a file by itself to print at any size.</summary>
    public static void Write(ProductLineResult result, Stream stream)
    {
        var drawing = Of(result, isAlone: true);
        drawing.AddFirst(new XElement("style", "svg { font: 12px sans-serif; fill: #000; background: #fff; }\n" + Rules));
        XNamespace space = "http://www.w3.org/2000/svg";
        foreach (var element in drawing.DescendantsAndSelf())
            element.Name = space + element.Name.LocalName;
        var encoding = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        using var writer = XmlWriter.Create(stream, new XmlWriterSettings { Encoding = encoding, Indent = true, NewLineChars = "\n" });
        drawing.Save(writer);
    }

    /// <summary>Looks of the drawing; colours are the same in light and dark because black text stands on them.</summary>
    public static string Rules => FittingChartColours.Rules + """
        .fit-cell { stroke: #000; stroke-width: .8; }
        svg .fit-letter { font-size: 22px; font-weight: bold; fill: #000; stroke: none; }
        svg .fit-hole { font-size: 14px; fill: #000; stroke: none; }
        svg .fit-small { font-size: 11px; font-weight: bold; fill: #000; stroke: none; }
        svg .fit-medium { font-size: 15px; font-weight: bold; fill: #000; stroke: none; }
        svg .fit-fine { font-size: 11px; fill: #000; stroke: none; }
        svg .fit-head { font-size: 14px; font-weight: bold; }
        svg .fit-title { font-size: 20px; font-weight: bold; }
        svg .fit-words { font-size: 12.5px; }

        """;

    /// <summary>The drawing.</summary>
    /// <param name="result">Of the line.</param>
    /// <param name="isAlone">True to put title and explanations on it, where no page has them.</param>
    public static XElement Of(ProductLineResult result, bool isAlone)
    {
        var chart = result.Chart;
        var columns = chart.Blocks.SelectMany(block => block.Columns, (block, column) => new Placed(block, column)).ToList();
        var across = Math.Min(columns.Count, ColumnsAcross);
        var width = Math.Max(MinWidth, Left + across * CellWidth + 8);
        var content = new List<XElement>();
        var y = 4.0;
        if (isAlone)
        {
            y = Lines(content, "fit-title", TextSanitizer.Clean(result.Study.FullTitle), width, TitleSize, 25, y + 22);
            y = Lines(content, "fit-words", FittingChartText.HowToRead, width, 12.5, LineHeight, y);
        }

        var cell = (width - Left - 8) / across;
        foreach (var part in columns.Chunk(across))
            y = Table(content, result, part, cell, y + 8) + 10;
        if (isAlone)
        {
            y += 8;
            foreach (var line in FittingChartText.Notes(result).Append(Stamp))
                y = Lines(content, "fit-words", TextSanitizer.Clean(line), width, 12.5, LineHeight, y + 3);
        }

        return Svg.Picture("fitting", width, y + 4, "Fitting chart",
            TextSanitizer.Clean(string.Join(" ", ProductLineText.Boundaries(result))), content);
    }

    private static double Table(List<XElement> content, ProductLineResult result, IReadOnlyList<Placed> columns, double cell, double y)
    {
        double X(int column) => Left + column * cell;
        if (columns.Any(column => column.Block.Title.Length > 0))
        {
            for (var c = 0; c < columns.Count; c++)
            {
                if (c == 0 || columns[c - 1].Block != columns[c].Block)
                    content.Add(Svg.Text("fit-head", X(c) + 4, y + 17, "start", TextSanitizer.Clean(columns[c].Block.Title)));
            }

            y += HeadHeight - 2;
        }

        content.Add(Svg.Text("fit-head", 4, y + 17, "start", "pilot's mass"));
        for (var c = 0; c < columns.Count; c++)
        {
            content.Add(Svg.Text("fit-head", X(c) + cell / 2, y + 17, "middle", TextSanitizer.Clean(columns[c].Column.Name)));
            content.Add(Svg.Text("fit-fine", X(c) + cell / 2, y + 32, "middle", StudyText.RotationText(columns[c].Column.Rotation)));
        }

        y += HeadHeight + LineHeight - 3;
        foreach (var (from, to) in result.Chart.Bands)
        {
            var most = columns.Max(column => FittingSpan.Between(column.Column.Spans, from, to).Count);
            var height = Math.Max(CellHeight, most * CellHeight * 0.6);
            content.Add(Svg.Text("fit-head", 4, y + height / 2 + 5, "start", FittingChartText.Band(from, to)));
            for (var c = 0; c < columns.Count; c++)
                content.AddRange(Cell(result, FittingSpan.Between(columns[c].Column.Spans, from, to), X(c), y, cell, height));
            y += height;
        }

        return y;
    }

    private static IEnumerable<XElement> Cell(
        ProductLineResult result, IReadOnlyList<FittingSpan> spans, double x, double y, double width, double height)
    {
        var each = height / spans.Count;
        for (var s = 0; s < spans.Count; s++)
        {
            var (span, top) = (spans[s], y + s * each);
            yield return Svg.Rectangle($"{FittingChartColours.Class(span.Geometry)} fit-cell", x, top, width, each);
            if (spans.Count > 1)
            {
                yield return Svg.Text("fit-small", x + 6, top + each / 2 + 4, "start", FittingChartText.Masses(span));
                var name = span.Geometry < 0 ? "none" : ProductLineText.GeometryName(result, span.Geometry);
                yield return Svg.Text(name.Length == 1 ? "fit-medium" : "fit-small",
                    x + NameLeft + (span.Geometry < 0 ? 8 : 0), top + each / 2 + 5, "start", name);
                yield return Svg.Text("fit-fine", x + NameLeft + Math.Max(16, 4 + NameLetter * name.Length), top + each / 2 + 4, "start",
                    FittingChartText.HoleOffset(result, span));
                if (span.Geometry >= 0)
                    yield return Svg.Text("fit-fine", x + width - 4, top + each / 2 + 4, "end",
                        ServedRotation.Signs(result.Geometries[span.Geometry]));
                continue;
            }

            if (span.Geometry < 0)
            {
                var parts = ProductLineText.None.Split(": ");
                yield return Svg.Text("fit-small", x + width / 2, top + each / 2 - 3, "middle", $"{parts[0]}:");
                yield return Svg.Text("fit-small", x + width / 2, top + each / 2 + 11, "middle", parts[1]);
                continue;
            }

            yield return Svg.Text(NameClass(result.Geometries[span.Geometry].Name), x + 8, top + each / 2 + 7, "start",
                result.Geometries[span.Geometry].Name);
            yield return Svg.Text("fit-hole", x + width / 2 + 14, top + each / 2 - 2, "middle", FittingChartText.HoleOffset(result, span));
            yield return Svg.Text("fit-fine", x + width / 2 + 14, top + each / 2 + 13, "middle",
                ServedRotation.Cell(result.Geometries[span.Geometry]));
        }
    }

    /// <summary>A long name is written smaller, so that the hole stands beside it.</summary>
    private static string NameClass(string name) => name.Length < 3 ? "fit-letter" : name.Length < 5 ? "fit-medium" : "fit-small";

    /// <summary>Breaks text into lines; returns the base line of the next.</summary>
    private static double Lines(List<XElement> content, string cssClass, string text, double width, double size, double lineHeight,
        double y)
    {
        var most = (int)((width - 8) / (size * 0.54));
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Append(""))
        {
            if (line.Length > 0 && (word.Length == 0 || line.Length + 1 + word.Length > most))
            {
                content.Add(Svg.Text(cssClass, 4, y, "start", line.ToString()));
                line.Clear();
                y += lineHeight;
            }

            line.Append(line.Length > 0 ? " " : "").Append(word);
        }

        return y;
    }

    private sealed record Placed(FittingBlock Block, FittingColumn Column);
}
