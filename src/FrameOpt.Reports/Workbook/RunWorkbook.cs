using ClosedXML.Excel;
using DocumentFormat.OpenXml.Packaging;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Reports.Workbook.Charts;
using FrameOpt.Reports.Workbook.LiveRanking;
using FrameOpt.Reports.Workbook.Plans;
using FrameOpt.Reports.Workbook.WhatIf;

namespace FrameOpt.Reports.Workbook;

/// <summary>The spreadsheet of a run, sheets in reading order.</summary>
public static class RunWorkbook
{
    /// <summary>Writes the workbook.</summary>
    /// <param name="report">The run.</param>
    /// <param name="stream">Left open.</param>
    public static void Write(RunReport report, Stream stream)
    {
        using var memory = new MemoryStream();
        var deferred = new DeferredParts();
        WriteSheets(report, memory, deferred);
        using (var document = SpreadsheetDocument.Open(memory, isEditable: true))
        {
            var book = document.WorkbookPart!;
            FormulaWriter.Write(book, deferred.Formulas);
            RowWriter.Append(book, deferred.Tables);
            ChartWriter.Write(book, deferred.Charts);
            PrintTitles.MakeAbsolute(book);
            NamedStyles.Add(book);
            CoreProperties.Write(document, report);
        }

        ZipTimestamps.Write(memory);
        memory.Position = 0;
        memory.CopyTo(stream);
    }

    private static void WriteSheets(RunReport report, Stream stream, DeferredParts deferred)
    {
        using var book = new XLWorkbook();
        ReadMeSheet.Add(book, report);
        SummarySheet.Add(book, report, RunAnswer.Of(report.Result));
        if (report.Result.Front.Count > 0)
            AddFront(book, report, deferred);
        PlanSheets.Add(book, report, deferred);
        MachineSheet.Add(book, report);
        AssumptionsSheet.Add(book, report);
        CautionsSheet.Add(book, report);
        foreach (var sheet in deferred.DataSheets)
            deferred.Tables.Add(sheet(book));
        book.SaveAs(stream, new SaveOptions
        {
            ValidatePackage = false,
            EvaluateFormulasBeforeSaving = false,
            GenerateCalculationChain = false
        });
    }

    /// <summary>What is there only when some design is feasible; the data behind the live sheets come last in the workbook.</summary>
    private static void AddFront(XLWorkbook book, RunReport report, DeferredParts deferred)
    {
        RankingSheets.Add(book, report, deferred);
        WhatIfSheets.Add(book, report, deferred);
        ChartSheets.Add(book, report, deferred);
        deferred.Tables.Add(FrontSheet.Add(book, report));
        deferred.Tables.Add(PhasesSheet.Add(book, report));
    }
}
