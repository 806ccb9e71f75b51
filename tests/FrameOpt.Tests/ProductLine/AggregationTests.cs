using CsCheck;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Search;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.ProductLine;

public class AggregationTests
{
    [Fact]
    public void The_error_bound_holds_for_every_choice() => Gen.Select(BruteForce.Problems, Gen.Int[1, 8]).Sample(
        (problem, wanted) =>
        {
            var aggregation = CustomerAggregation.Of(problem.Shares, problem.Candidates, Row(problem), wanted);
            int[] every = [.. Enumerable.Range(0, problem.Shares.Length)];
            var bound = aggregation.ErrorBound(problem.Objective, problem.Shares, every);
            foreach (var choice in BruteForce.Choices(problem))
            {
                double[] all = [.. problem.Costs.Select(row => choice.Min(j => row[j]))];
                double[] stood = [.. aggregation.Representatives.Select(i => choice.Min(j => problem.Costs[i][j]))];
                var exact = ObjectiveValue.Of(problem.Objective, problem.Shares, all);
                var rough = ObjectiveValue.Of(problem.Objective, aggregation.Shares, stood);
                Assert.True(exact.Equals(rough) || Math.Abs(exact - rough) <= bound + 1e-9,
                    $"{exact} and {rough} differ by more than {bound}");
            }
        },
        iter: 300,
        threads: 1);

    [Fact]
    public void The_bound_of_an_aggregated_line_is_below_the_best_of_all_customers() =>
        Gen.Select(BruteForce.Problems, Gen.Int[1, 8]).Sample(
        (problem, wanted) =>
        {
            var line = AggregatedSolution.Solve(problem.Shares, problem.Candidates, Row(problem),
                (costs, shares) => new ProductLineProblem(costs, shares, problem.Count, problem.Objective, problem.Groups), wanted,
                    new ProductLineSolverSettings());
            var best = BruteForce.Best(problem);
            Assert.Equal(double.IsFinite(best), line.Solution.Feasible);
            if (!line.Solution.Feasible)
                return;
            Assert.True(line.Solution.Bound <= best * (1 + 1e-8) + 1e-12, $"bound {line.Solution.Bound}, best {best}");
            Assert.True(line.Solution.Value >= best * (1 - 1e-8) - 1e-12);
            Assert.True(line.Solution.Value - best <= (2 * line.ErrorBound) + 1e-8);
        },
        iter: 300,
        threads: 1);

    [Fact]
    public void As_many_representatives_as_customers_lose_nothing()
    {
        var costs = ProductLineSamples.Plane(30, 40, 7);
        var line = AggregatedSolution.Solve(ProductLineSamples.Shares(30), 40, (i, row) => costs[i].CopyTo(row),
            (rows, shares) => new ProductLineProblem(rows, shares, 3, new ProductLineObjective.Mean()), 30,
                new ProductLineSolverSettings());
        Assert.Equal(0, line.ErrorBound);
        Assert.Equal(ProductLineStopReason.Proven, line.Solution.Stop);
    }

    private static CostRowFunction Row(ProductLineProblem problem) => (customer, costs) => problem.Costs[customer].CopyTo(costs);
}
