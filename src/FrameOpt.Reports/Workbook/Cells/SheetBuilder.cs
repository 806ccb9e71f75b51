using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Workbook.Charts;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>A sheet written from top to bottom: headings, paragraphs, tables of texts and numbers.</summary>
internal sealed class SheetBuilder
{
    private readonly IXLWorksheet sheet;
    private readonly IReadOnlyList<double> widths;

    /// <summary>Adds the sheet with its title.</summary>
    /// <param name="book">To this workbook.</param>
    /// <param name="report">The run, for the page header.</param>
    /// <param name="name">Of the sheet, and its title.</param>
    /// <param name="widths">Of the columns, in characters.</param>
    public SheetBuilder(XLWorkbook book, IReportSource report, string name, IReadOnlyList<double> widths)
    {
        sheet = book.AddWorksheet(name);
        this.widths = widths;
        sheet.ShowGridLines = false;
        for (var c = 0; c < widths.Count; c++)
            sheet.Column(c + 1).Width = widths[c];
        SheetStyle.Title(sheet.Cell(1, 1), name);
        SheetStyle.Print(sheet, report, pagesWide: 1);
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

    /// <summary>A table from the first column on.</summary>
    /// <param name="columns">Header and number format of each; widths are the sheet's.</param>
    /// <param name="rows">Texts and numbers; a number that is not finite leaves its cell blank.</param>
    public PlacedTable Table(IReadOnlyList<(object Header, string FormatCode)> columns, IReadOnlyList<IReadOnlyList<object>> rows)
    {
        var header = Cells([.. columns.Select(column => column.Header)], [.. columns.Select(_ => "General")]);
        SheetStyle.TableHeader(header);
        var first = Row;
        foreach (var row in rows)
            SheetStyle.TableRow(Cells(row, [.. columns.Select(column => column.FormatCode)]));
        return new PlacedTable(sheet.Name, first, rows);
    }

    /// <summary>Shades numbers from blue (lowest) through white to orange (highest); the numbers stay to be read.</summary>
    public void Shade(PlacedTable table, int firstColumn)
    {
        sheet.Range(table.FirstRow, firstColumn, table.FirstRow + table.Rows.Count - 1,
            table.Rows[0].Count).AddConditionalFormat().ColorScale()
            .LowestValue(XLColor.FromHtml("#" + SeriesStyle.SkyBlue))
            .Midpoint(XLCFContentType.Percentile, 50, XLColor.White)
            .HighestValue(XLColor.FromHtml("#" + SeriesStyle.Orange));
    }

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

/// <summary>A table that stands on a sheet from its first column on, for charts to draw.</summary>
/// <param name="SheetName">Of the sheet.</param>
/// <param name="FirstRow">Below the header, from 1.</param>
/// <param name="Rows">As written.</param>
internal sealed record PlacedTable(string SheetName, int FirstRow, IReadOnlyList<IReadOnlyList<object>> Rows)
{
    /// <summary>The first cells of one column, from 0.</summary>
    public ChartColumn Column(int column, int count) => new(
        CellAddress.Column(SheetName, column + 1, FirstRow, FirstRow + count - 1), [.. Rows.Take(count).Select(row => row[column])]);

    /// <summary>All cells of one column, from 0.</summary>
    public ChartColumn Column(int column) => Column(column, Rows.Count);
}
