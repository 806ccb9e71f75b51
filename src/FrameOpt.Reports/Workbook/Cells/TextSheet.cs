using ClosedXML.Excel;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>A sheet of short texts in columns, to read from top to bottom.</summary>
internal static class TextSheet
{
    /// <summary>Adds the sheet; the header stays in sight.</summary>
    public static void Add(
        Spreadsheet book, string name, IReadOnlyList<(string Header, double WidthCharacters)> columns,
        IEnumerable<IReadOnlyList<string>> rows, bool isPrinted = true)
    {
        var sheet = book.AddSheet(name);
        sheet.ShowGridLines = false;
        for (var c = 0; c < columns.Count; c++)
            sheet.Column(c + 1).Width = columns[c].WidthCharacters;
        SheetStyle.TableHeader(Row(sheet, 1, [.. columns.Select(column => column.Header)], columns));
        var row = 2;
        foreach (var cells in rows)
            SheetStyle.TableRow(Row(sheet, row++, cells, columns));
        sheet.SheetView.FreezeRows(1);
        sheet.PageSetup.SetRowsToRepeatAtTop(1, 1);
        if (isPrinted)
            book.Print(sheet, pagesTall: 1, portrait: true);
        else
            book.DoNotPrint(sheet, columns.Count);
    }

    private static IXLRange Row(
        IXLWorksheet sheet, int row, IReadOnlyList<string> cells, IReadOnlyList<(string Header, double WidthCharacters)> columns)
    {
        for (var c = 0; c < cells.Count; c++)
            SheetStyle.Text(sheet.Cell(row, c + 1), cells[c]);
        sheet.Row(row).Height = SheetStyle.HeightPoints([.. cells.Select((text, c) => (text, columns[c].WidthCharacters))]);
        return sheet.Range(row, 1, row, cells.Count);
    }
}
