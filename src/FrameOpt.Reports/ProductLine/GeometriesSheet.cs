using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The geometries to make, every dimension as a number.</summary>
internal static class GeometriesSheet
{
    private const int Widest = 16;

    public static void Add(XLWorkbook book, ProductLineReport report)
    {
        var (result, study) = (report.Result, report.Study);
        var fields = GeometryFields.Of(study);
        var page = new SheetBuilder(book, report, "Geometries", [11, .. fields.Select(_ => (double)Widest), 12, 12]);
        page.Heading("What to drill and build");
        page.Paragraphs(ProductLineAnswer.Geometries(result).Lines);
        page.Paragraphs([ProductLineText.CommonalityText(result.Setting) is { Length: > 0 } common ? common
            : "Any geometries may go together.", "Offsets and angles: to the pilot's right is +."]);
        page.Table(
            [("geometry", "General"), .. fields.Select(field => ((object)field.Header.Replace('_', ' '), GeometryField.FormatCode)),
                ("customers", "0"), ("share", "0 %")],
            [.. result.Geometries.Select(geometry => (IReadOnlyList<object>)
            [
                geometry.Letter.ToString(), .. fields.Select(field => (object)field.Value(geometry.Design)), (double)geometry.Customers,
                    geometry.Share,
            ])]);
        foreach (var geometry in result.Geometries)
        {
            page.Heading($"Geometry {geometry.Letter}");
            page.Paragraphs(DrillingSection.Of(study, geometry.Design).Lines);
        }
    }
}
