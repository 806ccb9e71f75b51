using System.Text.RegularExpressions;
using CsvHelper;
using FrameOpt.Forms;
using FrameOpt.Model;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Forms;

/// <summary>A form as one text file: for each sheet a line with its name in brackets, its notes, its headers, its runs.</summary>
public static partial class FormCsv
{
    internal const int MaxColumns = 60;
    internal const int MaxRows = 2_000;

    /// <summary>The cells of a form before anything is filled in.</summary>
    /// <param name="name">Of its file.</param>
    /// <param name="form">The runs.</param>
    /// <param name="study">Named on it.</param>
    /// <param name="frame">As built.</param>
    public static FilledForm Of(string name, MeasurementForm form, Study study, FrameGeometry frame)
    {
        var (sheets, line) = (new List<FilledSheet>(), 1);
        void Add(string title, FormNotes notes, IEnumerable<IReadOnlyList<string>> table)
        {
            IReadOnlyList<IReadOnlyList<string>> rows = [.. notes.All.Select(note => (IReadOnlyList<string>)[note]), .. table];
            sheets.Add(new FilledSheet(title, line + 1, rows));
            line += 1 + rows.Count;
        }

        Add(FormWorkbook.ReadMe, FormNotes.ReadMe(study, form), []);
        foreach (var sheet in form.Sheets)
            Add(sheet.Name, FormNotes.Of(study, frame, sheet), [sheet.Headers, .. sheet.Rows.Select(row =>
                (IReadOnlyList<string>)[.. row, .. Enumerable.Repeat("", sheet.Headers.Count - row.Count)])]);
        return new FilledForm(name, true, sheets);
    }

    /// <summary>The cells of a file.</summary>
    /// <param name="name">Of the file.</param>
    /// <param name="bytes">Its content; of one that is no form there are no sheets.</param>
    public static FilledForm Read(string name, byte[] bytes) => Read(name, bytes, isForm: true);

    /// <summary>The cells of a file; of a table, all of them on one sheet without a name.</summary>
    internal static FilledForm Read(string name, byte[] bytes, bool isForm)
    {
        var options = CsvReaderOptions.Default with { HasHeader = false, TrackLineNumbers = true, TrimWhitespace = true };
        using var csv = CsvReader.Create(bytes, options);
        var sheets = new List<FilledSheet>();
        List<IReadOnlyList<string>>? rows = isForm ? null : [];
        var (line, first, title) = (0, 1, "");
        void Close()
        {
            if (rows is not null)
                sheets.Add(new FilledSheet(title, first, rows));
        }

        while (csv.Read() && line++ < MaxRows)
        {
            string[] cells = [.. Enumerable.Range(0, Math.Min(MaxColumns, csv.FieldCount)).Select(csv.GetString)];
            if (isForm && cells is [['[', .. var inside, ']'], ..])
            {
                Close();
                (title, first, rows) = (inside, line + 1, []);
            }
            else
            {
                rows?.Add(cells);
            }
        }

        Close();
        return new FilledForm(name, true, sheets);
    }

    /// <summary>Writes the cells of a form.</summary>
    /// <param name="form">Its cells.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(FilledForm form, Stream stream)
    {
        var options = CsvWriterOptions.Default with { NewLine = "\n", ValidateFieldCount = false };
        using var csv = CsvWriter.Create(stream, options, leaveOpen: true);
        void Line(IEnumerable<string> cells)
        {
            foreach (var cell in cells)
                csv.WriteField(Negative().IsMatch(cell) ? cell : TextSanitizer.ForCsv(cell));
            csv.EndRecord();
        }

        foreach (var sheet in form.Sheets)
        {
            Line([$"[{sheet.Name}]"]);
            foreach (var row in sheet.Rows)
                Line(row.Count == 0 ? [""] : row);
        }
    }

    /// <summary>A reading below 0, which is no formula: "-5", "-5 °C".</summary>
    [GeneratedRegex(@"^-\d+([.,]\d*)?( ?°?[A-Za-z]+)?$")]
    private static partial Regex Negative();
}
