using System.Text;
using FrameOpt.Fit;
using FrameOpt.Forms;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Running;

/// <summary>A frame that was measured, and the study that is corrected by it.</summary>
/// <param name="Text">Of the study file.</param>
/// <param name="Folder">Where the files lie that the study reads; null for none.</param>
/// <param name="Study">As read from it, without a variant.</param>
/// <param name="Factors">Of the frame: every factor at its one level.</param>
/// <param name="Geometry">The same as a geometry.</param>
/// <param name="Threads">Worker threads, 1 or more.</param>
public sealed record MeasuredFrame(
    string Text, string? Folder, Study Study, IReadOnlyList<StudyFactor> Factors, FrameGeometry Geometry, int Threads);

/// <summary>A study corrected by measurements, and what that means for the frame that was measured.</summary>
/// <param name="Correction">The study with the numbers corrected.</param>
/// <param name="Before">The frame by the study as written.</param>
/// <param name="After">The frame by the corrected study.</param>
/// <param name="Hole">The offset or pair of holes that fits then; null when the study sweeps none, or none flies.</param>
public sealed record CorrectedFrame(CorrectedStudy Correction, DesignEvaluation Before, DesignEvaluation After, HoleForFrame? Hole)
{
    /// <summary>Reads the corrected study and looks for the hole; null with everything to correct when a number would be out of what is
    /// possible.</summary>
    /// <param name="frame">As measured.</param>
    /// <param name="correction">Of its study.</param>
    /// <param name="errors">Of the corrected study.</param>
    public static CorrectedFrame? Of(MeasuredFrame frame, CorrectedStudy correction, out IReadOnlyList<Diagnostic> errors)
    {
        var reading = StudyReader.ParseIn(Encoding.UTF8.GetBytes(correction.Text), "the corrected study", frame.Folder);
        errors = reading.Diagnostics;
        return reading.Study is not { } corrected ? null : new CorrectedFrame(
            correction, StudyProblem.Model(frame.Study).Evaluate(frame.Geometry), StudyProblem.Model(corrected).Evaluate(frame.Geometry),
            HoleForFrame.Of(corrected, frame.Factors, frame.Threads));
    }
}

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
