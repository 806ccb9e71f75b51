using System.Globalization;
using System.Xml.Linq;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.Charts;

/// <summary>Native charts as the parts of a spreadsheet file.</summary>
/// <remarks>Source: ECMA-376 part 1, chapter 21.2, DrawingML charts.</remarks>
internal static class ChartXml
{
    private const string XAxisId = "111111111";
    private const string YAxisId = "222222222";
    /// <summary>Right, left, above, below in turn, so that labels of near points do not lie on each other.</summary>
    private static readonly string[] labelPositions = ["r", "l", "t", "b"];
    private static readonly XNamespace c = "http://schemas.openxmlformats.org/drawingml/2006/chart";
    private static readonly XNamespace a = "http://schemas.openxmlformats.org/drawingml/2006/main";

    /// <summary>Points across and up.</summary>
    public static XElement Scatter(string title, ChartAxis x, ChartAxis y, IReadOnlyList<ChartSeries> series) => ChartSpace(title,
        new XElement(c + "scatterChart", Value("scatterStyle", "lineMarker"), Value("varyColors", "0"), series.Select(ScatterSeries),
            Value("axId", XAxisId), Value("axId", YAxisId)),
        ValueAxis(x, XAxisId, YAxisId, "b"),
        ValueAxis(y, YAxisId, XAxisId, "l"));

    /// <summary>Bars for each category: side by side and up, or over each other and across with the first category on top.</summary>
    public static XElement Bars(
        string title, string categories, ChartAxis y, IReadOnlyList<ChartSeries> series, bool isHorizontal = false) => ChartSpace(title,
        new XElement(
            c + "barChart", Value("barDir", isHorizontal ? "bar" : "col"), Value("grouping", "clustered"), Value("varyColors", "0"),
                series.Select(BarSeries), Value("gapWidth", "80"), isHorizontal ? Value("overlap", "100") : null,
            Value("axId", XAxisId), Value("axId", YAxisId)),
        new XElement(
            c + "catAx", Value("axId", XAxisId), new XElement(c + "scaling", Value("orientation", isHorizontal ? "maxMin" : "minMax")),
                Value("delete", "0"), Value("axPos", isHorizontal ? "l" : "b"), categories.Length > 0 ? Title(categories, 1000) : null,
            Value("majorTickMark", "none"), Value("minorTickMark", "none"), Value("tickLblPos", "low"), Value("crossAx", YAxisId),
                Value("crosses", "autoZero")),
        ValueAxis(y, YAxisId, XAxisId, isHorizontal ? "b" : "l"));

    private static XElement ChartSpace(string title, params XElement[] plot) => new(
        c + "chartSpace",
        new XAttribute(XNamespace.Xmlns + "c", c), new XAttribute(XNamespace.Xmlns + "a", a),
        Value("roundedCorners", "0"),
        new XElement(
            c + "chart",
            Title(title, 1200),
            Value("autoTitleDeleted", "0"),
            new XElement(c + "plotArea", new XElement(c + "layout"), plot),
            new XElement(c + "legend", Value("legendPos", "b"), Value("overlay", "0")),
            Value("plotVisOnly", "1"),
            Value("dispBlanksAs", "gap")),
        new XElement(c + "spPr", Fill("FFFFFF"), new XElement(a + "ln", new XAttribute("w", 9525), Fill("BFBFBF"))),
        new XElement(c + "txPr", new XElement(a + "bodyPr"), new XElement(a + "lstStyle"),
            new XElement(a + "p", new XElement(a + "pPr", Run("defRPr", 1000)),
            new XElement(a + "endParaRPr", new XAttribute("lang", "en-GB")))));

    private static XElement ScatterSeries(ChartSeries series, int index) => new(
        c + "ser", SeriesHeader(series, index),
        new XElement(c + "spPr", Line(series.Style)),
        Marker(series.Style),
        Labels(series),
        new XElement(c + "xVal", Data(series.X)),
        new XElement(c + "yVal", Data(series.Y)),
        Value("smooth", "0"));

    private static XElement BarSeries(ChartSeries series, int index) => new(
        c + "ser", SeriesHeader(series, index),
        new XElement(c + "spPr", BarFill(series.Style), new XElement(a + "ln", new XAttribute("w", 9525), Fill(series.Style.Colour))),
        Value("invertIfNegative", "0"),
        Band(series),
        new XElement(c + "cat", Data(series.X)),
        new XElement(c + "val", Data(series.Y)));

    private static XElement? Band(ChartSeries series) => series.Band is not { } band ? null : new XElement(
        c + "errBars", Value("errBarType", "both"), Value("errValType", "cust"), Value("noEndCap", "0"),
        new XElement(c + "plus", Data(band.Beyond)), new XElement(c + "minus", Data(band.Back)),
        new XElement(c + "spPr", Line(new SeriesStyle(Palette.Black, LinePoints: 1))));

    private static XElement[] SeriesHeader(ChartSeries series, int index) =>
        [Value("idx", Text(index)), Value("order", Text(index)), new XElement(c + "tx", new XElement(c + "v", series.Name))];

    private static XElement Marker(SeriesStyle style) => style.Marker is null
        ? new XElement(c + "marker", Value("symbol", "none"))
        : new XElement(
            c + "marker", Value("symbol", style.Marker), Value("size", Text(style.MarkerPoints)),
            new XElement(c + "spPr", style.Marker == "x" ? new XElement(a + "noFill") : Fill(style.Colour),
                new XElement(a + "ln", new XAttribute("w", 12700), Fill(style.Marker == "x" ? style.Colour : "FFFFFF"))));

    private static XElement? Labels(ChartSeries series) => series.Labels.Count == 0 ? null : new XElement(
        c + "dLbls",
        series.Labels.Select((label, i) => new XElement(
            c + "dLbl", Value("idx", Text(i)), new XElement(c + "tx", RichText(label, 900)),
                Value("dLblPos", labelPositions[i % labelPositions.Length]),
            Value("showLegendKey", "0"), Value("showVal", "1"), Value("showCatName", "0"), Value("showSerName", "0"),
                Value("showPercent", "0"), Value("showBubbleSize", "0"))),
        Value("showLegendKey", "0"), Value("showVal", "0"), Value("showCatName", "0"), Value("showSerName", "0"),
            Value("showPercent", "0"), Value("showBubbleSize", "0"));

    private static XElement Line(SeriesStyle style) => style.LinePoints == 0
        ? new XElement(a + "ln", new XAttribute("w", 19050), new XElement(a + "noFill"))
        : new XElement(a + "ln", new XAttribute("w", Text((int)(12700 * style.LinePoints))), Fill(style.Colour),
            new XElement(a + "prstDash", new XAttribute("val", style.Dash)));

    private static XElement BarFill(SeriesStyle style) => style.Pattern is null ? Fill(style.Colour) : new XElement(
        a + "pattFill", new XAttribute("prst", style.Pattern),
        new XElement(a + "fgClr", new XElement(a + "srgbClr", new XAttribute("val", style.Colour))),
        new XElement(a + "bgClr", new XElement(a + "srgbClr", new XAttribute("val", "FFFFFF"))));

    private static XElement Fill(string colour) => new(a + "solidFill", new XElement(a + "srgbClr", new XAttribute("val", colour)));

    private static XElement Data(CellRange column) => column.IsText
        ? new XElement(c + "strRef", new XElement(c + "f", column.Reference), new XElement(c + "strCache", Points(column)))
        : new XElement(c + "numRef", new XElement(c + "f", column.Reference),
            new XElement(c + "numCache", new XElement(c + "formatCode", "General"), Points(column)));

    private static IEnumerable<XElement> Points(CellRange column) => column.Values
        .Select((value, i) => (Index: i, Text: value is double number ? double.IsFinite(number)
            ? number.ToString("R", CultureInfo.InvariantCulture) : null : (string)value))
        .Where(point => point.Text is not null)
        .Select(point => new XElement(c + "pt", new XAttribute("idx", point.Index), new XElement(c + "v", point.Text)))
        .Prepend(Value("ptCount", Text(column.Values.Count)));

    private static XElement ValueAxis(ChartAxis axis, string id, string crosses, string side) => new(
        c + "valAx",
        Value("axId", id),
        new XElement(c + "scaling", Value("orientation", "minMax"),
            axis.Range is { } range ? (XElement[])[Value("max", Text(range.To)), Value("min", Text(range.From))] : null),
        Value("delete", "0"),
        Value("axPos", side),
        new XElement(c + "majorGridlines", new XElement(c + "spPr", new XElement(a + "ln", new XAttribute("w", 6350), Fill("D9D9D9")))),
        Title(axis.Title, 1000),
        new XElement(c + "numFmt", new XAttribute("formatCode", axis.FormatCode), new XAttribute("sourceLinked", "0")),
        Value("majorTickMark", "out"), Value("minorTickMark", "none"), Value("tickLblPos", "low"),
        Value("crossAx", crosses), Value("crosses", "autoZero"),
            Value("crossBetween", side == "l" && axis.Range is null && crosses == XAxisId ? "between" : "midCat"));

    private static XElement Title(string text, int size) =>
        new(c + "title", new XElement(c + "tx", RichText(text, size)), Value("overlay", "0"));

    private static XElement RichText(string text, int size) => new(
        c + "rich", new XElement(a + "bodyPr"), new XElement(a + "lstStyle"),
        new XElement(a + "p", new XElement(a + "pPr", Run("defRPr", size)),
            new XElement(a + "r", Run("rPr", size), new XElement(a + "t", TextSanitizer.Clean(text)))));

    private static XElement Run(string name, int size) =>
        new(a + name, name == "rPr" ? new XAttribute("lang", "en-GB") : null, new XAttribute("sz", size), new XAttribute("b", "0"));

    private static XElement Value(string name, string value) => new(c + name, new XAttribute("val", value));

    private static string Text(double value) => value.ToString("R", CultureInfo.InvariantCulture);
}
