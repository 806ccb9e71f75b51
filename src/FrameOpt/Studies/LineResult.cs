using FrameOpt.Model;
using FrameOpt.ProductLine;
using FrameOpt.Running;

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

/// <summary>One of the geometries a line makes.</summary>
/// <param name="Letter">A, B, C ..., from the one for the lightest pilots on.</param>
/// <param name="Candidate">Its number among the candidates.</param>
/// <param name="Design">As built on the study's own machine.</param>
/// <param name="Customers">How many customers get it.</param>
/// <param name="Share">Their part of all shares, 0 to 1.</param>
public sealed record LineGeometry(char Letter, int Candidate, FrameGeometry Design, int Customers, double Share);

/// <summary>What a row of customers gets, and what it would get made to measure.</summary>
/// <param name="Row">Who.</param>
/// <param name="Geometry">Index of the geometry they get; -1 when none is allowed for them.</param>
/// <param name="Cost">In the response's unit; infinite when none is allowed.</param>
/// <param name="EffortWorst">The largest effort of all phases with it; not a number when none is allowed.</param>
/// <param name="Own">The candidate that suits them best, as built on the study's own machine; null when no candidate is allowed for them.</param>
/// <param name="OwnCost">With that candidate; infinite when there is none.</param>
/// <param name="Regret">Cost less own cost: 0 or more; infinite when only the line leaves them out.</param>
public sealed record LineServed(LineRow Row, int Geometry, double Cost, double EffortWorst, FrameGeometry? Own, double OwnCost, double Regret);

/// <summary>Customers that nothing tells apart: one outfit, one pilot mass.</summary>
/// <param name="Outfit">Which.</param>
/// <param name="PilotMassKilograms">Of each.</param>
/// <param name="Share">Of all of them together.</param>
/// <param name="Customers">Their numbers, ascending.</param>
public sealed record LineRow(int Outfit, double PilotMassKilograms, double Share, IReadOnlyList<int> Customers)
{
    /// <summary>All rows of some customers, by outfit and then by pilot mass.</summary>
    public static IReadOnlyList<LineRow> Of(IReadOnlyList<LineCustomer> customers) =>
    [
        .. Enumerable.Range(0, customers.Count)
            .GroupBy(c => (customers[c].Outfit, customers[c].PilotMassKilograms))
            .OrderBy(alike => alike.Key)
            .Select(alike => new LineRow(alike.Key.Outfit, alike.Key.PilotMassKilograms, alike.Sum(c => customers[c].Share), [.. alike])),
    ];
}
