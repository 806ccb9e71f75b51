using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>How many designs went where, and why the search ended.</summary>
internal static class CountsSection
{
    private const int ReasonsShown = 3;

    public static AnswerSection Of(StudyResult result)
    {
        var counts = result.Counts;
        List<string> lines =
        [
            $"{Figures.Count(counts.Evaluated)} designs evaluated, {StudyWords.Among(result.Study)}: {Figures.Count(counts.Failed)} cannot fly, "
                + $"{Figures.Count(counts.OutsideLimits)} break a limit, {Figures.Count(counts.Feasible)} are feasible, {Figures.Count(result.Front.Count)} of them on the front.",
            $"{(!result.IsComplete ? "NOT COMPLETE" : result.Study.Search is SearchSetting.Exhaustive ? "Complete" : "Ended")}: {result.StopReason}.",
            .. counts.FailedBy.Take(ReasonsShown).Select(reason => $"Cannot fly: {reason.Reason} ({Figures.Count(reason.Count)} designs)."),
        ];
        return new AnswerSection("Counts", lines);
    }
}
