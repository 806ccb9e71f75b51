using System.Globalization;
using System.Xml;
using DocumentFormat.OpenXml;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using FrameOpt.Forms;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Forms;

/// <summary>Reads the cells of a filled form, as any spreadsheet program saves them.</summary>
public static class FilledFormFile
{
    private const long MaxBytes = 20_000_000;

    /// <summary>The cells of a workbook or a CSV file; null, with why, when it is neither.</summary>
    /// <param name="path">Of the file.</param>
    /// <param name="problem">A sentence with how to correct it; empty when it was read.</param>
    public static FilledForm? Read(string path, out string problem) => Read(path, isForm: true, out problem);

    /// <summary>The cells of a table in a workbook or a CSV file; null, with why, when it is neither.</summary>
    /// <param name="path">Of the file.</param>
    /// <param name="problem">A sentence with how to correct it; empty when it was read.</param>
    public static FilledForm? ReadTable(string path, out string problem) => Read(path, isForm: false, out problem);

    private static FilledForm? Read(string path, bool isForm, out string problem)
    {
        problem = "";
        try
        {
            if (new FileInfo(path) is { Length: > MaxBytes })
                problem = "It is too large for a form.";
            else
            {
                var bytes = File.ReadAllBytes(path);
                var name = Path.GetFileName(path);
                return bytes.AsSpan().StartsWith("PK"u8) ? OfWorkbook(name, bytes) : FormCsv.Read(name, bytes, isForm);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            problem = $"It cannot be read: {failure.Message}";
        }
        catch (Exception failure) when (failure is InvalidDataException or XmlException or FormatException or ArgumentException
            or InvalidOperationException or OpenXmlPackageException)
        {
            problem = "It is neither a workbook (.xlsx) nor a CSV file: save it as one of the two.";
        }

        return null;
    }

    private static FilledForm OfWorkbook(string name, byte[] bytes)
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
        var book = document.WorkbookPart ?? throw new InvalidDataException();
        var shared = book.SharedStringTablePart?.SharedStringTable.Elements<SharedStringItem>().Select(Words).ToList() ?? [];
        return new FilledForm(name, false, [.. book.Workbook.Descendants<Sheet>().Select(sheet => sheet.Name!.Value!)
            .Select(sheet => new FilledSheet(sheet, 1, Rows(CellWriter.Sheet(book, sheet), shared)))]);
    }

    /// <summary>The words of a text, without those that say how to pronounce it.</summary>
    private static string Words(OpenXmlElement text) => string.Concat(text.Descendants<DocumentFormat.OpenXml.Spreadsheet.Text>()
        .Where(part => part.Parent is not PhoneticRun).Select(part => part.Text));

    private static List<IReadOnlyList<string>> Rows(WorksheetPart sheet, List<string> shared)
    {
        var rows = new List<IReadOnlyList<string>>();
        foreach (var row in sheet.Worksheet.Descendants<Row>().Take(FormCsv.MaxRows))
        {
            var number = row.RowIndex?.Value ?? (uint)rows.Count + 1;
            while (rows.Count < Math.Min(number - 1, FormCsv.MaxRows))
                rows.Add([]);
            var cells = new List<string>();
            foreach (var cell in row.Elements<Cell>())
            {
                var column = cell.CellReference?.Value is { } reference ? Column(reference) : cells.Count;
                while (cells.Count < Math.Min(column, FormCsv.MaxColumns))
                    cells.Add("");
                if (cells.Count < FormCsv.MaxColumns)
                    cells.Add(Value(cell, shared));
            }

            rows.Add(cells);
        }

        return rows;
    }

    private static string Value(Cell cell, List<string> shared)
    {
        var value = cell.CellValue?.Text ?? "";
        var kind = cell.DataType?.Value ?? CellValues.Number;
        if (kind == CellValues.SharedString)
            return value.Length > 0 ? shared[int.Parse(value, CultureInfo.InvariantCulture)] : "";
        if (kind == CellValues.InlineString)
            return Words(cell);
        if (kind == CellValues.Boolean)
            return value == "1" ? "TRUE" : "FALSE";
        return kind == CellValues.Number && double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? Math.Round(number, 9).ToString(CultureInfo.InvariantCulture) : value;
    }

    private static int Column(string reference) =>
        reference.TakeWhile(char.IsAsciiLetter).Aggregate(0, (column, letter) => 26 * column + char.ToUpperInvariant(letter) - 'A' + 1) - 1;
}
