using ClosedXML.Excel;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook;

/// <summary>Every phase of every design on the sheet Front, one row for each.</summary>
internal static class PhasesSheet
{
    private const string Note =
        "Every phase of every design on the sheet Front, found by rank and number. Signs: right, nose up and right side down are +. A blank margin has no bound.";

    public static DataRows Add(XLWorkbook book, RunReport report)
    {
        DataColumn[] columns =
        [
            DataColumn.OfNumbers("rank", "0"),
            DataColumn.OfNumbers("number", "0"),
            new("phase", DataColumn.TextFormat, 16),
            DataColumn.OfNumbers("weight", "0.0##"),
            new("steers", DataColumn.TextFormat, 10),
            .. ResponseCatalogue.OfPhases.Select(entry => DataColumn.OfNumbers(
                entry.Unit.Length == 0 ? entry.Name : $"{entry.Name} [{entry.Unit}]", NumberFormat.FormatCode(entry.Unit))),
        ];
        return DataSheet.Add(book, report, "Phases", Note, columns, [.. Rows(report)]);
    }

    private static IEnumerable<IReadOnlyList<object>> Rows(RunReport report)
    {
        foreach (var i in DisplayedDesigns.Of(report.Result))
        {
            var design = report.Result.Front[i];
            foreach (var phase in report.FrontEvaluations[i].Phases)
                yield return [(double)design.Rank, (double)design.Number, phase.Phase.Name, phase.Phase.Weight, phase.Steers,
                    .. phase.Values.Cast<object>()];
        }
    }
}
