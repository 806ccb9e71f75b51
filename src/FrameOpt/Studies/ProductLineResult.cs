using FrameOpt.Model;
using FrameOpt.ProductLine;
using FrameOpt.Studies.Noise;

namespace FrameOpt.Studies;

/// <summary>The results of a product line.</summary>
/// <param name="Study">As understood; its <see cref="Study.Line"/> with the number of geometries asked for.</param>
/// <param name="CandidatesDescription">Description of the candidates.</param>
/// <param name="Candidates">Number of candidates.</param>
/// <param name="Solution">Value, bound and proof; its customers are <paramref name="Assignments"/> in order.</param>
/// <param name="Aggregated">The aggregation to representatives where there are very many customers; null when every customer entered the
/// problem.</param>
/// <param name="Curve">The best line of each number of geometries that was computed, ascending.</param>
/// <param name="Geometries">The geometries to make, those of the study first, then those chosen; none when no candidate is allowed for any
/// customer.</param>
/// <param name="Assignments">One per segment, by outfit and pilot mass.</param>
/// <param name="Chart">Which geometry for which pilot mass and outfit.</param>
/// <param name="UnservedMessages">Sentences on customers that the line leaves out; none when all are served.</param>
/// <param name="Infeasible">What rules out every candidate, for the first few customers that none suits.</param>
/// <param name="IsComplete">False when it was told to stop before everything asked for was computed.</param>
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
    /// <summary>The line as built, first as the study has it, then with one number at a time otherwise.</summary>
    public IReadOnlyList<LineStress> Stress { get; init; } = [];

    /// <summary>What each segment costs with the geometries of the line and of the lines of other numbers; null where there are too many
    /// segments.</summary>
    public LineCosts? Costs { get; init; }

    /// <summary>How much hangs on the best line being exactly this one; null where it was not looked at.</summary>
    public LineSureness? Sureness { get; init; }

    /// <summary>The geometries decided on before, alone; null where the study records none.</summary>
    public DecidedLine? Decided { get; init; }

    /// <summary>What the study asks of the product line.</summary>
    public ProductLineSetting Setting => Study.Line!;

    /// <summary>The line of one geometry more, or null when it was not computed.</summary>
    public ProductLineCurvePoint? OneMore => Curve.FirstOrDefault(point => point.Count == Setting.Count + 1);

    /// <summary>The segments with the largest cost, worst first, without those that no candidate is allowed for.</summary>
    public IReadOnlyList<SegmentAssignment> WorstServed(int count) =>
        [.. Assignments.Where(served => served.BestDesign is not null).OrderByDescending(served => served.Cost).Take(count)];
}

/// <summary>The geometries that were decided on, in the line that is asked for now.</summary>
/// <param name="Value">What the line minimises, with these geometries alone; infinite where they leave somebody out.</param>
/// <param name="Unserved">Weight of the customers whom some candidate suits and none of these does.</param>
public sealed record DecidedLine(double Value, double Unserved);

/// <summary>A table of costs.</summary>
/// <param name="Designs">The geometries of the line in its order, then others that were the best for another number of geometries.</param>
/// <param name="Rows">For each segment a cost for each of them; infinite where not allowed.</param>
public sealed record LineCosts(IReadOnlyList<FrameGeometry> Designs, IReadOnlyList<double[]> Rows);

/// <summary>A line as built when one number is otherwise.</summary>
/// <param name="Source">The number that is off; null when none is, or when every pilot weighs more or less.</param>
/// <param name="Deviation">How far it is off, in its unit; of the pilots in kg.</param>
/// <param name="WorstEffort">The largest effort of any customer in any settled phase; not a number where none flies.</param>
/// <param name="MeanCost">Mean of the response that is the cost, over the customers within the limits; not a number where none is.</param>
/// <param name="WorstCost">The same of the worst of them.</param>
/// <param name="OutsideLimits">Share of the customers whose geometry cannot fly there or breaks a limit.</param>
/// <param name="BetterWithAnother">Share of the customers whom another geometry of the line would serve better.</param>
/// <param name="MeanChange">By how much the cost of a customer changes, up or down: the mean over those within the limits before and
/// after; not a number where none is.</param>
public sealed record LineStress(
    NoiseSource? Source, double Deviation, double WorstEffort, double MeanCost, double WorstCost, double OutsideLimits,
    double BetterWithAnother, double MeanChange);

/// <summary>Customers that no candidate suits, and what rules out the most candidates for them.</summary>
/// <param name="Customers">The customers.</param>
/// <param name="Failure">Why those candidates cannot fly, or null when a limit rules them out.</param>
/// <param name="Limit">The limit they break, or null when they cannot fly.</param>
/// <param name="RuledOut">How many candidates it rules out.</param>
/// <param name="Candidates">How many there are.</param>
public sealed record InfeasibleCustomers(
    CustomerSegment Customers, FlightFailure? Failure, StudyLimit? Limit, int RuledOut, int Candidates);

/// <summary>One of the geometries a line makes.</summary>
/// <param name="Name">As the study names it; of those chosen the letters that are left, from the one for the lightest pilots on.</param>
/// <param name="Candidate">Its number among the candidates.</param>
/// <param name="Design">As built on the study's own machine.</param>
/// <param name="Customers">Number of customers assigned to it.</param>
/// <param name="Share">Their share of all shares, 0 to 1.</param>
/// <param name="Rotations">How the propellers turn that it is for, seen from behind: those of its customers and of its cells of the
/// fitting chart; two only where the study allows it.</param>
/// <param name="IsFixed">True when the study gives it, so that it was not chosen.</param>
public sealed record ProductLineGeometry(
    string Name, int Candidate, FrameGeometry Design, int Customers, double Share, IReadOnlyList<Rotation> Rotations, bool IsFixed)
{
    /// <summary>The geometry on a customer's machine: its factors, and the machine's own values for all else.</summary>
    /// <param name="customer">The study of the customer.</param>
    public FrameGeometry On(Study customer) => customer.Factors.Aggregate(FrameGeometry.AsBuilt(customer.Machine),
        (geometry, factor) => geometry.With(factor.Input, Design[factor.Input]));
}

/// <summary>Assignment of a customer segment and its own best candidate.</summary>
/// <param name="Row">The segment.</param>
/// <param name="Geometry">Index of the geometry they get; -1 when none is allowed for them.</param>
/// <param name="Cost">In the response's unit; infinite when none is allowed.</param>
/// <param name="EffortWorst">The largest effort of all settled phases with it; not a number when none is allowed.</param>
/// <param name="BestDesign">The candidate that suits them best, as built on the study's own machine; null when no candidate is allowed for
/// them.</param>
/// <param name="BestCost">With that candidate; infinite when there is none.</param>
/// <param name="Regret">Cost less own cost: at least 0; infinite when only the line leaves them out, not a number when nothing suits
/// them.</param>
/// <param name="NextCost">With the second-best geometry of the line; infinite when no other is allowed for them.</param>
public sealed record SegmentAssignment(CustomerSegment Row, int Geometry, double Cost, double EffortWorst,
    FrameGeometry? BestDesign, double BestCost, double Regret, double NextCost);

/// <summary>A customer segment: customers with the same outfit and pilot mass.</summary>
/// <param name="Configuration">Index of the outfit.</param>
/// <param name="PilotMassKilograms">Pilot mass of each customer.</param>
/// <param name="Share">Total share.</param>
/// <param name="Customers">Indices of the customers, ascending.</param>
public sealed record CustomerSegment(int Configuration, double PilotMassKilograms, double Share, IReadOnlyList<int> Customers)
{
    /// <summary>The segments of some customers, by outfit and then by pilot mass.</summary>
    public static IReadOnlyList<CustomerSegment> Of(IReadOnlyList<ProductLineCustomer> customers) =>
    [
        .. Enumerable.Range(0, customers.Count)
            .GroupBy(c => (customers[c].Configuration, customers[c].PilotMassKilograms))
            .OrderBy(alike => alike.Key)
            .Select(alike => new CustomerSegment(alike.Key.Configuration, alike.Key.PilotMassKilograms, alike.Sum(c => customers[c].Share),
                [.. alike])),
    ];
}

/// <summary>Which geometry suits which pilot mass and outfit, for every whole kilogram.</summary>
/// <param name="ColumnOption">The option the columns are for; empty when there is none.</param>
/// <param name="LightestKilograms">First mass of the chart, a multiple of <paramref name="BandKilograms"/>.</param>
/// <param name="HeaviestKilograms">The last whole kilogram of the last band.</param>
/// <param name="BandKilograms">Height of a row of the chart.</param>
/// <param name="Blocks">One for each combination of the further options that makes a difference.</param>
public sealed record FittingChart(string ColumnOption, int LightestKilograms, int HeaviestKilograms, int BandKilograms,
    IReadOnlyList<FittingBlock> Blocks)
{
    /// <summary>First and last mass of each row, from the lightest on.</summary>
    public IEnumerable<(int From, int To)> Bands => Enumerable.Range(0, (HeaviestKilograms - LightestKilograms + 1) / BandKilograms)
        .Select(band => (LightestKilograms + band * BandKilograms, LightestKilograms + (band + 1) * BandKilograms - 1));
}

/// <summary>Columns of the fitting chart with the same further choices.</summary>
/// <param name="Title">Those choices; empty when the geometry depends on none.</param>
/// <param name="Columns">One for each choice of the first option.</param>
public sealed record FittingBlock(string Title, IReadOnlyList<FittingColumn> Columns);

/// <summary>A column of the fitting chart.</summary>
/// <param name="Name">The choice it is for.</param>
/// <param name="Rotation">How the propeller of that choice turns, seen from behind.</param>
/// <param name="Configuration">Index of an outfit of that choice; all that the column is for have the same spans.</param>
/// <param name="Spans">From the lightest pilot to the heaviest, without gaps.</param>
public sealed record FittingColumn(string Name, Rotation Rotation, int Configuration, IReadOnlyList<FittingSpan> Spans);

/// <summary>Pilot masses, in whole kilograms, that one geometry suits best.</summary>
/// <param name="FromKilograms">The first.</param>
/// <param name="ToKilograms">The last.</param>
/// <param name="Geometry">Index of the geometry; -1 when none is allowed.</param>
public sealed record FittingSpan(int FromKilograms, int ToKilograms, int Geometry)
{
    /// <summary>The part of a column between two masses.</summary>
    public static IReadOnlyList<FittingSpan> Between(IReadOnlyList<FittingSpan> spans, int from, int to) =>
    [
        .. spans.Where(span => span.FromKilograms <= to && span.ToKilograms >= from)
            .Select(span => span with { FromKilograms = Math.Max(from, span.FromKilograms), ToKilograms = Math.Min(to, span.ToKilograms) }),
    ];
}
