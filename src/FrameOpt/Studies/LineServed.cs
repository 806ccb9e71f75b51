using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>What a row of customers gets, and what it would get made to measure.</summary>
/// <param name="Row">Who.</param>
/// <param name="Geometry">Index of the geometry they get; -1 when none is allowed for them.</param>
/// <param name="Cost">In the response's unit; infinite when none is allowed.</param>
/// <param name="EffortWorst">The largest effort of all phases with it; not a number when none is allowed.</param>
/// <param name="Own">The candidate that suits them best, as built on the study's own machine; null when no candidate is allowed for them.</param>
/// <param name="OwnCost">With that candidate; infinite when there is none.</param>
/// <param name="Regret">Cost less own cost: 0 or more; infinite when only the line leaves them out.</param>
public sealed record LineServed(LineRow Row, int Geometry, double Cost, double EffortWorst, FrameGeometry? Own, double OwnCost, double Regret);
