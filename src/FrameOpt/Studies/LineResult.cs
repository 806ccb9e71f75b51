using FrameOpt.Line;

namespace FrameOpt.Studies;

/// <summary>The answer of a line.</summary>
/// <param name="Study">As understood; its <see cref="Study.Line"/> with the number of geometries asked for.</param>
/// <param name="CandidatesWords">Out of what was chosen.</param>
/// <param name="Candidates">How many.</param>
/// <param name="Solution">Value, bound and proof; its customers are <paramref name="Served"/> in order.</param>
/// <param name="Aggregated">How representatives stood for very many customers, or null when every one entered the choice.</param>
/// <param name="Curve">The best line of each number of geometries that was worked out, ascending.</param>
/// <param name="Geometries">To make, A first; none when no candidate is allowed for any customer.</param>
/// <param name="Served">Customers that nothing tells apart, by outfit and pilot mass.</param>
/// <param name="Chart">Which geometry for which pilot mass and outfit.</param>
/// <param name="Unserved">Sentences on customers that the line leaves out; none when all are served.</param>
/// <param name="IsComplete">False when it was told to stop before everything asked for was worked out.</param>
public sealed record LineResult(
    Study Study,
    string CandidatesWords,
    int Candidates,
    LineSolution Solution,
    AggregatedLine? Aggregated,
    IReadOnlyList<LineCurvePoint> Curve,
    IReadOnlyList<LineGeometry> Geometries,
    IReadOnlyList<LineServed> Served,
    FittingChart Chart,
    IReadOnlyList<string> Unserved,
    bool IsComplete)
{
    /// <summary>What was asked.</summary>
    public LineSetting Setting => Study.Line!;

    /// <summary>The line of one geometry more, or null when it was not worked out.</summary>
    public LineCurvePoint? OneMore => Curve.FirstOrDefault(point => point.Count == Setting.Count + 1);

    /// <summary>The rows left with the largest cost, the worst first; those that no candidate at all is allowed for are not among them.</summary>
    public IReadOnlyList<LineServed> WorstServed(int count) => [.. Served.Where(served => served.Own is not null).OrderByDescending(served => served.Cost).Take(count)];
}
