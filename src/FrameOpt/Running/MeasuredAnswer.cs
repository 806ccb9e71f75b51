using FrameOpt.Fit;
using FrameOpt.Forms;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Running;

/// <summary>All that a filled form says of a study: the fit, the corrected study with the hole that fits then, and what to measure
/// next.</summary>
/// <param name="Fit">The readings beside the model.</param>
/// <param name="Corrected">The study and the built frame.</param>
/// <param name="Pairs">Numbers that the readings do not tell apart.</param>
/// <param name="Next">What to measure next.</param>
public sealed record MeasuredAnswer(
    MeasuredFit Fit, CorrectedFrame Corrected, IReadOnlyList<InseparablePair> Pairs, NextMeasurements Next)
{
    /// <summary>The answer; null with everything to correct when the readings would move a number out of what is possible.</summary>
    /// <param name="frame">As built.</param>
    /// <param name="fit">Of the runs.</param>
    /// <param name="origin">For the head of the corrected file.</param>
    /// <param name="errors">Of the corrected study.</param>
    public static MeasuredAnswer? Of(MeasuredFrame frame, MeasuredFit fit, string origin, out IReadOnlyList<Diagnostic> errors)
    {
        var built = frame.Geometry;
        var correction = CorrectedStudy.Of(
            frame.Text, fit.Study, LearntNumber.Of(fit), LearntNumber.Correlations(fit), built.SpacingMetres, origin);
        if (CorrectedFrame.Of(frame, correction, out errors) is not { } corrected)
            return null;
        var (state, lean) = (fit.State, fit.Study.Machine.Pilot.LeanMetres);
        IReadOnlyList<MeasuredRun> candidates =
            [.. MeasurementForm.Candidates(fit.Study, built).Where(run => NextMeasurements.IsSafe(run, state, lean))];
        return new MeasuredAnswer(fit, corrected, InseparablePair.Of(fit, candidates), NextMeasurements.Of(fit, built, candidates));
    }
}
