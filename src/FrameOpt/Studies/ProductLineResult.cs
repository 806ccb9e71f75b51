using FrameOpt.Model;
using FrameOpt.ProductLine;
using FrameOpt.Running;

namespace FrameOpt.Studies;

/// <summary>The answer of a line.</summary>
/// <param name="Study">As understood; its <see cref="Study.Line"/> with the number of geometries asked for.</param>
/// <param name="CandidatesDescription">Out of what was chosen.</param>
/// <param name="Candidates">How many.</param>
/// <param name="Solution">Value, bound and proof; its customers are <paramref name="Assignments"/> in order.</param>
/// <param name="Aggregated">How representatives stood for very many customers, or null when every one entered the choice.</param>
/// <param name="Curve">The best line of each number of geometries that was worked out, ascending.</param>
/// <param name="Geometries">To make, A first; none when no candidate is allowed for any customer.</param>
/// <param name="Assignments">Customers that nothing tells apart, by outfit and pilot mass.</param>
/// <param name="Chart">Which geometry for which pilot mass and outfit.</param>
/// <param name="UnservedMessages">Sentences on customers that the line leaves out; none when all are served.</param>
/// <param name="Infeasible">What rules out every candidate, for the first few customers that none suits.</param>
/// <param name="IsComplete">False when it was told to stop before everything asked for was worked out.</param>
public sealed record ProductLineResult(
    Study Study,
    string CandidatesDescription,
    int Candidates,
    ProductLineSolution Solution,
    AggregatedSolution? Aggregated,
    IReadOnlyList<ProductLineCurvePoint> Curve,
    IReadOnlyList<ProductLineGeometry> Geometries,
    IReadOnlyList<SegmentAssignment> Assignments,
    FittingChart Chart,
    IReadOnlyList<string> UnservedMessages,
    IReadOnlyList<InfeasibleCustomers> Infeasible,
    bool IsComplete)
{
    /// <summary>What was asked.</summary>
    public ProductLineSetting Setting => Study.Line!;

    /// <summary>The line of one geometry more, or null when it was not worked out.</summary>
    public ProductLineCurvePoint? OneMore => Curve.FirstOrDefault(point => point.Count == Setting.Count + 1);

    /// <summary>The rows left with the largest cost, the worst first; those that no candidate at all is allowed for are not among
    /// them.</summary>
    public IReadOnlyList<SegmentAssignment> WorstServed(int count) =>
        [.. Assignments.Where(served => served.BestDesign is not null).OrderByDescending(served => served.Cost).Take(count)];
}

/// <summary>Customers that no candidate suits, and what rules out the most candidates for them.</summary>
/// <param name="Customers">The customers.</param>
/// <param name="Failure">Why those candidates cannot fly, or null when a limit rules them out.</param>
/// <param name="Limit">The limit they break, or null when they cannot fly.</param>
/// <param name="RuledOut">How many candidates it rules out.</param>
/// <param name="Candidates">How many there are.</param>
public sealed record InfeasibleCustomers(
    CustomerSegment Customers, FlightFailure? Failure, StudyLimit? Limit, int RuledOut, int Candidates);

/// <summary>One of the geometries a line makes.</summary>
/// <param name="Letter">A, B, C ..., from the one for the lightest pilots on.</param>
/// <param name="Candidate">Its number among the candidates.</param>
/// <param name="Design">As built on the study's own machine.</param>
/// <param name="Customers">How many customers get it.</param>
/// <param name="Share">Their part of all shares, 0 to 1.</param>
public sealed record ProductLineGeometry(char Letter, int Candidate, FrameGeometry Design, int Customers, double Share);

/// <summary>What a row of customers gets, and what it would get made to measure.</summary>
/// <param name="Row">Who.</param>
/// <param name="Geometry">Index of the geometry they get; -1 when none is allowed for them.</param>
/// <param name="Cost">In the response's unit; infinite when none is allowed.</param>
/// <param name="EffortWorst">The largest effort of all phases with it; not a number when none is allowed.</param>
/// <param name="BestDesign">The candidate that suits them best, as built on the study's own machine; null when no candidate is allowed for
/// them.</param>
/// <param name="BestCost">With that candidate; infinite when there is none.</param>
/// <param name="Regret">Cost less own cost: 0 or more; infinite when only the line leaves them out.</param>
public sealed record SegmentAssignment(CustomerSegment Row, int Geometry, double Cost, double EffortWorst, FrameGeometry? BestDesign,
    double BestCost, double Regret);

/// <summary>Customers that nothing tells apart: one outfit, one pilot mass.</summary>
/// <param name="Configuration">Which.</param>
/// <param name="PilotMassKilograms">Of each.</param>
/// <param name="Share">Of all of them together.</param>
/// <param name="Customers">Their numbers, ascending.</param>
public sealed record CustomerSegment(int Configuration, double PilotMassKilograms, double Share, IReadOnlyList<int> Customers)
{
    /// <summary>All rows of some customers, by outfit and then by pilot mass.</summary>
    public static IReadOnlyList<CustomerSegment> Of(IReadOnlyList<ProductLineCustomer> customers) =>
    [
        .. Enumerable.Range(0, customers.Count)
            .GroupBy(c => (customers[c].Configuration, customers[c].PilotMassKilograms))
            .OrderBy(alike => alike.Key)
            .Select(alike => new CustomerSegment(alike.Key.Configuration, alike.Key.PilotMassKilograms, alike.Sum(c => customers[c].Share),
                [.. alike])),
    ];
}
