using FrameOpt.Model;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Forms;
using FrameOpt.Studies;

namespace FrameOpt.Web.State;

/// <summary>What a run answers.</summary>
/// <param name="Answer">In words.</param>
/// <param name="Pictures">What each uncertain number does alone, drawn; none where nothing is uncertain.</param>
/// <param name="Correction">The study corrected by measurements; null where nothing was corrected.</param>
public sealed record RunOutcome(RunAnswer Answer, IReadOnlyList<string> Pictures, Correction? Correction = null)
{
    /// <summary>Which factors matter to each response in the model itself, drawn; none where there is nothing to choose.</summary>
    public IReadOnlyList<string> Shares { get; init; } = [];

    /// <summary>What measurements say, or why they correct nothing.</summary>
    /// <param name="study">That was measured.</param>
    /// <param name="fit">The answer, or null.</param>
    /// <param name="refusal">Why there is none.</param>
    public static RunOutcome Of(Study study, FitAnswer? fit, FitRefusal? refusal) => fit is { } answer
        ? new(new RunAnswer(study.FullTitle, "", answer.Headline, answer.IsWarning, answer.Sections), [],
            new Correction(answer.Corrected.Correction.Text, answer.Corrected.Correction.Changes.Count > 0,
                answer.Corrected.Hole?.Design.Geometry))
        : new(new RunAnswer(study.FullTitle, "", refusal!.Sentence, true, refusal.Findings.Count == 0 ? []
            : [new AnswerSection("To correct", [.. refusal.Findings.Select(finding => finding.Text)])]), []);
}

/// <summary>A study corrected by measurements.</summary>
/// <param name="Text">Of its file.</param>
/// <param name="HasChanges">False when no number changes.</param>
/// <param name="Hole">The frame that was measured with the hole that fits now; null when none does.</param>
public sealed record Correction(string Text, bool HasChanges, FrameGeometry? Hole);

/// <summary>What the worker beside the page can do; the names are those of its methods.</summary>
public enum RunTask
{
    /// <summary>Runs the study.</summary>
    Run,

    /// <summary>Works out its product line.</summary>
    RunLine,

    /// <summary>Fits it to its flight card.</summary>
    Fit,

    /// <summary>Writes the flight card as a workbook.</summary>
    WriteForm,

    /// <summary>Reads a filled form.</summary>
    ReadForm,

    /// <summary>Analyses measured runs.</summary>
    Analyse,

    /// <summary>Makes the table of the runs of the study's plan.</summary>
    PlanRuns,

    /// <summary>Reads a table of runs.</summary>
    ReadTable,
}
