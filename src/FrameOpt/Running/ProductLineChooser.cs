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

    /// <summary>True when every customer segment enters the problem.</summary>
    private bool IsExact => table.Kept is not null && rows.Count <= MaxRows && (long)rows.Count * candidates.Count <= MaxCosts;

    /// <summary>The best line of so many geometries, the fixed ones among them.</summary>
    public ProductLineChoice Of(int count)
    {
        var (free, line) = (count - setting.Fixed.Count, (AggregatedSolution?)null);
        var settings = new ProductLineSolverSettings(setting.Time, cancel);
        var nothing = free == 0 || toChooseFrom == 0;
        // Where there are too many customers the choice for representatives says who need not be served.
        HashSet<int> aside = setting.Serve < 1 && (nothing || IsExact) ? [.. SetAside(nothing ? 0 : free, settings)] : [];
        var solution = nothing ? null : Choose(free, aside, settings, out line);
        aside.UnionWith(line?.Aside ?? []);
        if (setting.Fixed.Count > 0)
            solution = new FixedVariants(setting.Fixed.Count, groups)
                .With(solution, setting.Objective, shares, candidates.Count, (row, costs) => Row(row, aside, costs));
        if (aside.Count > 0)
            solution = PartlyServed.PutBack(solution!, [.. aside.Order()], table.Row, candidates.Count);
        return new ProductLineChoice(solution!, line is null ? null : line with { Solution = solution! },
            UnservedMessages(free, solution!), Infeasible(solution!));
    }

    private void Row(int row, HashSet<int> aside, Span<double> costs)
    {
        if (aside.Contains(row))
            costs.Fill(double.PositiveInfinity);
        else
            table.Row(row, costs);
    }

    /// <summary>The customers that need not be served. The fixed geometries serve whom they suit.</summary>
    private IReadOnlyList<int> SetAside(int free, ProductLineSolverSettings settings)
    {
        if (free > 0)
            return PartlyServed.SetAside(Problem(Costs(), shares, free), setting.Serve, settings);
        var (costs, without, servable) = (new double[candidates.Count], new List<int>(), 0.0);
        for (var row = 0; row < rows.Count; row++)
        {
            table.Row(row, costs);
            if (!costs.Any(double.IsFinite))
                continue;
            servable += shares[row];
            if (costs.Take(setting.Fixed.Count).All(double.IsInfinity))
                without.Add(row);
        }

        return without.Sum(row => shares[row]) <= (1 - setting.Serve) * servable ? without : [];
    }

    private double[][] Costs() => kept ??= setting.Fixed.Count == 0 ? table.Kept! : Cut(table.Kept!);

    // Beside fixed geometries those of another group save nothing, and the rest are of one.
    private ProductLineProblem Problem(double[][] costs, double[] weights, int count) =>
        new(costs, weights, count, setting.Objective, setting.Fixed.Count > 0 ? null : groups);

    /// <summary>Chooses among the candidates that are not fixed; their numbers begin at 0.</summary>
    private ProductLineSolution Choose(
        int count, HashSet<int> aside, ProductLineSolverSettings settings, out AggregatedSolution? aggregated)
    {
        aggregated = null;
        if (IsExact)
        {
            var costs = Costs();
            return ProductLineSolver.Solve(Problem(aside.Count == 0 ? costs
                : [.. costs.Select((row, r) => aside.Contains(r) ? [.. row.Select(_ => double.PositiveInfinity)] : row)], shares, count),
                    settings);
        }

        aggregated = AggregatedSolution.Solve(shares, toChooseFrom, setting.Fixed.Count == 0 ? table.Row : CutRow(),
            (costs, weights) => Problem(costs, weights, count), Representatives, settings,
            setting.Serve < 1 ? problem => PartlyServed.SetAside(problem, setting.Serve, settings) : null);
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
