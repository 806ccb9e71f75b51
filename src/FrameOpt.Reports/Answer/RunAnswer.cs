using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>The first page of a run in plain words, for the terminal, the workbook and the page alike.</summary>
/// <param name="Title">The study's, with the variant's name.</param>
/// <param name="Question">The study's; may be empty.</param>
/// <param name="Headline">The one line to read if only one is read.</param>
/// <param name="IsWarning">True when the headline is no plain recommendation: nothing feasible, a phase that cannot be held, a run cut
/// short.</param>
/// <param name="Sections">In reading order.</param>
public sealed record RunAnswer(
    string Title, string Question, string Headline, bool IsWarning, IReadOnlyList<AnswerSection> Sections)
{
    /// <summary>Words the answer of a run.</summary>
    public static RunAnswer Of(StudyResult result)
    {
        IReadOnlyList<AnswerSection> sections = result.Chosen is null
            ? [.. NearestMissSection.Of(result), .. PlanSummarySection.Of(result), CountsSection.Of(result), CautionsSection.Of(result)]
            :
            [
                PhasesSection.Of(result, result.Chosen),
                CostSection.Of(result, result.Chosen),
                DrillingSection.Of(result.Study, result.Chosen.Geometry),
                .. RoundingSection.Of(result, result.Chosen),
                HangCheckSection.Of(result.Study, result.Chosen.Geometry),
                .. LeverageSection.Of(result),
                BandSection.Of(result, result.Chosen),
                LimitsSection.Of(result),
                FlightChecksSection.Of(result.Study, result.Chosen),
                .. PlanSummarySection.Of(result),
                .. SearchQualitySection.Of(result),
                CountsSection.Of(result),
                CautionsSection.Of(result),
            ];
        var (headline, isWarning) = AnswerHeadline.Of(result);
        return new RunAnswer(result.Study.FullTitle, result.Study.Question, headline, isWarning, sections);
    }
}
