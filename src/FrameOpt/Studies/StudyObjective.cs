using FrameOpt.Model.Mission;

namespace FrameOpt.Studies;

/// <summary>A response with a goal.</summary>
/// <param name="Response">What is sought.</param>
/// <param name="Maximise">True when more is better.</param>
/// <param name="Magnitude">True when the size counts whatever the sign: residuals, leans and other signed quantities of a phase are ranked
/// so.</param>
/// <param name="Resolution">Differences below this are not worth a row (in the response's unit); 0 for none.</param>
public sealed record StudyObjective(Response Response, bool Maximise, bool Magnitude, double Resolution);
