using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook;

/// <summary>What the answer rests on that the study did not state, and the model's sources.</summary>
internal static class AssumptionsSheet
{
    public static void Add(XLWorkbook book, IReportSource report) => TextSheet.Add(
        book,
        "Assumptions",
        report,
        [("from", 16), ("what", 36), ("value", 46), ("source", 60)],
        [
            .. report.Study.Assumptions.Select(assumption => (string[])[
                "this study", assumption.What, assumption.Value, assumption.Source]),
            .. ModelAssumptions.All.Select(assumption => (string[])["every study", assumption.What, assumption.Value, assumption.Source]),
        ]);
}
