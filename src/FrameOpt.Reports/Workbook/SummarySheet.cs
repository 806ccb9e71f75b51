using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook;

/// <summary>The answer on the first sheet, in the same words as the terminal.</summary>
internal static class SummarySheet
{
    private const int Columns = 6;
    private const double FirstWidth = 34;
    private const double OtherWidth = 19;
    /// <summary>Lines break between words, so the last few characters of each are often empty.</summary>
    private const double WrapAllowance = 3;
    private const double FullWidth = FirstWidth + (Columns - 1) * OtherWidth;

    public static void Add(Spreadsheet book, RunAnswer answer)
    {
        var sheet = book.AddSheet("Summary");
        sheet.ShowGridLines = false;
        sheet.Column(1).Width = FirstWidth;
        var widest = answer.Sections.Max(section => section.Table?.Headers.Count ?? 0);
        sheet.Columns(2, Math.Max(Columns, widest)).Width = OtherWidth;
        SheetStyle.Paragraph(sheet.Range(1, 1, 1, Columns), answer.Title, FullWidth / 1.6);
        SheetStyle.Title(sheet.Cell(1, 1), answer.Title);
        sheet.Row(1).Height *= 1.5;
        var row = 2;
        if (answer.Question.Length > 0)
            SheetStyle.Paragraph(sheet.Range(row, 1, row++, Columns), answer.Question, FullWidth);
        row = Headline(sheet, answer, row + 1);
        foreach (var section in answer.Sections)
            row = Section(sheet, section, row + 1);
        book.Print(sheet, pagesTall: 2);
    }

    private static int Headline(IXLWorksheet sheet, RunAnswer answer, int row)
    {
        var range = sheet.Range(row, 1, row, Columns);
        SheetStyle.Paragraph(range, answer.Headline, FullWidth / 1.15);
        range.Style.Font.SetBold();
        if (answer.IsWarning)
            SheetStyle.Warning(range);
        return row + 1;
    }

    private static int Section(IXLWorksheet sheet, AnswerSection section, int row)
    {
        SheetStyle.Heading(sheet.Range(row, 1, row++, Columns), section.Title);
        foreach (var line in section.Lines)
            SheetStyle.Paragraph(sheet.Range(row, 1, row++, Columns), line, FullWidth);
        return section.Table is { } table ? Table(sheet, table, row) : row;
    }

    private static int Table(IXLWorksheet sheet, AnswerTable table, int row)
    {
        var header = Row(sheet, table.Headers, row++);
        SheetStyle.TableHeader(header);
        foreach (var cells in table.Rows)
            SheetStyle.TableRow(Row(sheet, cells, row++));
        return row;
    }

    private static IXLRange Row(IXLWorksheet sheet, IReadOnlyList<string> cells, int row)
    {
        for (var c = 0; c < cells.Count; c++)
            SheetStyle.Text(sheet.Cell(row, c + 1), cells[c]);
        sheet.Row(row).Height = SheetStyle.HeightPoints(
            [.. cells.Select((text, c) => (text, c == 0 ? FirstWidth : OtherWidth - WrapAllowance))]);
        var range = sheet.Range(row, 1, row, cells.Count);
        sheet.Range(row, 2, row, cells.Count).Style.Alignment.SetHorizontal(XLAlignmentHorizontalValues.Right);
        return range;
    }
}
