using System.Text;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using ExcelDataReader;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Workbook;
using FrameOpt.Reports.Workbook.Cells;
using Charts = DocumentFormat.OpenXml.Drawing.Charts;
using Drawing = DocumentFormat.OpenXml.Drawing;

namespace FrameOpt.Tests.Reports;

/// <summary>A workbook as other programs see it.</summary>
public sealed class WorkbookReader
{
    private readonly byte[] bytes;

    public WorkbookReader(RunReport report)
        : this(Written(report))
    {
    }

    public WorkbookReader(byte[] workbook)
    {
        bytes = workbook;
        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance); // the reader asks for code page 1252 even for files that have none
        using var reader = ExcelReaderFactory.CreateReader(new MemoryStream(bytes));
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

    public static byte[] Written(RunReport report)
    {
        using var stream = new MemoryStream();
        RunWorkbook.Write(report, stream);
        return stream.ToArray();
    }

    public Dictionary<string, List<object?[]>> Sheets { get; } = [];

    public List<string> Visibility { get; } = [];

    public IEnumerable<string> AllTexts => Sheets.Values.SelectMany(rows => rows).SelectMany(row => row).OfType<string>();

    public IReadOnlyList<string> SchemaErrors()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
        return [.. new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2016).Validate(document)
            .Select(error => $"{error.Path?.XPath}: {error.Description}")];
    }

    public IReadOnlyList<string> StyleNames()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
        return [.. document.WorkbookPart!.WorkbookStylesPart!.Stylesheet.CellStyles!.Elements<CellStyle>()
            .Select(style => style.Name!.Value!)];
    }

    public IReadOnlyList<string> PrintTitles()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
        return [.. document.WorkbookPart!.Workbook.Descendants<DefinedName>().Where(name => name.Name == "_xlnm.Print_Titles")
            .Select(name => name.Text)];
    }

    /// <summary>Every formula, with the name of its sheet.</summary>
    public IReadOnlyList<(string Sheet, string Formula)> Formulas()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
        var book = document.WorkbookPart!;
        return [.. book.Workbook.Descendants<Sheet>().SelectMany(sheet =>
            ((WorksheetPart)book.GetPartById(sheet.Id!)).Worksheet.Descendants<CellFormula>()
                .Select(formula => (sheet.Name!.Value!, formula.Text)))];
    }

    /// <summary>Names of cells that users type into.</summary>
    public IReadOnlyList<string> InputNames()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
        return [.. document.WorkbookPart!.Workbook.Descendants<DefinedName>().Select(name => name.Name!.Value!)
            .Where(name => !name.StartsWith("_xlnm", StringComparison.Ordinal))];
    }

    public IReadOnlyList<string> ChartTitles() =>
        FromCharts(chart => string.Concat(chart.ChartSpace.Descendants<Charts.Title>().First().Descendants<Drawing.Text>()
        .Select(text => text.Text)));

    public IReadOnlyList<string> ChartReferences() =>
        [.. FromCharts(chart => chart.ChartSpace.Descendants<Charts.Formula>().Select(formula => formula.Text).ToList())
        .SelectMany(references => references)];

    /// <summary>Paper size (9 is A4), orientation and footer of every sheet.</summary>
    public IReadOnlyList<(uint Paper, bool Landscape, string Footer)> PageSetups()
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
        return [.. document.WorkbookPart!.WorksheetParts.Select(part => part.Worksheet).Select(sheet => (
            sheet.GetFirstChild<PageSetup>()!.PaperSize!.Value,
            sheet.GetFirstChild<PageSetup>()!.Orientation!.Value == OrientationValues.Landscape,
            sheet.GetFirstChild<DocumentFormat.OpenXml.Spreadsheet.HeaderFooter>()!.OddFooter!.Text))];
    }

    private IReadOnlyList<T> FromCharts<T>(Func<ChartPart, T> read)
    {
        using var document = SpreadsheetDocument.Open(new MemoryStream(bytes), isEditable: false);
        return [.. document.WorkbookPart!.WorksheetParts.Where(part => part.DrawingsPart is not null)
            .SelectMany(part => part.DrawingsPart!.ChartParts).OrderBy(part => part.Uri.OriginalString, StringComparer.Ordinal)
            .Select(read)];
    }
}
