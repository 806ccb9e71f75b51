using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook;

/// <summary>The front, best first, as a table to sort and filter.</summary>
internal static class FrontSheet
{
    public static DataRows Add(XLWorkbook book, RunReport report)
    {
        var columns = FrontColumns.Of(report.Result.Study);
        var front = report.Result.Front;
        return DataSheet.Add(
            book,
            report,
            "Front",
            $"{DisplayedDesigns.Summary(report.Result)} Offsets and angles: right +. Drilling dimensions seen from behind. A blank is a response that the study gives no basis for.",
            [.. columns.Select(column => DataColumn.OfNumbers(column.Header, column.FormatCode))],
            [.. DisplayedDesigns.Of(report.Result).Select(i => (object[])[
                .. columns.Select(column => (object)column.Value(front[i], report.FrontEvaluations[i]))])]);
    }
}
