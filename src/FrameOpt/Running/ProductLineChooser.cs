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
            return new ProductLineChoice(solution, null, UnservedMessages(problem, solution));
        }

        ProductLineProblem? representatives = null;
        var line = AggregatedSolution.Solve(
            shares, candidates.Count, table.Row, (rowCosts, rowShares) =>
                representatives = new ProductLineProblem(rowCosts, rowShares, count, setting.Objective, groups), Representatives, settings);
        return new ProductLineChoice(line.Solution, line, UnservedMessages(representatives!, line.Solution));
    }

    private IReadOnlyList<string> UnservedMessages(ProductLineProblem problem, ProductLineSolution solution) =>
    [
        .. UnservedExplanation.UnservedMessages(problem, solution, [.. rows.Select(Name)]),
        .. solution.Unservable.Take(Explained)
            .Select(row =>
                $"{Name(rows[row])}: {InfeasibilityReason.Of(setting.Configurations[rows[row].Configuration], rows[row].PilotMassKilograms, candidates)}."),
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
internal sealed record ProductLineChoice(
    ProductLineSolution Solution, AggregatedSolution? Aggregated, IReadOnlyList<string> UnservedMessages);

/// <summary>The reason why no candidate is allowed for a customer.</summary>
internal static class InfeasibilityReason
{
    /// <summary>What rules out the most candidates, in words: "effort_worst at most 0.8 rules out 1,395 of 1,395 candidates".</summary>
    public static string Of(ProductLineConfiguration configuration, double pilotKilograms, ProductLineCandidates candidates)
    {
        var study = configuration.For(pilotKilograms);
        var mission = StudyProblem.Model(study);
        var counts = new Dictionary<string, int>();
        for (var c = 0; c < candidates.Count; c++)
        {
            foreach (var reason in Reasons(study, mission.Evaluate(candidates.On(study.Machine, c))))
                counts[reason] = counts.GetValueOrDefault(reason) + 1;
        }

        var (words, count) = counts.MaxBy(pair => pair.Value);
        return FormattableString.Invariant($"{words} rules out {count} of {candidates.Count} candidates");
    }

    private static IEnumerable<string> Reasons(Study study, DesignEvaluation evaluation) => evaluation.Failure is { } failure
        ? [$"that it cannot fly ({failure.Split(" (")[0]})"]
        : study.Limits.Where(limit => !limit.AsConstraint.IsSatisfiedBy(limit.ValueOf(evaluation)))
            .Select(limit => $"the limit {limit.Text}");
}
