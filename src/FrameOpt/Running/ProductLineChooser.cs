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

    public ProductLineChoice Of(int count)
    {
        var settings = new ProductLineSolverSettings(setting.Time, cancel);
        if (table.Kept is { } costs && rows.Count <= MaxRows && (long)rows.Count * candidates.Count <= MaxCosts)
        {
            var problem = new ProductLineProblem(costs, shares, count, setting.Objective, groups);
            var solution = ProductLineSolver.Solve(problem, settings);
            return new ProductLineChoice(solution, null, UnservedMessages(problem, solution), Infeasible(solution));
        }

        ProductLineProblem? representatives = null;
        var line = AggregatedSolution.Solve(
            shares, candidates.Count, table.Row, (rowCosts, rowShares) =>
                representatives = new ProductLineProblem(rowCosts, rowShares, count, setting.Objective, groups), Representatives, settings);
        return new ProductLineChoice(
            line.Solution, line, UnservedMessages(representatives!, line.Solution), Infeasible(line.Solution));
    }

    private IReadOnlyList<string> UnservedMessages(ProductLineProblem problem, ProductLineSolution solution) =>
    [
        .. UnservedExplanation.UnservedMessages(problem, solution, [.. rows.Select(Name)]),
        .. setting.SeparateRotations && problem.Count == 1
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
