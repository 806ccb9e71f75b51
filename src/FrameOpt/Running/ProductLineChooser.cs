using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Chooses the best line of any number of geometries: for every row of customers, or for representatives where there are too
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
        [.. UnservedExplanation.UnservedMessages(problem, solution, [.. rows.Select(Name)])];

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
/// <param name="Solution">Over the rows of customers.</param>
/// <param name="Aggregated">When representatives were chosen for, or null.</param>
/// <param name="UnservedMessages">Sentences on customers left out.</param>
/// <param name="Infeasible">What rules out every candidate, for the first few customers that none suits.</param>
internal sealed record ProductLineChoice(
    ProductLineSolution Solution, AggregatedSolution? Aggregated, IReadOnlyList<string> UnservedMessages,
    IReadOnlyList<InfeasibleCustomers> Infeasible);
