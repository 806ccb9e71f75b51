using ClosedXML.Excel;
using FrameOpt.Forms;
using FrameOpt.Model;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Forms;

/// <summary>Writes a form to fill in as a workbook.</summary>
public static class FormWorkbook
{
    internal const string ReadMe = "Read me";

    private const double ReadMeWidth = 110;
    private const double LeastWidth = 9;
    private const double MostWidth = 40;
    private const int ExtraRows = 4;

    /// <summary>Bold letters fill a line sooner: none of a caution may be cut off.</summary>
    private const double BoldWidth = 0.8;

    /// <summary>High enough to write in by hand.</summary>
    private const double RowPoints = 24;

    /// <summary>A workbook: Read me, then a sheet for each kind of run.</summary>
    /// <param name="form">The runs.</param>
    /// <param name="study">Named on it.</param>
    /// <param name="frame">As built.</param>
    /// <param name="info">What wrote it, from which file.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(MeasurementForm form, Study study, FrameGeometry frame, RunInfo info, Stream stream) =>
        Spreadsheet.Write(study, info, book =>
        {
            var first = book.AddSheet(ReadMe);
            first.ShowGridLines = false;
            first.Column(1).Width = ReadMeWidth;
            SheetStyle.Title(first.Cell(1, 1), "Measurements");
            Notes(first, FormNotes.ReadMe(study, form), 1, ReadMeWidth);
            book.Print(first, pagesTall: 1);
            foreach (var sheet in form.Sheets)
                Add(book, sheet, FormNotes.Of(study, frame, sheet));
        }, stream);

    private static void Add(Spreadsheet book, FormSheet form, FormNotes notes)
    {
        var sheet = book.AddSheet(form.Name);
        sheet.ShowGridLines = false;
        var widths = form.Headers.Select((header, c) => Math.Clamp(
            header.Split(' ').Concat(form.Rows.Select(row => c < row.Count ? row[c] : "")).Max(word => word.Length) + 2,
            LeastWidth, MostWidth)).ToList();
        widths[^1] = Math.Max(widths[^1], 24);
        for (var c = 0; c < widths.Count; c++)
            sheet.Column(c + 1).Width = widths[c];
        SheetStyle.Title(sheet.Cell(1, 1), form.Name);
        var header = Notes(sheet, notes, widths.Count, widths.Sum());
        for (var c = 0; c < widths.Count; c++)
            SheetStyle.Text(sheet.Cell(header, c + 1), form.Headers[c]);
        SheetStyle.TableHeader(sheet.Range(header, 1, header, widths.Count));
        sheet.Row(header).Height = SheetStyle.HeightPoints([.. form.Headers.Select((text, c) => (text, widths[c] - 2))]);
        for (var row = 0; row < form.Rows.Count; row++)
        {
            for (var c = 0; c < form.Rows[row].Count; c++)
                SheetStyle.Text(sheet.Cell(header + 1 + row, c + 1), form.Rows[row][c]);
            SheetStyle.TableRow(sheet.Range(header + 1 + row, 1, header + 1 + row, widths.Count));
            sheet.Row(header + 1 + row).Height = RowPoints;
        }

        var (from, to) = (header + 1, header + form.Rows.Count);
        var input = sheet.Range(from, form.SettingColumns + 1, to, widths.Count);
        SheetStyle.Input(input);
        input.Style.Border.SetInsideBorder(XLBorderStyleValues.Hair);
        for (var c = form.SettingColumns; c < widths.Count; c++)
        {
            if (form.Choices[c].Count > 0)
                sheet.Range(from, c + 1, to + ExtraRows, c + 1).SetDataValidation().List($"\"{string.Join(",", form.Choices[c])}\"", true);
        }

        sheet.SheetView.Freeze(header, 1);
        book.Print(sheet, pagesTall: 1);
    }

    /// <summary>Notes under the title; the row that follows them.</summary>
    private static int Notes(IXLWorksheet sheet, FormNotes notes, int columns, double width)
    {
        var row = 2;
        foreach (var (isCaution, note) in notes.Cautions.Select(note => (true, note)).Concat(notes.How.Select(note => (false, note))))
        {
            var line = sheet.Range(row, 1, row, columns);
            SheetStyle.Paragraph(line, note, isCaution ? BoldWidth * width : width);
            if (isCaution)
                SheetStyle.Warning(line);
            row++;
        }

        return row + 1;
    }
}
