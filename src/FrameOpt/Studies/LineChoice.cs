using FrameOpt.Line;

namespace FrameOpt.Studies;

/// <summary>The best line of one number of geometries.</summary>
/// <param name="Solution">Over the rows of customers.</param>
/// <param name="Aggregated">When representatives were chosen for, or null.</param>
/// <param name="Unserved">Sentences on customers left out.</param>
internal sealed record LineChoice(LineSolution Solution, AggregatedLine? Aggregated, IReadOnlyList<string> Unserved);
