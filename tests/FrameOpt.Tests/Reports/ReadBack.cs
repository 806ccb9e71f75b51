using System.Text;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using ExcelDataReader;
using FrameOpt.Reports;

namespace FrameOpt.Tests.Reports;

/// <summary>A workbook as other programs see it.</summary>
public sealed class ReadBack
{
    private readonly MemoryStream bytes = new();

    public ReadBack(RunReport report)
    {
        FrameOpt.Reports.Workbook.Write(report, bytes);
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance); // the reader asks for code page 1252 even for files that have none
        using var reader = ExcelReaderFactory.CreateReader(new MemoryStream(bytes.ToArray()));
        do
        {
            var rows = new List<object?[]>();
            while (reader.Read())
                rows.Add([.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetValue)]);
            Sheets[reader.Name] = rows;
            Visibility.Add(reader.VisibleState);
        }
        while (reader.NextResult());
    }

    public Dictionary<string, List<object?[]>> Sheets { get; } = [];

    public List<string> Visibility { get; } = [];

    public IEnumerable<string> AllTexts => Sheets.Values.SelectMany(rows => rows).SelectMany(row => row).OfType<string>();

    public IReadOnlyList<string> SchemaErrors()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes.ToArray()), isEditable: false);
        return [.. new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2016).Validate(document).Select(error => $"{error.Path?.XPath}: {error.Description}")];
    }

    public int Formulas()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes.ToArray()), isEditable: false);
        return document.WorkbookPart!.WorksheetParts.Sum(part => part.Worksheet.Descendants<CellFormula>().Count());
    }
}
