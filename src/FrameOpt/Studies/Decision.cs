using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>What was decided on, by whom and why, as the study records it.</summary>
/// <param name="Design">The design that was chosen; null where geometries of a line were.</param>
/// <param name="Geometries">The names of the geometries of the line that were chosen; none where a design was.</param>
/// <param name="Date">As typed.</param>
/// <param name="By">Who decided.</param>
/// <param name="Reason">Why; may be empty.</param>
/// <param name="Rejected">What was considered and not taken, with why, as typed.</param>
public sealed record Decision(
    FrameGeometry? Design, IReadOnlyList<string> Geometries, string Date, string By, string Reason, IReadOnlyList<string> Rejected);

/// <summary>The geometries that were decided on, in the line that is asked for now.</summary>
/// <param name="Value">What the line minimises, with these geometries alone; infinite where they leave somebody out.</param>
/// <param name="Unserved">Weight of the customers whom some candidate suits and none of these does.</param>
public sealed record DecidedLine(double Value, double Unserved);
