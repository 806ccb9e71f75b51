using System.Security.Cryptography;
using System.Text.RegularExpressions;
using CsvHelper;
using static System.FormattableString;

namespace FrameOpt.StudyFile.Syntax;

/// <summary>A table of text from a CSV file: a line of headers, then a line for each row.</summary>
/// <param name="Name">Of the file, as the study writes it.</param>
/// <param name="Headers">Trimmed.</param>
/// <param name="Rows">Each with its line in the file and as many cells as there are headers, trimmed.</param>
internal sealed partial record CsvTable(string Name, IReadOnlyList<string> Headers, IReadOnlyList<(long Line, string[] Cells)> Rows)
{
    private const long MaxBytes = 50_000_000;
    private const int MaxColumns = 5_000;
    private const int MaxRows = 250_000;

    /// <summary>Largest number of uneven lines that are reported one by one.</summary>
    private const int MaxReportedRows = 3;

    /// <summary>The table in a file, or null after an error.</summary>
    /// <param name="at">Where the study names it.</param>
    /// <param name="name">As written, relative to the study's folder.</param>
    /// <param name="diagnostics">Takes the errors.</param>
    public static CsvTable? Read(Node at, string name, DiagnosticBag diagnostics)
    {
        var read = diagnostics.Cache.Get($"table {name}", diagnostics, () => ReadFile(at, name, diagnostics));
        if (read is not null)
            diagnostics.AddFile(name, read.Hash);
        return read?.Table;
    }

    /// <summary>The index of a column, or -1.</summary>
    public int Column(string header)
    {
        for (var c = 0; c < Headers.Count; c++)
        {
            if (string.Equals(Headers[c], header, StringComparison.OrdinalIgnoreCase))
                return c;
        }

        return -1;
    }

    private static TableOfFile? ReadFile(Node at, string name, DiagnosticBag diagnostics)
    {
        if (ReferencedFile.Bytes(at, name, MaxBytes, diagnostics) is not { } bytes)
            return null;
        if (bytes.AsSpan().StartsWith("PK"u8) || bytes.AsSpan().TrimStart("\uFEFF \r\n"u8).StartsWith("{"u8))
        {
            diagnostics.Add(at, $"The file {name} is not a CSV file.", "Name a table saved as CSV, such as the designs.csv of a run.");
            return null;
        }

        if (TextBytes.Problem(bytes) is var (line, what))
        {
            diagnostics.Add(at, Invariant($"Line {line} of {name} {what}."),
                "Save the file again as CSV in UTF-8, from the program it comes from, and look at the names in it.");
            return null;
        }

        try
        {
            var options = CsvReaderOptions.Default with { HasHeader = false, TrackLineNumbers = true, TrimWhitespace = true };
            using var csv = CsvReader.Create(bytes, options);
            IReadOnlyList<string>? headers = null;
            var rows = new List<(long, string[])>();
            var uneven = 0;
            while (csv.Read())
            {
                if (csv.FieldCount > MaxColumns || rows.Count >= MaxRows)
                {
                    diagnostics.Add(at, csv.FieldCount > MaxColumns
                        ? Invariant($"Line {csv.LineNumber} of {name} has {csv.FieldCount} cells; {MaxColumns} is the most.")
                        : Invariant($"The file {name} has more than {MaxRows} lines."), "Check that it is the right file, or split it.");
                    return null;
                }

                string[] cells = [.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)];
                // Spreadsheets write rows that were once used and emptied.
                if (Array.TrueForAll(cells, cell => cell.Length == 0))
                    continue;
                if (headers is null)
                    headers = Different(at, name, cells, diagnostics) ? cells : null;
                if (headers is null)
                    return null;
                if (headers == cells)
                    continue;
                if (cells.Length == headers.Count)
                    rows.Add((csv.LineNumber, cells));
                else if (++uneven <= MaxReportedRows)
                    diagnostics.Add(at, $"Line {csv.LineNumber} of {name} has {cells.Length} cells; its first line has {headers.Count}.",
                        "Give every line as many, or quote text that holds a separator.");
            }

            if (uneven > MaxReportedRows)
                diagnostics.Add(at, $"{uneven - MaxReportedRows} more lines of {name} have another number of cells than its first line.",
                    "Check that the file is a table and was saved with one separator.");
            if (headers is not null && (rows.Count > 0 || uneven > 0))
                return new TableOfFile(new CsvTable(name, headers, rows), Convert.ToHexStringLower(SHA256.HashData(bytes)));
            diagnostics.Add(at, $"The file {name} has no rows.", "Its first line names the columns, and each line after it is one row.");
        }
        catch (Exception problem) when (problem is CsvFormatException or FormatException or ArgumentException or InvalidOperationException)
        {
            diagnostics.Add(at, $"The file {name} cannot be read as CSV: {problem.Message}",
                "Save it as CSV in UTF-8, separated by commas or semicolons.");
        }

        return null;
    }

    /// <summary>True when no two columns have the same name; of two it would be open which one counts. Their units do not matter.</summary>
    private static bool Different(Node at, string name, string[] headers, DiagnosticBag diagnostics)
    {
        var first = new Dictionary<string, int>();
        for (var c = 0; c < headers.Length; c++)
        {
            if (headers[c].Length == 0 || first.TryAdd(NameRules.Key(UnitAtEnd().Replace(headers[c], "")), c))
                continue;
            var other = first[NameRules.Key(UnitAtEnd().Replace(headers[c], ""))];
            diagnostics.Add(at, Invariant($"Line 1 of {name}: columns {other + 1} and {c + 1} are headed alike, ")
                + $"`{VisibleText.Quoted(headers[other])}` and `{VisibleText.Quoted(headers[c])}`.", "Keep one of the two.");
            return false;
        }

        return true;
    }

    [GeneratedRegex(@"\s+\[[^\[\]]*\]$")]
    private static partial Regex UnitAtEnd();

    /// <summary>A table and the hash of its file.</summary>
    private sealed record TableOfFile(CsvTable Table, string Hash);
}
