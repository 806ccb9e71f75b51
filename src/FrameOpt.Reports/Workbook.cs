using ClosedXML.Excel;
using DocumentFormat.OpenXml.Packaging;

namespace FrameOpt.Reports;

/// <summary>The spreadsheet of a run, sheets in reading order.</summary>
public static class Workbook
{
    /// <summary>How many designs of the front, best first, the workbook holds; designs.csv holds all.</summary>
    public const int MostDesigns = 500;

    /// <summary>Writes the workbook.</summary>
    /// <param name="report">The run.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(RunReport report, Stream stream)
    {
        using var memory = new MemoryStream();
        var tables = WriteSheets(report, memory);
        using (var document = SpreadsheetDocument.Open(memory, isEditable: true))
        {
            RowWriter.Append(document.WorkbookPart!, tables);
            PrintTitles.MakeAbsolute(document.WorkbookPart!);
            NamedStyles.Add(document.WorkbookPart!);
        }

        memory.Position = 0;
        memory.CopyTo(stream);
    }

    private static IReadOnlyList<DataRows> WriteSheets(RunReport report, Stream stream)
    {
        using var book = new XLWorkbook();
        book.Properties.Title = PlainText.Clean(report.Result.Study.FullTitle);
        book.Properties.Author = $"FrameOpt {report.Info.ToolVersion}";
        SummarySheet.Add(book, report, Answer.Of(report.Result));
        DataRows[] tables = [FrontSheet.Add(book, report), PhasesSheet.Add(book, report)];
        MachineSheet.Add(book, report);
        AssumptionsSheet.Add(book, report);
        CautionsSheet.Add(book, report);
        book.SaveAs(stream, new SaveOptions { ValidatePackage = false, EvaluateFormulasBeforeSaving = false, GenerateCalculationChain = false });
        return tables;
    }
}
