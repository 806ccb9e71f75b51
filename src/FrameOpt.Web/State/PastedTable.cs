using System.Text.RegularExpressions;

namespace FrameOpt.Web.State;

/// <summary>A table pasted from a spreadsheet, as the file that a study reads.</summary>
public static partial class PastedTable
{
    /// <summary>Cells between tabs become cells between commas, a decimal comma a point; text without tabs stays as it is.</summary>
    public static string AsCsv(string text) => !text.Contains('\t') ? text
        : string.Concat(text.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n')
            .Select(line => string.Join(',', line.Split('\t').Select(cell => Quoted(Point(cell.Trim())))) + "\n"));

    /// <summary>The same of cells that are already apart.</summary>
    public static string AsCsv(IEnumerable<IReadOnlyList<string>> rows) =>
        string.Concat(rows.Select(row => string.Join(',', row.Select(cell => Quoted(cell.Trim()))) + "\n"));

    private static string Point(string cell) => DecimalComma().IsMatch(cell) ? cell.Replace(',', '.') : cell;

    private static string Quoted(string cell) => cell.AsSpan().IndexOfAny(",\"") < 0 || cell is ['"', .., '"'] ? cell
        : $"\"{cell.Replace("\"", "\"\"")}\"";

    [GeneratedRegex(@"^[+-]?\d+,\d+$")]
    private static partial Regex DecimalComma();
}
