using FrameOpt.Fit;
using FrameOpt.Forms;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.StudyFile.Syntax;
using static System.FormattableString;

namespace FrameOpt.Reports.Forms;

/// <summary>What measurements say of a study, the same for the command line and the browser.</summary>
/// <param name="Headline">The hole that fits.</param>
/// <param name="IsWarning">True when no hole does, or none without violating a limit.</param>
/// <param name="Sections">In reading order.</param>
/// <param name="Corrected">The study with the numbers corrected.</param>
public sealed record FitAnswer(string Headline, bool IsWarning, IReadOnlyList<AnswerSection> Sections, CorrectedFrame Corrected)
{
    private const string Impossible = "These readings would move a number of the study out of what is possible, so nothing was corrected: ";

    /// <summary>The answer of two scales; null with why when nothing was corrected.</summary>
    /// <param name="frame">As hung.</param>
    /// <param name="reading">Of the scales.</param>
    /// <param name="date">On which they were read, for the head of the corrected file.</param>
    /// <param name="taking">How to take the corrected study over: a sentence.</param>
    /// <param name="refusal">Why not; null with an answer.</param>
    public static FitAnswer? OfScales(
        MeasuredFrame frame, ScaleReading reading, DateOnly date, string taking, out FitRefusal? refusal)
    {
        var (study, hung) = (frame.Study, frame.Geometry);
        var fit = HangCheckFit.Of(study, hung, reading);
        var correction = CorrectedStudy.Of(frame.Text, study, LearntNumber.Of(fit), fit.Correlations, hung.SpacingMetres,
            Invariant($"hang check read on {date:yyyy-MM-dd}, left ")
                + $"{NumberFormat.Load(reading.LeftNewtons)}, right {NumberFormat.Load(reading.RightNewtons)}");
        refusal = null;
        if (CorrectedFrame.Of(frame, correction, out var errors) is { } corrected)
            return Of([HangCheckFitSections.Readings(fit, study.Machine), HangCheckFitSections.Causes(fit)],
                HangCheckFitSections.Hole(frame.Factors, corrected), corrected, taking);
        refusal = new FitRefusal(false, errors,
            $"{Impossible}check that the scales read what is typed, and that frame, pilot and fuel are those of the study.");
        return null;
    }

    /// <summary>The answer of a filled form; null with why when nothing was corrected.</summary>
    /// <param name="frame">As built.</param>
    /// <param name="form">As filled in.</param>
    /// <param name="date">On which it was read, for the head of the corrected file.</param>
    /// <param name="taking">How to take the corrected study over: a sentence.</param>
    /// <param name="refusal">Why not; null with an answer.</param>
    public static FitAnswer? OfForm(MeasuredFrame frame, FilledForm form, DateOnly date, string taking, out FitRefusal? refusal)
    {
        refusal = frame.Study.Noise.Sources.Count > 0 ? null : new FitRefusal(false, [],
            "noise: none takes every number of the study as exact, so there is nothing to correct: remove that line.");
        if (refusal is not null)
            return null;
        var reading = FormReader.Read(form, frame.Study, frame.Geometry);
        if (reading.Diagnostics.Count > 0)
        {
            refusal = new FitRefusal(true, reading.Diagnostics, "");
            return null;
        }

        var fit = MeasuredFit.Of(frame.Study, reading.Runs);
        if (SignSuspicion.Of(fit) is { } wrong)
        {
            refusal = new FitRefusal(true, [], MeasuredSections.Suspicion(wrong));
            return null;
        }

        var origin = Invariant($"filled form {form.File} read on {date:yyyy-MM-dd}, {reading.Runs.Count} runs");
        if (MeasuredAnswer.Of(frame, fit, origin, out var errors) is { } answer)
            return Of(MeasuredSections.Of(answer, reading.NotMeasured, frame.Geometry.OffsetMetres),
                HangCheckFitSections.Hole(frame.Factors, answer.Corrected, "built"), answer.Corrected, taking);
        refusal = new FitRefusal(false, errors, $"{Impossible}check the form, and that machine, pilot and wing are those of the study.");
        return null;
    }

    private static FitAnswer Of(IEnumerable<AnswerSection> found, AnswerSection hole, CorrectedFrame corrected, string taking) => new(
        hole.Lines[0], corrected.Hole is not { MeetsLimits: true },
        [.. found, hole, Changes(corrected.Correction, taking), new AnswerSection("Cautions", Cautions.FirstPage)], corrected);

    private static AnswerSection Changes(CorrectedStudy correction, string taking) => correction.Changes.Count == 0
        ? new AnswerSection("The corrected study", ["No number of the study changes."])
        : new AnswerSection("The corrected study",
            [$"Only these numbers change; {taking} Run it: the choice over all factors may change too."],
            new AnswerTable(["number", "was", "is now"], [.. correction.Changes.Where(change => !change.IsList).Select(change =>
                (IReadOnlyList<string>)[change.Name, change.Before.Length == 0 ? "not given" : change.Before, change.After])]));
}

/// <summary>Why measurements corrected nothing.</summary>
/// <param name="IsOfForm">True where the findings are places of the form, false where they are of the study.</param>
/// <param name="Findings">What to correct.</param>
/// <param name="Sentence">What to do; empty where the findings say it.</param>
public sealed record FitRefusal(bool IsOfForm, IReadOnlyList<Diagnostic> Findings, string Sentence);
