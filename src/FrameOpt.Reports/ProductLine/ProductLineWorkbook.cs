using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The spreadsheet of a line, sheets in reading order.</summary>
public static class ProductLineWorkbook
{
    /// <summary>How many customers the workbook holds; customers.csv holds all.</summary>
    public const int MaxCustomers = 10_000;

    private const double GeometryWidth = 16;

    /// <summary>Writes the workbook; the same bytes for the same line.</summary>
    /// <param name="report">The line.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(ProductLineReport report, Stream stream)
    {
        var result = report.Result;
        Spreadsheet.Write(result.Study, report.Info, book =>
        {
            SummarySheet.Add(book, ProductLineAnswer.Of(result));
            AddGeometries(book, result);
            FittingChartSheet.Add(book, result);
            LiveLineSheet.Add(book, result);
            AddCustomers(book, result);
            AddGain(book, result);
            ReferenceSheets.AddAssumptions(book, result.Study);
            ReferenceSheets.AddCautions(book, result.Study);
        }, stream);
    }

    /// <summary>The geometries to make, every dimension as a number.</summary>
    private static void AddGeometries(Spreadsheet book, ProductLineResult result)
    {
        var geometries = result.Geometries;
        var dimensions = GeometryColumns.Of(result.Study, row => geometries[row].Design);
        var page = new SheetBuilder(book, "Geometries", [11, 20, .. dimensions.Select(_ => GeometryWidth), 12, 12]);
        page.Heading("What to drill and build");
        page.Paragraphs(ProductLineAnswer.Geometries(result).Lines);
        page.Paragraphs([ProductLineText.CommonalityText(result.Setting) is { Length: > 0 } common ? common
            : "Geometries may be combined freely.", "Offsets and angles are positive to the pilot's right."]);
        page.Table(new Table(
            [
                Column.OfTexts("geometry", row => geometries[row].Name),
                Column.OfTexts("propeller turns", row => ServedRotation.Cell(geometries[row])),
                .. dimensions.Select(column => column with { Name = column.Name.Replace('_', ' ') }),
                Column.OfNumbers(result.Setting.InPieces ? "pieces" : "weight", "0.##",
                    row => geometries[row].Share * result.Setting.Customers.Sum(customer => customer.Share)),
                Column.OfNumbers("share", "0 %", row => geometries[row].Share),
            ],
            geometries.Count));
        foreach (var geometry in geometries)
        {
            page.Heading($"Geometry {geometry.Name}");
            page.Paragraphs(geometry.Rotations
                .SelectMany(rotation =>
                    DrillingSection.Of(ServedRotation.On(result.Study, rotation), result.Study.Factors, geometry.Design).Lines)
                .Distinct());
        }
    }

    private static void AddCustomers(Spreadsheet book, ProductLineResult result)
    {
        var all = result.Setting.Customers.Count;
        var note = "Regret: what a customer loses compared with a made-to-measure frame, whose geometry is in the columns own. Offsets "
            + "and angles: right +.";
        if (all > MaxCustomers)
            note = $"The {NumberFormat.Count(MaxCustomers)} customers with the highest cost; customers.csv contains all "
                + $"{NumberFormat.Count(all)}. {note}";
        DataSheet.Add(book, "Customers", note, CustomerTable.WorstServed(result, MaxCustomers));
    }

    /// <summary>Gain from each additional geometry.</summary>
    private static void AddGain(Spreadsheet book, ProductLineResult result)
    {
        var (setting, curve) = (result.Setting, result.Curve);
        var unit = setting.CostResponse.Response.Unit;
        var format = NumberFormat.FormatCode(unit);
        var page = new SheetBuilder(book, "Gain", [14, 26, 22, 22, 40]);
        page.Heading("Gain from each additional geometry");
        page.Paragraphs(
            [.. ProductLineAnswer.Gain(result).Lines,
            $"Value: {ProductLineText.Value(setting)}. No selection with that number of geometries is below the proven bound."]);
        page.Table(new Table(
            [
                Column.OfNumbers("geometries", "0", row => curve[row].Count),
                Column.OfNumbers("value", unit, format, row => curve[row].Solution.Value),
                Column.OfNumbers("gain from the last", unit, format, row => curve[row].Gain ?? double.NaN),
                Column.OfNumbers("proven bound", unit, format, row => curve[row].Solution.Bound),
                Column.OfTexts("proof", row => ProductLineOptimality.Status(curve[row].Solution)),
            ],
            curve.Count));
    }
}
