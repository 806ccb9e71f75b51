using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>How many designs went where, and why the search ended.</summary>
internal static class CountsSection
{
    private const int MaxReasons = 3;

    public static AnswerSection Of(StudyResult result)
    {
        var counts = result.Counts;
        List<string> lines =
        [
            $"{NumberFormat.Count(counts.Evaluated)} designs evaluated, {StudyText.DesignSpace(result.Study)}: {NumberFormat.Count(counts.Failed)} cannot fly, "
                + $"{NumberFormat.Count(counts.Infeasible)} break a limit, {NumberFormat.Count(counts.Feasible)} are feasible, {NumberFormat.Count(result.Front.Count)} of them on the front.",
            $"{(!result.IsComplete ? "NOT COMPLETE" : result.Study.Search is SearchSetting.Exhaustive ? "Complete" : "Ended")}: {RunText.Of(result.StopReason)}.",
            .. counts.FailedBy.Take(MaxReasons)
                .Select(failed =>
                $"Cannot fly: {FailureText.Kind(result.Study.Mission, failed.Failure)} ({NumberFormat.Count(failed.Count)} designs)."),
        ];
        return new AnswerSection("Counts", lines);
    }
}
