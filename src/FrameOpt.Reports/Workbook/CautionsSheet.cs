using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook;

/// <summary>Safety, the limits of the model, and the standards to consult.</summary>
internal static class CautionsSheet
{
    public static void Add(XLWorkbook book, IReportSource report) => TextSheet.Add(
        book,
        "Cautions",
        report,
        [("about", 20), ("caution", 120)],
        [
            .. Rows("this study", report.Study.Warnings),
            .. Rows("safety", Cautions.Safety),
            .. Rows("limits of the model", Cautions.ModelLimits),
            .. Rows("standards", Cautions.Standards),
        ]);

    private static IEnumerable<string[]> Rows(string about, IReadOnlyList<string> texts) =>
        texts.Select((text, i) => (string[])[i == 0 ? about : "", text]);
}
