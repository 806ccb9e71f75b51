using FrameOpt.Reports.Answer;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Page;

/// <summary>What the parts of the page are written from.</summary>
/// <param name="Report">The run.</param>
/// <param name="Answer">Its first page in words.</param>
/// <param name="Binder">The designs that can be shown.</param>
internal sealed record PageContent(RunReport Report, RunAnswer Answer, DesignBinder? Binder)
{
    public StudyResult Result => Report.Result;

    public Study Study => Report.Result.Study;

    /// <summary>True when there is a design to recommend.</summary>
    public bool IsFeasible => Result.Chosen is not null;

    public static PageContent Of(RunReport report)
    {
        var views = DesignView.Of(report);
        return new PageContent(report, RunAnswer.Of(report.Result), views.Count > 0 ? new DesignBinder(views) : null);
    }
}
