using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>A run with everything that its files are written from.</summary>
/// <param name="Result">The answer.</param>
/// <param name="Info">Study file, version and seed.</param>
/// <param name="FrontEvaluations">Every design of the front, fully evaluated, in the order of <see cref="StudyResult.Front"/>.</param>
public sealed record RunReport(StudyResult Result, RunInfo Info, IReadOnlyList<DesignEvaluation> FrontEvaluations)
{
    /// <summary>Evaluates the whole front.</summary>
    public static RunReport Of(StudyResult result, RunInfo info) =>
        new(result, info, [.. result.Front.Select(design => result.Mission.Evaluate(design.Geometry))]);
}

/// <summary>The first page of a run in plain words, the same for terminal, workbook and page.</summary>
/// <param name="Title">Of the study, with the variant's name.</param>
/// <param name="Question">Of the study; may be empty.</param>
/// <param name="Headline">The one line to read if only one is read.</param>
/// <param name="IsWarning">True when the headline is not a plain recommendation: nothing feasible, a phase that cannot be held, a run cut
/// short.</param>
/// <param name="Sections">In reading order.</param>
public sealed record RunAnswer(
    string Title, string Question, string Headline, bool IsWarning, IReadOnlyList<AnswerSection> Sections)
{
    /// <summary>The answer of a run.</summary>
    /// <param name="result">The run.</param>
    /// <param name="withCases">False to leave out the figures behind how sure it is, which a workbook has on a sheet of their own.</param>
    public static RunAnswer Of(StudyResult result, bool withCases = true)
    {
        var (headline, isWarning) = AnswerHeadline.Of(result);
        return new RunAnswer(result.Study.FullTitle, result.Study.Question, headline, isWarning,
        [
            .. DecisionSection.Of(result),
            .. result.Chosen is { } chosen ? OfChosen(result, chosen, withCases)
                : result.NearestMiss is { } miss
                ? [FeelSection.Of(result, miss.Evaluation), PhasesSection.Of(result, miss.Evaluation), LimitsSection.Of(result)]
                : AnswerHeadline.Example(result),
            .. PlanSections.Summary(result),
            .. SearchSection.Quality(result).Where(_ => result.Chosen is not null),
            .. result.Study.IsOneFrame ? Array.Empty<AnswerSection>() : [SearchSection.Counts(result)],
            CautionsSection.Of(result),
        ]);
    }

    private static IEnumerable<AnswerSection> OfChosen(StudyResult result, DesignEvaluation chosen, bool withCases) =>
    [
        UncertaintySection.Of(result.Study, result.Uncertainty),
        FeelSection.Of(result, chosen),
        PhasesSection.Of(result, chosen),
        CostSection.Of(result, chosen),
        DrillingSection.Of(result.Study, chosen.Geometry),
        .. RoundingSection.Of(result, chosen),
        .. ReasonsSection.Of(result.Study, chosen),
        GroundChecksSection.HangCheck(result.Study, chosen.Geometry),
        .. WingSection.Of(result),
        BandSection.Of(result, chosen),
        .. UncertaintySection.Figures(result.Study, chosen, result.Uncertainty).Where(_ => withCases),
        .. ChoiceSection.Of(result.Study, result.Uncertainty).Where(_ => withCases),
        LimitsSection.Of(result),
        .. BuildErrorsSection.Of(result),
        .. SpinUpSection.Of(result, chosen),
        GroundChecksSection.BeforeFlight(result.Study, chosen),
    ];
}

/// <summary>One part of the answer.</summary>
/// <param name="Title">A few words.</param>
/// <param name="Lines">Sentences, each a paragraph of its own.</param>
/// <param name="Table">Shown after the lines, or null.</param>
public sealed record AnswerSection(string Title, IReadOnlyList<string> Lines, AnswerTable? Table = null);

/// <summary>A small table of the answer: plain text, units included.</summary>
/// <param name="Headers">One for each column.</param>
/// <param name="Rows">Each has one text for every header; the first names the row.</param>
public sealed record AnswerTable(IReadOnlyList<string> Headers, IReadOnlyList<IReadOnlyList<string>> Rows);
