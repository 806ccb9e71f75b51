using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What to be careful of, what the model leaves out, and the standards.</summary>
internal static class CautionsSection
{
    /// <summary>The cautions of every first page, after the study's own warnings.</summary>
    public static AnswerSection Of(StudyResult result) => new("Cautions", [.. result.Study.Warnings, .. Cautions.FirstPage]);

    /// <summary>All cautions, limits of the model and standards, in groups.</summary>
    /// <param name="first">Cautions that come before the others.</param>
    public static IReadOnlyList<AnswerSection> Full(IEnumerable<string> first) =>
    [
        new("Cautions", [.. first, .. Cautions.Safety.Except([Cautions.Danger, Cautions.GroundTestFirst])]),
        new("What the model neglects", [.. Cautions.ModelLimits.Except(Cautions.FirstPage)]),
        new("Standards", Cautions.Standards),
    ];
}
