using CsvHelper;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Tables;

/// <summary>A table as CSV, for any program.</summary>
public static class CsvTable
{
    /// <summary>Writes a header with units and one record for each row: UTF-8, plain decimal numbers, nothing where there is no number, no
    /// text that a spreadsheet takes for a formula.</summary>
    /// <param name="table">Of numbers and texts.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(Table table, Stream stream)
    {
        using var csv = CsvWriter.Create(stream, CsvWriterOptions.Default with { NewLine = "\n" }, leaveOpen: true);
        foreach (var column in table.Columns)
            csv.WriteField(TextSanitizer.ForCsv(column.Header));
        csv.EndRecord();
        for (var row = 0; row < table.RowCount; row++)
        {
            foreach (var column in table.Columns)
                csv.WriteField(Field(column.Value(row)));
            csv.EndRecord();
        }
    }

    private static string Field(object cell) => cell is double number
        ? double.IsFinite(number) ? PlainNumber.Text(number) : ""
        : TextSanitizer.ForCsv((string)cell);
}
