using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.LiveRanking;

/// <summary>The live ranking and the figures behind it.</summary>
internal static class RankingSheets
{
    public static void Add(XLWorkbook book, RunReport report, DeferredParts deferred)
    {
        var ranked = new RankedDesigns(report);
        var layout = new RankingLayout(ranked);
        RankingSheet.Add(book, report, ranked, layout, deferred);
        deferred.DataSheets.Add(end => RankingDataSheet.Add(end, report, ranked, layout));
    }
}
