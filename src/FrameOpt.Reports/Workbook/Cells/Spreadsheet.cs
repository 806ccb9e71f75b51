using System.Text.RegularExpressions;
using ClosedXML.Excel;
using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.Cells;

/// <summary>A workbook in the making. ClosedXML lays out the sheets; what it cannot write, or writes slowly, is collected beside it and put
/// into the package it makes: long tables, formulas with their values, charts (docs/decisions/0007-workbook.md).</summary>
internal sealed partial class Spreadsheet
{
    private const int MaxHeaderTextLength = 80;

    private readonly XLWorkbook sheets;
    private readonly Study study;
    private readonly RunInfo info;
    private readonly List<PlacedTable> tables = [];
    private readonly List<PlacedFormula> formulas = [];
    private readonly List<PlacedChart> charts = [];
    private readonly List<Action> lastSheets = [];

    private Spreadsheet(XLWorkbook sheets, Study study, RunInfo info) => (this.sheets, this.study, this.info) = (sheets, study, info);

    /// <summary>Writes a workbook; the same sheets give the same bytes.</summary>
    /// <param name="study">Named in page headers and in the file's properties.</param>
    /// <param name="info">What wrote it, from which file.</param>
    /// <param name="addSheets">Adds the sheets in reading order.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(Study study, RunInfo info, Action<Spreadsheet> addSheets, Stream stream)
    {
        using var package = new MemoryStream();
        IReadOnlyDictionary<string, PlacedTable> tables;
        using (var sheets = new XLWorkbook())
        {
            var book = new Spreadsheet(sheets, study, info);
            addSheets(book);
            foreach (var addSheet in book.lastSheets)
                addSheet();
            tables = book.Save(package);
        }

        ReproduciblePackage.Copy(package, tables, stream);
    }

    /// <summary>Adds an empty sheet.</summary>
    public IXLWorksheet AddSheet(string name) => sheets.AddWorksheet(name);

    /// <summary>Adds a sheet of figures behind the others once all others are there.</summary>
    public void AddLast(Action addSheet) => lastSheets.Add(addSheet);

    /// <summary>Adds the rows of a long table under its header; its sheet holds nothing below.</summary>
    public void AddRows(PlacedTable table) => tables.Add(table);

    /// <summary>Adds a formula to a cell, with the format of its value.</summary>
    public void AddFormula(IXLCell cell, Formula formula, string formatCode)
    {
        SheetStyle.Output(cell, formatCode);
        AddFormula(cell, formula);
    }

    /// <summary>Adds a formula to a cell.</summary>
    public void AddFormula(IXLCell cell, Formula formula) =>
        formulas.Add(new(cell.Worksheet.Name, cell.Address.RowNumber, cell.Address.ColumnNumber, formula));

    /// <summary>Adds a chart.</summary>
    public void AddChart(PlacedChart chart) => charts.Add(chart);

    /// <summary>Leaves a sheet of figures out of a printed workbook: its print area is an empty cell right of its columns. To print it,
    /// clear the print area.</summary>
    public void DoNotPrint(IXLWorksheet sheet, int columns)
    {
        Print(sheet);
        sheet.PageSetup.PrintAreas.Clear();
        sheet.PageSetup.PrintAreas.Add(1, columns + 2, 1, columns + 2);
    }

    /// <summary>Lays a sheet out for print: A4, one page wide, numbered, named by study.</summary>
    /// <param name="sheet">To be printed.</param>
    /// <param name="pagesTall">It is made small enough for so many; 0 for as many as it needs.</param>
    /// <param name="portrait">For a sheet of text; landscape for others.</param>
    public void Print(IXLWorksheet sheet, int pagesTall = 0, bool portrait = false)
    {
        var page = sheet.PageSetup;
        page.PaperSize = XLPaperSize.A4Paper;
        page.PageOrientation = portrait ? XLPageOrientation.Portrait : XLPageOrientation.Landscape;
        page.FitToPages(1, pagesTall);
        page.Margins.SetLeft(0.5).SetRight(0.5).SetTop(0.7).SetBottom(0.7).SetHeader(0.3).SetFooter(0.3);
        page.Header.Left.AddText(InHeader(study.FullTitle));
        page.Header.Right.AddText(XLHFPredefinedText.SheetName);
        page.Header.Center.AddText(InHeader(DatumText.HangPoint(study.Machine)));
        page.Footer.Center.AddText(InHeader(DatumText.Datum(study.Machine)));
        page.Footer.Left.AddText(InHeader($"FrameOpt {info.ToolVersion}, {info.StudyFileName}, {study.Hash[..8]}"));
        page.Footer.Right.AddText("page ");
        page.Footer.Right.AddText(XLHFPredefinedText.PageNumber);
        page.Footer.Right.AddText(" of ");
        page.Footer.Right.AddText(XLHFPredefinedText.NumberOfPages);
    }

    /// <summary>In a page header an ampersand is a code unless doubled, and all of it must stay under 255 characters.</summary>
    private static string InHeader(string text)
    {
        var line = TextSanitizer.Clean(text).ReplaceLineEndings(" ");
        return TextSanitizer.Clean(line.Length <= MaxHeaderTextLength ? line : line[..MaxHeaderTextLength] + "…").Replace("&", "&&");
    }

    /// <summary>Everything but the rows of the tables, which are given with the path of their sheet in the package.</summary>
    private IReadOnlyDictionary<string, PlacedTable> Save(Stream package)
    {
        sheets.SaveAs(package, new SaveOptions
        {
            ValidatePackage = false,
            EvaluateFormulasBeforeSaving = false,
            GenerateCalculationChain = false
        });
        using var document = SpreadsheetDocument.Open(package, isEditable: true);
        var book = document.WorkbookPart!;
        CellWriter.Write(book, formulas);
        ChartWriter.Write(book, charts);
        MakePrintTitlesAbsolute(book);
        NamedStyles.Add(book);
        ReproduciblePackage.SetProperties(document, $"FrameOpt {info.ToolVersion}", study.FullTitle);
        return tables.ToDictionary(table => CellWriter.Sheet(book, table.SheetName).Uri.OriginalString.TrimStart('/'));
    }

    /// <summary>Gives the rows and columns repeated on every printed page dollar signs: ClosedXML 0.95 leaves them out, and spreadsheet
    /// programs then repeat nothing.</summary>
    private static void MakePrintTitlesAbsolute(WorkbookPart book)
    {
        foreach (var name in book.Workbook.Descendants<DefinedName>().Where(name => name.Name == "_xlnm.Print_Titles"))
            name.Text = PrintTitleReference().Replace(name.Text, "!$$$1:$$$2");
    }

    [GeneratedRegex("!([A-Z]+|[0-9]+):([A-Z]+|[0-9]+)")]
    private static partial Regex PrintTitleReference();
}
