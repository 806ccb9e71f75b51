using ClosedXML.Excel;
using FrameOpt.Reports.Tables;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>A long table on a sheet of its own: a note, a header, rows to sort and filter.</summary>
internal static class DataSheet
{
    /// <summary>The row of the header; data begin below it.</summary>
    public const int HeaderRow = 2;

    private const int FrozenColumns = 3;
    private const double MinWidthCharacters = 9;
    private const double MaxWidthCharacters = 24;

    /// <summary>Adds the sheet.</summary>
    /// <param name="book">To this workbook.</param>
    /// <param name="name">Of the sheet.</param>
    /// <param name="note">Above the table.</param>
    /// <param name="table">Texts, formulas and numbers.</param>
    /// <param name="filter">True to let the table be filtered.</param>
    public static void Add(Spreadsheet book, string name, string note, Table table, bool filter = true)
    {
        var sheet = book.AddSheet(name);
        var columns = table.Columns;
        for (var c = 0; c < columns.Count; c++)
        {
            sheet.Column(c + 1).Width = Width(columns[c]);
            sheet.Column(c + 1).Style.NumberFormat.Format = columns[c].FormatCode;
            if (columns[c].IsText)
                sheet.Column(c + 1).Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Left).Alignment.SetIndent(1);
        }

        SheetStyle.Text(sheet.Cell(1, 1), note);
        for (var c = 0; c < columns.Count; c++)
            SheetStyle.Text(sheet.Cell(HeaderRow, c + 1), Header(columns[c]));
        var header = sheet.Range(HeaderRow, 1, HeaderRow, columns.Count);
        SheetStyle.TableHeader(header);
        header.Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Center);
        sheet.Row(HeaderRow).Height = SheetStyle.HeightPoints([.. columns.Select(column => (Header(column), Width(column) - 1.5))]);
        if (filter)
            sheet.Range(HeaderRow, 1, HeaderRow + table.RowCount, columns.Count).SetAutoFilter();
        sheet.SheetView.Freeze(HeaderRow, FrozenColumns);
        sheet.PageSetup.SetRowsToRepeatAtTop(HeaderRow, HeaderRow);
        sheet.PageSetup.SetColumnsToRepeatAtLeft(1, FrozenColumns);
        book.DoNotPrint(sheet, columns.Count);
        book.AddRows(new PlacedTable(table, name, HeaderRow + 1));
    }

    /// <summary>The header of a column of numbers can break at spaces.</summary>
    public static string Header(Column column) =>
        column.IsText ? column.Header : Spaced(column).Replace("  ", " ");

    /// <summary>A column of numbers is as wide as the longest word of its header.</summary>
    private static double Width(Column column) => column.IsText ? column.WidthCharacters
        : Math.Clamp(Spaced(column).Split(' ').Max(word => word.Length) + 2.0, MinWidthCharacters, MaxWidthCharacters);

    private static string Spaced(Column column) => column.Header.Replace('_', ' ').Replace("[", " [");
}
