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
    public static void Write(RunReport report, Stream stream) =>
        Spreadsheet.Write(report.Result.Study, report.Info, book => AddSheets(book, report), stream);

    private static void AddSheets(Spreadsheet book, RunReport report)
    {
        var study = report.Result.Study;
        ReadMeSheet.Add(book, report);
        SummarySheet.Add(book, RunAnswer.Of(report.Result, withCases: false));
        if (report.Result.Front.Count > 0)
        {
            if (!study.IsOneFrame)
                RankingSheet.Add(book, report);
            if (report.Result is { Chosen: { } chosen, Uncertainty: { Bars.Count: > 0 } uncertainty })
                HowSureSheet.Add(book, study, chosen, uncertainty);
            WhatIfSheet.Add(book, report);
            ChartSheets.Add(book, report);
            FrontSheets.Add(book, report);
        }

        if (report.Result.Plan is { } plan)
        {
            var runs = PlanSheet.Add(book, plan);
            EffectsSheet.Add(book, plan);
            SurfaceSheet.Add(book, plan, runs);
        }

        ReferenceSheets.AddMachine(book, study);
        ReferenceSheets.AddAssumptions(book, study);
        ReferenceSheets.AddCautions(book, study);
    }
}
