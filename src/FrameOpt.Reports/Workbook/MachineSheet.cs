using ClosedXML.Excel;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook;

/// <summary>The study as understood: machine, wing, mission and settings.</summary>
internal static class MachineSheet
{
    public static void Add(XLWorkbook book, RunReport report) => TextSheet.Add(
        book,
        "Machine and mission",
        report,
        [("part", 14), ("what", 34), ("as understood", 90)],
        Rows(StudyDescription.Of(report.Result.Study)));

    private static IEnumerable<string[]> Rows(IReadOnlyList<DescriptionRow> description) =>
        description.Select((row, i) => (string[])[i > 0 && description[i - 1].Group == row.Group ? "" : row.Group, row.Label, row.Value]);
}
