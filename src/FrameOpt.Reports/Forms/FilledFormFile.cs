using System.Globalization;
using System.IO.Compression;
using System.Xml;
using System.Xml.Linq;
using CsvHelper;
using FrameOpt.Forms;

namespace FrameOpt.Reports.Forms;

/// <summary>Reads the cells of a filled form, as any spreadsheet program saves them.</summary>
/// <remarks>Source: ECMA-376, Office Open XML, part 1, SpreadsheetML; only the cells are read.</remarks>
public static class FilledFormFile
{
    private const long MaxBytes = 20_000_000;
    private const int MaxColumns = 60;
    private const int MaxRows = 2_000;
    private static readonly XNamespace main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static readonly XNamespace link = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    /// <summary>The cells of a workbook or a CSV file; null, with why, when it is neither.</summary>
    /// <param name="path">Of the file.</param>
    /// <param name="problem">A sentence with how to correct it; empty when it was read.</param>
    public static FilledForm? Read(string path, out string problem)
    {
        problem = "";
        try
        {
            if (new FileInfo(path) is { Length: > MaxBytes })
                problem = "It is too large for a form.";
            else
            {
                var bytes = File.ReadAllBytes(path);
                var name = Path.GetFileName(path);
                return bytes.AsSpan().StartsWith("PK"u8) ? OfWorkbook(name, bytes) : OfText(name, bytes);
            }
        }
        catch (Exception failure) when (failure is IOException or UnauthorizedAccessException)
        {
            problem = $"It cannot be read: {failure.Message}";
        }
        catch (Exception failure) when (failure is InvalidDataException or XmlException or FormatException or ArgumentException
            or InvalidOperationException or NullReferenceException)
        {
            problem = "It is neither a workbook (.xlsx) nor a CSV file: save the form as one of the two.";
        }

        return null;
    }

    private static FilledForm OfText(string name, byte[] bytes)
    {
        var options = CsvReaderOptions.Default with { HasHeader = false, TrackLineNumbers = true, TrimWhitespace = true };
        using var csv = CsvReader.Create(bytes, options);
        var sheets = new List<FilledSheet>();
        List<IReadOnlyList<string>>? rows = null;
        var (line, first, title) = (0, 1, "");
        void Close()
        {
            if (rows is not null)
                sheets.Add(new FilledSheet(title, first, rows));
        }

        while (csv.Read() && line++ < MaxRows)
        {
            string[] cells = [.. Enumerable.Range(0, Math.Min(MaxColumns, csv.FieldCount)).Select(csv.GetString)];
            if (cells is [['[', .. var inside, ']'], ..])
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

    private static FilledForm OfWorkbook(string name, byte[] bytes)
    {
        using var package = new ZipArchive(new MemoryStream(bytes), ZipArchiveMode.Read);
        var shared = package.GetEntry("xl/sharedStrings.xml") is { } entry
            ? Load(entry).Elements(main + "si").Select(item => string.Concat(item.Descendants(main + "t")
                .Where(text => text.Parent!.Name != main + "rPh").Select(text => text.Value))).ToList() : [];
        var targets = Load(package.GetEntry("xl/_rels/workbook.xml.rels")!).Elements()
            .ToDictionary(relation => (string)relation.Attribute("Id")!, relation => (string)relation.Attribute("Target")!);
        return new FilledForm(name, false, [.. Load(package.GetEntry("xl/workbook.xml")!).Descendants(main + "sheet").Select(sheet =>
        {
            var target = targets[(string)sheet.Attribute(link + "id")!];
            var part = target.StartsWith('/') ? target[1..] : $"xl/{target}";
            return new FilledSheet((string)sheet.Attribute("name")!, 1, Rows(Load(package.GetEntry(part)!), shared));
        })]);
    }

    private static List<IReadOnlyList<string>> Rows(XElement sheet, List<string> shared)
    {
        var rows = new List<IReadOnlyList<string>>();
        foreach (var row in sheet.Descendants(main + "row").Take(MaxRows))
        {
            var number = (int?)row.Attribute("r") ?? rows.Count + 1;
            while (rows.Count < Math.Min(number - 1, MaxRows))
                rows.Add([]);
            var cells = new List<string>();
            foreach (var cell in row.Elements(main + "c"))
            {
                var column = (string?)cell.Attribute("r") is { } reference ? Column(reference) : cells.Count;
                while (cells.Count < Math.Min(column, MaxColumns))
                    cells.Add("");
                if (cells.Count < MaxColumns)
                    cells.Add(Value(cell, shared));
            }

            rows.Add(cells);
        }

        return rows;
    }

    private static string Value(XElement cell, List<string> shared)
    {
        var value = (string?)cell.Element(main + "v") ?? "";
        return (string?)cell.Attribute("t") switch
        {
            "s" when value.Length > 0 => shared[int.Parse(value, CultureInfo.InvariantCulture)],
            "s" => "",
            "inlineStr" => string.Concat(cell.Descendants(main + "t").Select(text => text.Value)),
            "b" => value == "1" ? "TRUE" : "FALSE",
            "str" or "e" => value,
            _ => double.TryParse(value, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
                ? Math.Round(number, 9).ToString(CultureInfo.InvariantCulture) : value,
        };
    }

    private static int Column(string reference) =>
        reference.TakeWhile(char.IsAsciiLetter).Aggregate(0, (column, letter) => 26 * column + char.ToUpperInvariant(letter) - 'A' + 1) - 1;

    private static XElement Load(ZipArchiveEntry entry)
    {
        using var stream = entry.Open();
        using var reader = XmlReader.Create(stream, new XmlReaderSettings { DtdProcessing = DtdProcessing.Prohibit });
        return XElement.Load(reader);
    }
}
