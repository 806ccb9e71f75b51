using System.Text;
using FrameOpt.Fit;
using FrameOpt.Forms;
using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;
using FrameOpt.StudyFile;
using FrameOpt.StudyFile.Syntax;

namespace FrameOpt.Running;

/// <summary>All that a filled form says of a study: the fit, the corrected study, the hole that fits then, and what to measure
/// next.</summary>
/// <param name="Fit">The readings beside the model.</param>
/// <param name="Correction">The study with the numbers corrected.</param>
/// <param name="Before">The built frame by the study as written.</param>
/// <param name="After">The built frame by the corrected study.</param>
/// <param name="Hole">The offset that fits then; null when the study sweeps none, or none flies.</param>
/// <param name="Pairs">Numbers that the readings do not tell apart.</param>
/// <param name="Next">What to measure next.</param>
public sealed record MeasuredAnswer(
    MeasuredFit Fit, CorrectedStudy Correction, DesignEvaluation Before, DesignEvaluation After, HoleForFrame? Hole,
    IReadOnlyList<InseparablePair> Pairs, NextMeasurements Next)
{
    /// <summary>The answer; null with everything to correct when the readings would move a number out of what is possible.</summary>
    /// <param name="text">Of the study file.</param>
    /// <param name="fit">Of the runs.</param>
    /// <param name="frame">Every factor of the built frame at its one level.</param>
    /// <param name="built">The same as a geometry.</param>
    /// <param name="origin">For the head of the corrected file.</param>
    /// <param name="threads">Worker threads, 1 or more.</param>
    /// <param name="errors">Of the corrected study.</param>
    public static MeasuredAnswer? Of(
        string text, MeasuredFit fit, IReadOnlyList<StudyFactor> frame, FrameGeometry built, string origin, int threads,
        out IReadOnlyList<Diagnostic> errors)
    {
        var correction = CorrectedStudy.Of(
            text, fit.Study, LearntNumber.Of(fit), LearntNumber.Correlations(fit), built.SpacingMetres, origin);
        var reading = StudyReader.Parse(Encoding.UTF8.GetBytes(correction.Text), "the corrected study");
        errors = reading.Diagnostics;
        if (reading.Study is not { } corrected)
            return null;
        var (state, lean) = (fit.State, fit.Study.Machine.Pilot.LeanMetres);
        IReadOnlyList<MeasuredRun> candidates =
            [.. MeasurementForm.Candidates(fit.Study, built).Where(run => NextMeasurements.IsSafe(run, state, lean))];
        return new MeasuredAnswer(fit, correction, StudyProblem.Model(fit.Study).Evaluate(built),
            StudyProblem.Model(corrected).Evaluate(built),
            HoleForFrame.Of(corrected, frame, threads), InseparablePair.Of(fit, candidates), NextMeasurements.Of(fit, built, candidates));
    }
}
