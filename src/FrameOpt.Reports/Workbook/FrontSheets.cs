using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Tables;
using FrameOpt.Reports.Workbook.Cells;

namespace FrameOpt.Reports.Workbook;

/// <summary>The designs of the front that a person is shown, best first, and every phase of each: tables to sort and filter.</summary>
internal static class FrontSheets
{
    private const string PhasesNote =
        "Every phase of every design on the sheet Front, identified by rank and number. Right, nose up and right side down are positive. "
            + "A blank margin is unbounded.";

    private const string OneFrameNote =
        "Every phase of this frame. Right, nose up and right side down are positive. A blank margin is unbounded.";

    public static void Add(Spreadsheet book, RunReport report)
    {
        var shown = DisplayedDesigns.Of(report.Result);
        IReadOnlyList<Studies.FrontDesign> front = [.. shown.Select(i => report.Result.Front[i])];
        IReadOnlyList<Model.Mission.DesignEvaluation> evaluations = [.. shown.Select(i => report.FrontEvaluations[i])];
        var note =
            $"{DisplayedDesigns.Summary(report.Result)} Offsets and angles: right +. Drilling dimensions seen from behind. A blank is a "
                + $"response for which the study gives no input.";
        if (!report.Result.Study.IsOneFrame)
            DataSheet.Add(book, "Front", note, FrontTable.Of(report.Result.Study, front, evaluations));
        DataSheet.Add(book, "Phases", report.Result.Study.IsOneFrame ? OneFrameNote : PhasesNote,
            FrontTable.Phases(report.Result.Study.Machine, front, evaluations));
    }
}
