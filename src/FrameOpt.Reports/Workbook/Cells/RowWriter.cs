using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>Writes long tables straight into a saved workbook: cell objects for a hundred thousand numbers would cost seconds.</summary>
internal static partial class RowWriter
{
    private const string EndOfRows = "</x:sheetData>";

    /// <summary>Adds the rows to sheets that hold only a header so far; cells take the style of their column.</summary>
    public static void Append(WorkbookPart book, IReadOnlyList<DataRows> tables)
    {
        foreach (var table in tables)
            Append(Sheet(book, table.SheetName), table);
    }

    /// <summary>The sheet of that name.</summary>
    public static WorksheetPart Sheet(WorkbookPart book, string name) =>
        (WorksheetPart)book.GetPartById(book.Workbook.Descendants<Sheet>().Single(sheet => sheet.Name == name).Id!);

    private static void Append(OpenXmlPart sheet, DataRows table)
    {
        string xml;
        using (var reader = new StreamReader(sheet.GetStream()))
            xml = reader.ReadToEnd();
        var end = xml.IndexOf(EndOfRows, StringComparison.Ordinal);
        if (end < 0)
            throw new InvalidOperationException($"sheet {table.SheetName} has no rows to write after");
        var openings = CellOpenings(XDocument.Parse(xml), table);
        using var writer = new StreamWriter(sheet.GetStream(FileMode.Create), new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        writer.Write(xml.AsSpan(0, end));
        for (var r = 0; r < table.Rows.Count; r++)
            WriteRow(writer, table.FirstRow + r, table.Rows[r], openings);
        writer.Write(xml.AsSpan(end));
    }

    /// <summary>What each column's cells begin with, but for the row number: column letters first, then the style.</summary>
    private static (string Letters, string Style)[] CellOpenings(XDocument sheet, DataRows table)
    {
        var columns = sheet.Root!.Descendants(sheet.Root.Name.Namespace + "col")
            .Select(column => (Min: (int)column.Attribute("min")!, Max: (int)column.Attribute("max")!,
                Style: (string?)column.Attribute("style") ?? "0"))
            .ToList();
        var width = table.Rows.Count == 0 ? 0 : table.Rows[0].Count;
        return [.. Enumerable.Range(1, width).Select(c => (CellAddress.Letters(c),
            columns.First(column => column.Min <= c && c <= column.Max).Style))];
    }

    private static void WriteRow(StreamWriter writer, int row, IReadOnlyList<object> values, (string Letters, string Style)[] columns)
    {
        writer.Write(string.Create(CultureInfo.InvariantCulture, $"<x:row r=\"{row}\">"));
        for (var c = 0; c < values.Count; c++)
        {
            var opening = string.Create(CultureInfo.InvariantCulture, $"<x:c r=\"{columns[c].Letters}{row}\" s=\"{columns[c].Style}\"");
            if (values[c] is double number && double.IsFinite(number))
                writer.Write(string.Create(CultureInfo.InvariantCulture, $"{opening}><x:v>{number:R}</x:v></x:c>"));
            else if (values[c] is string text)
                writer.Write($"{opening} t=\"inlineStr\"><x:is><x:t xml:space=\"preserve\">{Escaped(text)}</x:t></x:is></x:c>");
            else if (values[c] is Formula { Cached: double cached } toNumber)
                writer.Write(
                    string.Create(
                    CultureInfo.InvariantCulture, $"{opening}><x:f>{Escaped(toNumber.Text)}</x:f><x:v>{cached:R}</x:v></x:c>"));
            else if (values[c] is Formula { Cached: string words } toText)
                writer.Write($"{opening} t=\"str\"><x:f>{Escaped(toText.Text)}</x:f><x:v>{Escaped(words)}</x:v></x:c>");
        }

        writer.Write("</x:row>");
    }

    /// <summary>The text as XML; what would read as an escape of the file format (_x0041_) gets its own underscore escaped.</summary>
    private static string Escaped(string text) =>
        FormatEscape().Replace(TextSanitizer.Clean(text), "_x005F_").Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;");

    [GeneratedRegex("_(?=x[0-9A-Fa-f]{4}_)")]
    private static partial Regex FormatEscape();
}
