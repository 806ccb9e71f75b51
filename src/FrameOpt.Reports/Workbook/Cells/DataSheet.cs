using ClosedXML.Excel;
using FrameOpt.Reports.Answer;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>A long table on a sheet of its own: a note, a header, rows to sort and filter.</summary>
internal static class DataSheet
{
    /// <summary>The row of the header; data begin below it.</summary>
    public const int HeaderRow = 2;

    private const int FrozenColumns = 3;
    private const int ColumnsPerPage = 16;

    /// <summary>Adds the sheet with its header; the rows are given back, to be written once the workbook is saved.</summary>
    /// <param name="book">To this workbook.</param>
    /// <param name="report">The run, for the page header.</param>
    /// <param name="name">Of the sheet.</param>
    /// <param name="note">Above the table.</param>
    /// <param name="columns">Header, format and width.</param>
    /// <param name="rows">Texts, formulas and numbers; a number that is not finite leaves its cell blank.</param>
    /// <param name="filter">True to let the table be filtered.</param>
    public static DataRows Add(
        XLWorkbook book, IReportSource report, string name, string note, IReadOnlyList<DataColumn> columns,
            IReadOnlyList<IReadOnlyList<object>> rows, bool filter = true)
    {
        var sheet = book.AddWorksheet(name);
        for (var c = 0; c < columns.Count; c++)
        {
            sheet.Column(c + 1).Width = columns[c].WidthCharacters;
            sheet.Column(c + 1).Style.NumberFormat.Format = columns[c].FormatCode;
            if (columns[c].FormatCode == DataColumn.TextFormat)
                sheet.Column(c + 1).Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Left).Alignment.SetIndent(1);
        }

        SheetStyle.Text(sheet.Cell(1, 1), note);
        for (var c = 0; c < columns.Count; c++)
            SheetStyle.Text(sheet.Cell(HeaderRow, c + 1), columns[c].Header);
        var header = sheet.Range(HeaderRow, 1, HeaderRow, columns.Count);
        SheetStyle.TableHeader(header);
        header.Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Center);
        sheet.Row(HeaderRow).Height = SheetStyle.HeightPoints([.. columns.Select(column => (column.Header, column.WidthCharacters - 1.5))]);
        if (filter)
            sheet.Range(HeaderRow, 1, HeaderRow + rows.Count, columns.Count).SetAutoFilter();
        sheet.SheetView.Freeze(HeaderRow, FrozenColumns);
        sheet.PageSetup.SetRowsToRepeatAtTop(HeaderRow, HeaderRow);
        sheet.PageSetup.SetColumnsToRepeatAtLeft(1, FrozenColumns);
        SheetStyle.Print(sheet, report, Math.Max(2, (columns.Count + ColumnsPerPage - 1) / ColumnsPerPage));
        sheet.PageSetup.PrintAreas.Add(1, 1, HeaderRow + rows.Count, columns.Count);
        return new DataRows(name, HeaderRow + 1, rows);
    }
}

/// <summary>A column of a long table in the workbook.</summary>
/// <param name="Header">With its unit.</param>
/// <param name="FormatCode">How its numbers are shown.</param>
/// <param name="WidthCharacters">Of the column.</param>
internal sealed record DataColumn(string Header, string FormatCode, double WidthCharacters)
{
    /// <summary>The number format of a column of texts.</summary>
    public const string TextFormat = "@";

    private const double MinWidthCharacters = 9;

    /// <summary>A column of numbers as wide as the longest word of its header.</summary>
    public static DataColumn OfNumbers(string header, string formatCode)
    {
        var spaced = header.Replace('_', ' ').Replace("[", " [");
        var longestWord = spaced.Split(' ').Max(word => word.Length);
        return new DataColumn(spaced.Replace("  ", " "), formatCode, Math.Clamp(longestWord + 2.0, MinWidthCharacters, 24));
    }
}

/// <summary>The rows of a long table, still to be written under its header.</summary>
/// <param name="SheetName">On this sheet.</param>
/// <param name="FirstRow">From 1: the row after the header.</param>
/// <param name="Rows">Texts and numbers; a number that is not finite leaves its cell blank.</param>
internal sealed record DataRows(string SheetName, int FirstRow, IReadOnlyList<IReadOnlyList<object>> Rows);
