using System.Text.RegularExpressions;

namespace FrameOpt.Forms;

/// <summary>The cells of a form as they stand in a file.</summary>
/// <param name="File">Its name.</param>
/// <param name="IsText">True for a text file, whose cells are named by line and column.</param>
/// <param name="Sheets">Each with its rows from the first on; a row may be shorter than another.</param>
public sealed record FilledForm(string File, bool IsText, IReadOnlyList<FilledSheet> Sheets)
{
    /// <summary>The sheet of a name; null where there is none.</summary>
    public FilledSheet? Sheet(string name) =>
        Sheets.FirstOrDefault(sheet => sheet.Name.Equals(name, StringComparison.OrdinalIgnoreCase));
}

/// <summary>A sheet of cells.</summary>
/// <param name="Name">Of the sheet.</param>
/// <param name="FirstLine">Number of its first row in the file, from 1.</param>
/// <param name="Rows">Cells as text; numbers with a decimal point.</param>
public sealed record FilledSheet(string Name, int FirstLine, IReadOnlyList<IReadOnlyList<string>> Rows)
{
    /// <summary>A cell, empty beyond the end of its row.</summary>
    public string Cell(int row, int column) => column < Rows[row].Count ? Rows[row][column].Trim() : "";

    /// <summary>The row of headers, which begins with run; -1 where there is none.</summary>
    public int HeaderRow => Enumerable.Range(0, Rows.Count).FirstOrDefault(
        row => Title(Cell(row, 0)) == FormTable.Run || Title(Cell(row, 1)) == FormTable.Block, -1);

    /// <summary>True for the rpm of a run with the engine off: nothing is read there.</summary>
    public bool IsIdle(int row, int column) =>
        Title(Cell(HeaderRow, column)).EndsWith(FormTable.RpmRead, StringComparison.Ordinal) && Rows[row].Contains(FormTable.Off);

    /// <summary>Where a cell stands, in words: "measurements.xlsx, Flight!D9".</summary>
    public string Place(FilledForm form, int row, int column) => form.IsText
        ? FormattableString.Invariant($"{form.File} line {FirstLine + row}, {$"{Name} {Letter(column)}".TrimStart()}")
        : FormattableString.Invariant($"{form.File}, {Name}!{Letter(column)}{FirstLine + row}");

    /// <summary>The title of a header, without its unit.</summary>
    public static string Title(string header) => Regex.Replace(header, @"\s*\[[^\]]*\]\s*$", "").Trim();

    /// <summary>The unit in brackets at the end of a header; empty where there is none.</summary>
    public static string Unit(string header) => Regex.Match(header, @"\[(?<unit>[^\]]*)\]\s*$").Groups["unit"].Value;

    private static char Letter(int column) => (char)('A' + Math.Min(column, 25));
}
