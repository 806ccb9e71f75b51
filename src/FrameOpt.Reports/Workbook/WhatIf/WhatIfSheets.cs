using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook.WhatIf;

/// <summary>The sheet What if and the table behind it.</summary>
internal static class WhatIfSheets
{
    public static void Add(XLWorkbook book, RunReport report, DeferredParts deferred)
    {
        var table = new WhatIfTable(report.Result);
        var layout = new WhatIfLayout(table, report.Result.Study.Mission.Count);
        WhatIfSheet.Add(book, report, table, layout, deferred);
        deferred.DataSheets.Add(end => WhatIfDataSheet.Add(end, report, table, layout));
    }
}
