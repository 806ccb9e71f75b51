using ClosedXML.Excel;
using FrameOpt.Reports.Tables;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>A sheet written from top to bottom: headings, paragraphs, tables of texts and numbers.</summary>
internal sealed class SheetBuilder
{
    private readonly IXLWorksheet sheet;
    private readonly IReadOnlyList<double> widths;

    /// <summary>Adds the sheet with its title.</summary>
    /// <param name="book">To this workbook.</param>
    /// <param name="name">Of the sheet, and its title.</param>
    /// <param name="widths">Of the columns, in characters.</param>
    /// <param name="isPrinted">False for workings, which a printed workbook leaves out.</param>
    /// <param name="isPortrait">For a sheet taller than wide.</param>
    public SheetBuilder(Spreadsheet book, string name, IReadOnlyList<double> widths, bool isPrinted = true, bool isPortrait = false)
    {
        sheet = book.AddSheet(name);
        this.widths = widths;
        sheet.ShowGridLines = false;
        for (var c = 0; c < widths.Count; c++)
            sheet.Column(c + 1).Width = widths[c];
        SheetStyle.Title(sheet.Cell(1, 1), name);
        if (isPrinted)
            book.Print(sheet, pagesTall: 1, isPortrait);
        else
            book.DoNotPrint(sheet, widths.Count);
    }

    /// <summary>The next row to be written.</summary>
    public int Row { get; set; } = 2;

    /// <summary>A heading after a blank row, on a new printed page when asked.</summary>
    public void Heading(string text, bool newPage = false)
    {
        Row++;
        if (newPage)
            sheet.PageSetup.AddHorizontalPageBreak(Row - 1);
        SheetStyle.Heading(Across(Row++), text);
    }

    /// <summary>Paragraphs over the whole width.</summary>
    public void Paragraphs(IEnumerable<string> lines)
    {
        foreach (var line in lines)
            SheetStyle.Paragraph(Across(Row++), line, widths.Sum());
    }

    /// <summary>A table from the first column on; the columns are as wide as the sheet's.</summary>
    /// <param name="table">Texts and numbers.</param>
    /// <param name="headers">Texts and numbers in place of the columns' headers, or null.</param>
    public PlacedTable Table(Table table, IReadOnlyList<object>? headers = null)
    {
        SheetStyle.TableHeader(Cells(headers ?? [.. table.Columns.Select(column => column.Header)],
            [.. table.Columns.Select(_ => Column.GeneralFormat)]));
        var first = Row;
        for (var row = 0; row < table.RowCount; row++)
            SheetStyle.TableRow(Cells([.. table.Columns.Select(column => column.Value(row))],
                [.. table.Columns.Select(column => column.FormatCode)]));
        return new PlacedTable(table, sheet.Name, first);
    }

    /// <summary>Shades the numbers right of a table's first column from blue (lowest) through white to orange (highest); they stay
    /// readable.</summary>
    public void Shade(PlacedTable table) =>
        sheet.Range(table.FirstRow, 2, table.FirstRow + table.Table.RowCount - 1, table.Table.Columns.Count)
            .AddConditionalFormat().ColorScale()
            .LowestValue(Palette.Colour(Palette.SkyBlue))
            .Midpoint(XLCFContentType.Percentile, 50, XLColor.White)
            .HighestValue(Palette.Colour(Palette.Orange));

    private IXLRange Across(int row) => sheet.Range(row, 1, row, widths.Count);

    private IXLRange Cells(IReadOnlyList<object> values, IReadOnlyList<string> formats)
    {
        for (var c = 0; c < values.Count; c++)
        {
            var cell = sheet.Cell(Row, c + 1);
            if (values[c] is string text)
                SheetStyle.Text(cell, text);
            else if (values[c] is double number && double.IsFinite(number))
                cell.SetValue(number).Style.NumberFormat.Format = formats[c];
            cell.Style.Alignment.SetHorizontal(values[c] is string && c == 0 ? XLAlignmentHorizontalValues.Left
                : XLAlignmentHorizontalValues.Right);
        }

        sheet.Row(Row).Height = SheetStyle.HeightPoints([.. values.Select((value, c) => (value as string ?? "", widths[c] - 1))]);
        return sheet.Range(Row, 1, Row++, values.Count);
    }
}
