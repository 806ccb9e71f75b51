using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.Plans;

/// <summary>What a study's plan taught, when it asks for one: the runs, the effects, the surfaces.</summary>
internal static class PlanSheets
{
    public static void Add(XLWorkbook book, RunReport report, DeferredParts deferred)
    {
        if (report.Result.Plan is not { } answer)
            return;
        var runs = PlanSheet.Add(book, report, answer);
        EffectsSheet.Add(book, report, answer, deferred);
        SurfaceSheet.Add(book, report, answer, runs, deferred);
    }
}
