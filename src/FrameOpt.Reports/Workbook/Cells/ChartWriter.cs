using System.Xml.Linq;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>Adds charts to the sheets of a package that ClosedXML made: it writes none itself.</summary>
internal static class ChartWriter
{
    private const int ColumnsWide = 10;
    private const int RowsHigh = 22;
    private static readonly XNamespace xdr = "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
    private static readonly XNamespace a = "http://schemas.openxmlformats.org/drawingml/2006/main";
    private static readonly XNamespace c = "http://schemas.openxmlformats.org/drawingml/2006/chart";
    private static readonly XNamespace r = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /// <summary>Adds the charts, each on its sheet.</summary>
    public static void Write(WorkbookPart book, IReadOnlyList<PlacedChart> charts)
    {
        foreach (var onSheet in charts.GroupBy(chart => chart.SheetName))
        {
            var sheet = CellWriter.Sheet(book, onSheet.Key);
            var drawing = sheet.AddNewPart<DrawingsPart>("drawing1");
            Save(drawing, new XElement(
                xdr + "wsDr",
                new XAttribute(XNamespace.Xmlns + "xdr", xdr),
                new XAttribute(XNamespace.Xmlns + "a", a),
                onSheet.Select((chart, i) => Anchor(drawing, chart, i))));
            sheet.Worksheet.AddChild(new Drawing { Id = sheet.GetIdOfPart(drawing) });
            sheet.Worksheet.Save();
        }
    }

    private static XElement Anchor(DrawingsPart drawing, PlacedChart chart, int index)
    {
        var part = drawing.AddNewPart<ChartPart>(FormattableString.Invariant($"chart{index + 1}"));
        Save(part, chart.Xml);
        XElement Zero(XName name, string one, string two) => new(name, new XAttribute(one, 0), new XAttribute(two, 0));
        return new XElement(
            xdr + "twoCellAnchor",
            Corner("from", chart.Column - 1, chart.Row - 1),
            Corner("to", chart.Column - 1 + ColumnsWide, chart.Row - 1 + RowsHigh),
            new XElement(
                xdr + "graphicFrame", new XAttribute("macro", ""),
                new XElement(
                    xdr + "nvGraphicFramePr",
                    new XElement(xdr + "cNvPr", new XAttribute("id", index + 2), new XAttribute("name", $"Chart {index + 1}"),
                        new XAttribute("descr", chart.Name)),
                    new XElement(xdr + "cNvGraphicFramePr")),
                new XElement(xdr + "xfrm", Zero(a + "off", "x", "y"), Zero(a + "ext", "cx", "cy")),
                new XElement(
                    a + "graphic",
                    new XElement(
                        a + "graphicData", new XAttribute("uri", c.NamespaceName),
                        new XElement(
                            c + "chart",
                            new XAttribute(XNamespace.Xmlns + "c", c),
                            new XAttribute(XNamespace.Xmlns + "r", r),
                            new XAttribute(r + "id", drawing.GetIdOfPart(part)))))),
            new XElement(xdr + "clientData"));
    }

    private static XElement Corner(string name, int column, int row) =>
        new(xdr + name, new XElement(xdr + "col", column), new XElement(xdr + "colOff", 0), new XElement(xdr + "row", row),
            new XElement(xdr + "rowOff", 0));

    private static void Save(OpenXmlPart part, XElement xml)
    {
        using var stream = part.GetStream(FileMode.Create);
        new XDocument(new XDeclaration("1.0", "utf-8", "yes"), xml).Save(stream, SaveOptions.DisableFormatting);
    }
}
