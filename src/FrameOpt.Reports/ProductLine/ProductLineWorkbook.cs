using ClosedXML.Excel;
using DocumentFormat.OpenXml.Packaging;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.ProductLine;

/// <summary>The spreadsheet of a line, sheets in reading order.</summary>
public static class ProductLineWorkbook
{
    /// <summary>How many customers the workbook holds; customers.csv holds all.</summary>
    public const int MaxCustomers = 10_000;

    /// <summary>Writes the workbook; the same bytes for the same line.</summary>
    /// <param name="report">The line.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(ProductLineReport report, Stream stream)
    {
        using var memory = new MemoryStream();
        var customers = WriteSheets(report, memory);
        using (var document = SpreadsheetDocument.Open(memory, isEditable: true))
        {
            var book = document.WorkbookPart!;
            RowWriter.Append(book, [customers]);
            PrintTitles.MakeAbsolute(book);
            NamedStyles.Add(book);
            CoreProperties.Write(document, report);
        }

        ZipTimestamps.Write(memory);
        memory.Position = 0;
        memory.CopyTo(stream);
    }

    private static DataRows WriteSheets(ProductLineReport report, Stream stream)
    {
        using var book = new XLWorkbook();
        var result = report.Result;
        SummarySheet.Add(book, report, ProductLineAnswer.Of(result));
        GeometriesSheet.Add(book, report);
        FittingChartSheet.Add(book, report);
        var customers = Customers(book, report);
        GainSheet.Add(book, report);
        AssumptionsSheet.Add(book, report);
        CautionsSheet.Add(book, report);
        book.SaveAs(stream, new SaveOptions
        {
            ValidatePackage = false,
            EvaluateFormulasBeforeSaving = false,
            GenerateCalculationChain = false
        });
        return customers;
    }

    private static DataRows Customers(XLWorkbook book, ProductLineReport report)
    {
        var columns = CustomerColumns.Of(report.Result);
        var lines = CustomerAssignment.Of(report.Result);
        var note = "Regret: what a customer gives up against a frame made to measure, whose geometry stands under own. Offsets and angles: right +.";
        if (lines.Count > MaxCustomers)
        {
            lines = [.. lines.OrderByDescending(line => line.Assignments.Cost).Take(MaxCustomers)];
            note = $"The {NumberFormat.Count(MaxCustomers)} customers left with most; customers.csv holds all {NumberFormat.Count(report.Result.Setting.Customers.Count)}. {note}";
        }

        return DataSheet.Add(
            book,
            report,
            "Customers",
            note,
            [.. columns.Select(column => column.FormatCode == DataColumn.TextFormat ? new DataColumn(column.Header, column.FormatCode, 16)
                : DataColumn.OfNumbers(column.Header, column.FormatCode))],
            [.. lines.Select(line => (object[])[.. columns.Select(column => column.Value(line))])]);
    }
}
