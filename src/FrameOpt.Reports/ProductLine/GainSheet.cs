using ClosedXML.Excel;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.ProductLine;

/// <summary>What each further geometry buys.</summary>
internal static class GainSheet
{
    public static void Add(XLWorkbook book, ProductLineReport report)
    {
        var (result, setting) = (report.Result, report.Result.Setting);
        var unit = setting.CostResponse.Response.Unit;
        var format = NumberFormat.FormatCode(unit);
        string Header(string words) => unit.Length > 0 ? $"{words} [{unit}]" : words;
        var page = new SheetBuilder(book, report, "Gain", [14, 26, 22, 22, 40]);
        page.Heading("What each further geometry buys");
        page.Paragraphs(
            [.. ProductLineAnswer.Gain(result).Lines,
            $"Value: {ProductLineText.Value(setting)}. No choice of so many geometries is below the proven bound."]);
        page.Table(
            [("geometries", "0"), (Header("value"), format), (Header("gain of the last"), format), (Header("proven bound"), format),
                ("how sure", "General")],
            [.. result.Curve.Select(point => (IReadOnlyList<object>)
                [(double)point.Count, point.Solution.Value, point.Gain ?? double.NaN, point.Solution.Bound,
                    ProductLineOptimality.Status(point.Solution)])]);
    }
}
