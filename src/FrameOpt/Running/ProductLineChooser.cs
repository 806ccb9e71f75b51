using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Chooses the best line of any number of geometries: for every customer segment, or for representatives where there are too
/// many.</summary>
internal sealed class ProductLineChooser(
    ProductLineSetting setting, IReadOnlyList<CustomerSegment> rows, ProductLineCandidates candidates, ProductLineCostTable table,
    CancellationToken cancel)
{
    private const int MaxRows = 5_000;
    private const long MaxCosts = 12_000_000;
    private const int Representatives = 400;
    private const int Explained = 5;

    private readonly double[] shares = [.. rows.Select(row => row.Share)];
    private readonly int[]? groups = candidates.Groups(setting.Common);
    private readonly int toChooseFrom = candidates.Count - setting.Fixed.Count;
    private double[][]? kept;

    /// <summary>The best line of so many geometries, the fixed ones among them.</summary>
    public ProductLineChoice Of(int count)
    {
        var (free, line) = (count - setting.Fixed.Count, (AggregatedSolution?)null);
        var solution = free == 0 || toChooseFrom == 0 ? null : Choose(free, out line);
        if (setting.Fixed.Count > 0)
            solution = new FixedVariants(setting.Fixed.Count, groups)
                .With(solution, setting.Objective, shares, candidates.Count, table.Row);
        return new ProductLineChoice(solution!, line is null ? null : line with { Solution = solution! },
            UnservedMessages(free, solution!), Infeasible(solution!));
    }

    /// <summary>Chooses among the candidates that are not fixed; their numbers begin at 0.</summary>
    private ProductLineSolution Choose(int count, out AggregatedSolution? aggregated)
    {
        var settings = new ProductLineSolverSettings(setting.Time, cancel);
        // Beside fixed geometries those of another group save nothing, and the rest are of one.
        var ofOneGroup = setting.Fixed.Count > 0 ? null : groups;
        ProductLineProblem Problem(double[][] costs, double[] weights) => new(costs, weights, count, setting.Objective, ofOneGroup);
        aggregated = null;
        if (table.Kept is { } costs && rows.Count <= MaxRows && (long)rows.Count * candidates.Count <= MaxCosts)
            return ProductLineSolver.Solve(Problem(kept ??= setting.Fixed.Count == 0 ? costs : Cut(costs), shares), settings);
        aggregated = AggregatedSolution.Solve(shares, toChooseFrom, setting.Fixed.Count == 0 ? table.Row : CutRow(), Problem,
            Representatives, settings);
        return aggregated.Solution;
    }

    private double[][] Cut(double[][] costs)
    {
        var beside = new FixedVariants(setting.Fixed.Count, groups);
        return Array.ConvertAll(costs, row =>
        {
            var cut = new double[toChooseFrom];
            beside.Cut(row, cut);
            return cut;
        });
    }

    private CostRowFunction CutRow()
    {
        var (beside, all) = (new FixedVariants(setting.Fixed.Count, groups), new double[candidates.Count]);
        return (row, cut) =>
        {
            table.Row(row, all);
            beside.Cut(all, cut);
        };
    }

    private IReadOnlyList<string> UnservedMessages(int free, ProductLineSolution solution) =>
    [
        .. UnservedExplanation.UnservedMessages(
            solution, [.. rows.Select(Name)], free, groups is not null, setting.Fixed.Count),
        .. setting.SeparateRotations && free + setting.Fixed.Count == 1
            ? ["The engines turn both ways, and a geometry serves those that turn one way: make two or more (`variants`), or write "
                + "`allow_both_rotations: true` in the section `line`."]
            : Array.Empty<string>(),
    ];

    private IReadOnlyList<InfeasibleCustomers> Infeasible(ProductLineSolution solution) =>
    [
        .. solution.Unservable.Take(Explained)
            .Select(row => InfeasibilityReason.Of(setting.Configurations[rows[row].Configuration], rows[row], candidates)),
    ];

    private string Name(CustomerSegment row)
    {
        var first = setting.Customers[row.Customers[0]].Name;
        return row.Customers.Count == 1 ? first : $"{first} and {row.Customers.Count - 1} like it";
    }
}

/// <summary>The best line of one number of geometries.</summary>
/// <param name="Solution">Over the customer segments.</param>
/// <param name="Aggregated">The aggregation where representatives were used, or null.</param>
/// <param name="UnservedMessages">Sentences on customers left out.</param>
/// <param name="Infeasible">What rules out every candidate, for the first few customers that none suits.</param>
internal sealed record ProductLineChoice(
    ProductLineSolution Solution, AggregatedSolution? Aggregated, IReadOnlyList<string> UnservedMessages,
    IReadOnlyList<InfeasibleCustomers> Infeasible);

/// <summary>Finds why no candidate suits some customers.</summary>
internal static class InfeasibilityReason
{
    /// <summary>Counts what rules out the candidates for one row of customers and gives the most frequent cause.</summary>
    /// <param name="configuration">What the customers fly.</param>
    /// <param name="customers">None of the candidates suits them.</param>
    /// <param name="candidates">One or more.</param>
    public static InfeasibleCustomers Of(ProductLineConfiguration configuration, CustomerSegment customers,
        ProductLineCandidates candidates)
    {
        var study = configuration.For(customers.PilotMassKilograms);
        var mission = StudyProblem.Model(study);
        var counts = new Dictionary<(FlightFailure? Failure, StudyLimit? Limit), int>();
        foreach (var c in Enumerable.Range(0, candidates.Count).Where(c => candidates.Suits(study.Machine, c)))
        {
            foreach (var reason in Reasons(study, mission.Evaluate(candidates.On(study.Machine, c))))
                counts[reason] = counts.GetValueOrDefault(reason) + 1;
        }

        var ((failure, limit), count) = counts.MaxBy(pair => pair.Value);
        return new InfeasibleCustomers(customers, failure, limit, count, candidates.Geometries);
    }

    private static IEnumerable<(FlightFailure?, StudyLimit?)> Reasons(Study study, DesignEvaluation evaluation) =>
        evaluation.Failure is { } failure
        ? [(failure.Cause, null)]
        : study.Limits.Where(limit => !limit.IsMetBy(evaluation))
            .Select(limit => ((FlightFailure?)null, (StudyLimit?)limit));
}
