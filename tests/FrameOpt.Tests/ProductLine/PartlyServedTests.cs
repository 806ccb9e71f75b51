using CsCheck;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.Tests.ProductLine;

public class PartlyServedTests
{
    private const double No = double.PositiveInfinity;

    /// <summary>The last customer, one piece, is served by the last candidate only, which serves nobody else well.</summary>
    private static readonly ProductLineProblem awkward = new(
        [[1, 9, 8], [9, 1, 8], [1, 2, 9], [No, No, 3]], [40, 40, 19, 1], 2, new ProductLineObjective.Blend(0.3));

    // With all served the pair must hold the last candidate; without the one piece the first two leave 1 to everybody.
    [Fact]
    public void One_awkward_customer_does_not_force_a_candidate()
    {
        var all = ProductLineSolver.Solve(awkward, new ProductLineSolverSettings());
        Assert.Contains(2, all.Chosen);
        var aside = PartlyServed.SetAside(awkward, 0.95, new ProductLineSolverSettings());
        Assert.Equal([3], aside);
        var rest = new ProductLineProblem([.. awkward.Costs.Select((row, i) => i == 3 ? [No, No, No] : row)], awkward.Shares, 2,
            awkward.Objective);
        var line = PartlyServed.PutBack(ProductLineSolver.Solve(rest, new ProductLineSolverSettings()), aside,
            (i, costs) => awkward.Costs[i].CopyTo(costs), 3);
        Assert.Equal([0, 1], line.Chosen);
        Assert.Equal(1, line.Value);
        Assert.Equal([3], line.SetAside);
        Assert.Empty(line.Unservable);
        Assert.True(line.Feasible);
    }

    // 6,000 customers, 1,500 of each of the four kinds above: four representatives stand for them without a difference, so the choice for
    // them is the exact one.
    [Fact]
    public void Of_very_many_customers_the_same_are_left_out_as_of_few()
    {
        double[] shares = [.. Enumerable.Range(0, 6_000).Select(i => awkward.Shares[i % 4])];
        var line = AggregatedSolution.Solve(shares, 3, (i, costs) => awkward.Costs[i % 4].CopyTo(costs),
            (costs, weights) => new ProductLineProblem(costs, weights, 2, awkward.Objective), 4, new ProductLineSolverSettings(),
            problem => PartlyServed.SetAside(problem, 0.95, new ProductLineSolverSettings()));
        Assert.Equal(Enumerable.Range(0, 6_000).Where(i => i % 4 == 3), line.Aside);
        Assert.Equal([0, 1], line.Solution.Chosen);
        Assert.Equal(1, line.Solution.Value);
        Assert.Equal(1, line.Solution.Bound);
        Assert.True(line.Solution.Proven);
    }

    [Fact]
    public void Enough_are_served_by_representatives_and_the_bound_is_below_the_best_for_those() =>
        Gen.Select(BruteForce.Problems, Gen.Int[1, 8], Gen.Double[0.3, 0.99]).Sample(
        (problem, wanted, serve) =>
        {
            var settings = new ProductLineSolverSettings();
            var line = AggregatedSolution.Solve(problem.Shares, problem.Candidates, (i, costs) => problem.Costs[i].CopyTo(costs),
                (costs, weights) => new ProductLineProblem(costs, weights, problem.Count, problem.Objective, problem.Groups), wanted,
                settings, representatives => PartlyServed.SetAside(representatives, serve, settings));
            var servable = Enumerable.Range(0, problem.Costs.Length).Where(i => problem.Costs[i].Any(double.IsFinite)).ToList();
            Assert.True(line.Aside.Sum(i => problem.Shares[i]) <= (1 - serve) * servable.Sum(i => problem.Shares[i]) * (1 + 1e-9));
            var rest = new ProductLineProblem([.. problem.Costs.Select((row, i) => line.Aside.Contains(i)
                ? [.. row.Select(_ => No)] : row)], problem.Shares, problem.Count, problem.Objective, problem.Groups);
            var best = BruteForce.Best(rest);
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
    public void No_more_are_left_out_than_may_be() =>
        Assert.Empty(PartlyServed.SetAside(awkward, 0.995, new ProductLineSolverSettings()));
}
