using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>The cautions no first page goes without, after the study's own warnings.</summary>
internal static class CautionsSection
{
    public static AnswerSection Of(StudyResult result) =>
        new("Cautions", [.. result.Study.Warnings, .. Cautions.FirstPage]);
}
