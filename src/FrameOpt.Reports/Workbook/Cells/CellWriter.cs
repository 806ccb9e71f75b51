using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>Writes formulas and long tables into the sheets of a package that ClosedXML made.</summary>
internal static partial class CellWriter
{
    private const string EndOfRows = "</x:sheetData>";

    /// <summary>Puts formulas with their values into cells that exist; other cells stay as they are. ClosedXML 0.95 would save them without
    /// values.</summary>
    public static void Write(WorkbookPart book, IReadOnlyList<PlacedFormula> formulas)
    {
        foreach (var onSheet in formulas.GroupBy(formula => formula.SheetName))
        {
            var part = Sheet(book, onSheet.Key);
            var cells = part.Worksheet.Descendants<Cell>().ToDictionary(cell => cell.CellReference!.Value!);
            foreach (var formula in onSheet)
                Write(cells[CellAddress.Relative(formula.Row, formula.Column)], formula.Formula);
            part.Worksheet.Save();
            part.UnloadRootElement();
        }
    }

    private static void Write(Cell cell, Formula formula)
    {
        cell.RemoveAllChildren();
        cell.CellFormula = new CellFormula(formula.Text);
        cell.DataType = formula.Cached is string ? CellValues.String : null;
        cell.CellValue = formula.Cached is double number ? new CellValue(number) : new CellValue((string)formula.Cached);
    }

    /// <summary>The sheet of that name.</summary>
    public static WorksheetPart Sheet(WorkbookPart book, string name) =>
        (WorksheetPart)book.GetPartById(book.Workbook.Descendants<Sheet>().Single(sheet => sheet.Name == name).Id!);

    /// <summary>Copies a sheet that holds nothing below the header of a table, with the rows of the table; cells take the style of their
    /// column. Cell objects for a hundred thousand numbers would cost seconds, so this is text.</summary>
    public static void CopyWithRows(Stream sheet, PlacedTable table, Stream copy)
    {
        using var reader = new StreamReader(sheet);
        var xml = reader.ReadToEnd();
        var end = xml.IndexOf(EndOfRows, StringComparison.Ordinal);
        if (end < 0)
            throw new InvalidOperationException($"sheet {table.SheetName} has no rows to write after");
        var openings = CellOpenings(XDocument.Parse(xml), table);
        using var writer = new StreamWriter(copy, new UTF8Encoding(encoderShouldEmitUTF8Identifier: false));
        writer.Write(xml.AsSpan(0, end));
        for (var row = 0; row < table.Table.RowCount; row++)
        {
            var number = (table.FirstRow + row).ToString(CultureInfo.InvariantCulture);
            writer.Write($"<x:row r=\"{number}\">");
            for (var c = 0; c < openings.Length; c++)
                Write(writer, $"<x:c r=\"{openings[c].Letters}{number}\" s=\"{openings[c].Style}\"", table.Table.Columns[c].Value(row));
            writer.Write("</x:row>");
        }

        writer.Write(xml.AsSpan(end));
    }

    /// <summary>The letters of each column and the style of its cells.</summary>
    private static (string Letters, string Style)[] CellOpenings(XDocument sheet, PlacedTable table)
    {
        var columns = sheet.Root!.Descendants(sheet.Root.Name.Namespace + "col")
            .Select(column => (Min: (int)column.Attribute("min")!, Max: (int)column.Attribute("max")!,
                Style: (string?)column.Attribute("style") ?? "0"))
            .ToList();
        return [.. Enumerable.Range(1, table.Table.Columns.Count).Select(c => (CellAddress.Letters(c),
            columns.First(column => column.Min <= c && c <= column.Max).Style))];
    }

    private static void Write(StreamWriter writer, string opening, object value)
    {
        switch (value)
        {
            case double number when double.IsFinite(number):
                writer.Write(string.Create(CultureInfo.InvariantCulture, $"{opening}><x:v>{number:R}</x:v></x:c>"));
                break;
            case string text:
                writer.Write($"{opening} t=\"inlineStr\"><x:is><x:t xml:space=\"preserve\">{Escaped(text)}</x:t></x:is></x:c>");
                break;
            case Formula { Cached: double number } formula:
                writer.Write(string.Create(
                    CultureInfo.InvariantCulture, $"{opening}><x:f>{Escaped(formula.Text)}</x:f><x:v>{number:R}</x:v></x:c>"));
                break;
            case Formula { Cached: string text } formula:
                writer.Write($"{opening} t=\"str\"><x:f>{Escaped(formula.Text)}</x:f><x:v>{Escaped(text)}</x:v></x:c>");
                break;
        }
    }

    /// <summary>The text as XML; an underscore that would begin an escape of the file format (_x0041_) is itself escaped.</summary>
    private static string Escaped(string text) =>
        FormatEscape().Replace(TextSanitizer.Clean(text), "_x005F_").Replace("&", "&amp;").Replace("<", "&lt;").Replace(">", "&gt;");

    [GeneratedRegex("_(?=x[0-9A-Fa-f]{4}_)")]
    private static partial Regex FormatEscape();
}
