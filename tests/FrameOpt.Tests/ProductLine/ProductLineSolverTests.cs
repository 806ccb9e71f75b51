using CsCheck;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;
using FrameOpt.Search;

namespace FrameOpt.Tests.ProductLine;

public class ProductLineSolverTests
{
    [Fact]
    public void No_choice_of_a_small_line_is_better_whatever_the_objective_and_the_groups() => BruteForce.Problems.Sample(
        problem =>
        {
            var solution = ProductLineSolver.Solve(problem, new ProductLineSolverSettings());
            var best = BruteForce.Best(problem);
            Assert.Equal(ProductLineStopReason.Proven, solution.Stop);
            Assert.True(solution.Chosen.Count <= problem.Count);
            Assert.True(problem.Groups is not { } groups || solution.Chosen.Select(j => groups[j]).Distinct().Count() <= 1);
            if (double.IsInfinity(best))
            {
                Assert.False(solution.Feasible);
                Assert.Equal(BruteForce.FewestLeftOut(problem), solution.Unserved.Count);
                return;
            }

            Check.Close(best, solution.Value, relative: 1e-8, absolute: 1e-12, because: "proven to one part in a thousand million");
            Assert.Equal(0, solution.Gap);
        },
        iter: 1500,
        threads: 1);

    [Fact]
    public void Each_customer_gets_the_chosen_candidate_of_least_cost() => BruteForce.Problems.Sample(
        problem =>
        {
            var solution = ProductLineSolver.Solve(problem, new ProductLineSolverSettings());
            for (var i = 0; i < problem.Costs.Length; i++)
            {
                var least = solution.Chosen.Select(j => problem.Costs[i][j]).Append(double.PositiveInfinity).Min();
                Assert.Equal(least, solution.CustomerCosts[i]);
                Assert.Equal(double.IsInfinity(least) ? -1 : solution.Chosen.First(j => problem.Costs[i][j] == least),
                    solution.Assigned[i]);
            }
        },
        iter: 300,
        threads: 1);

    [Fact]
    public void A_customer_entered_twice_is_one_of_twice_the_share() =>
        BruteForce.Problems.Where(problem => double.IsFinite(BruteForce.Best(problem))).Sample(
        problem =>
        {
            double[] doubled = [2 * problem.Shares[0], .. problem.Shares[1..]];
            var once = ProductLineSolver.Solve(new ProductLineProblem(problem.Costs, doubled, problem.Count, problem.Objective,
                problem.Groups), new ProductLineSolverSettings());
            var twice = ProductLineSolver.Solve(
                new ProductLineProblem([.. problem.Costs, problem.Costs[0]], [.. problem.Shares, problem.Shares[0]], problem.Count,
                    problem.Objective, problem.Groups),
                new ProductLineSolverSettings());
            Check.Close(once.Value, twice.Value, relative: 1e-8, absolute: 1e-12, because: "proven to one part in a thousand million");
        },
        iter: 300,
        threads: 1);

    [Fact]
    public void A_line_of_very_many_variants_gives_everyone_the_candidate_made_to_measure()
    {
        var costs = ProductLineSamples.Plane(40, 60, 3);
        var solution = ProductLineSolver.Solve(new ProductLineProblem(
            costs, ProductLineSamples.Shares(40), 60, new ProductLineObjective.Mean()), new ProductLineSolverSettings());
        Assert.Equal(costs.Select(row => row.Min()), solution.CustomerCosts);
    }

    [Fact]
    public void The_same_problem_gives_the_same_answer()
    {
        foreach (var objective in new ProductLineObjective[] { new ProductLineObjective.Mean(), new ProductLineObjective.Percentile(0.9),
            new ProductLineObjective.Blend(0.3) })
        {
            var problem = new ProductLineProblem(ProductLineSamples.Plane(60, 80, 4), ProductLineSamples.Shares(60), 4, objective);
            var (first, second) = (ProductLineSolver.Solve(problem, new ProductLineSolverSettings()),
                ProductLineSolver.Solve(problem, new ProductLineSolverSettings()));
            Assert.Equal(first.Chosen, second.Chosen);
            Assert.Equal((first.Value, first.Bound), (second.Value, second.Bound));
        }
    }

    [Fact]
    public void Stopped_at_once_it_still_gives_a_line_and_a_true_bound()
    {
        var problem = new ProductLineProblem(ProductLineSamples.Plane(60, 80, 5), ProductLineSamples.Shares(60), 4,
            new ProductLineObjective.Mean());
        var best = ProductLineSolver.Solve(problem, new ProductLineSolverSettings());
        var late = ProductLineSolver.Solve(problem, new ProductLineSolverSettings(TimeLimit: TimeSpan.Zero));
        var cancelled = ProductLineSolver.Solve(problem, new ProductLineSolverSettings(Cancel: new CancellationToken(canceled: true)));
        Assert.Equal((ProductLineStopReason.TimeLimit, ProductLineStopReason.Cancelled), (late.Stop, cancelled.Stop));
        foreach (var stopped in new[] { late, cancelled })
            Assert.True(stopped.Feasible && stopped.Bound <= best.Value && stopped.Value >= best.Value && stopped.Gap > 0);
    }

    [Fact]
    public void Each_further_variant_gains_and_the_last_is_made_to_measure()
    {
        var costs = ProductLineSamples.Plane(12, 12, 6);
        var problem = new ProductLineProblem(costs, ProductLineSamples.Shares(12), 1, new ProductLineObjective.Mean());
        ProductLineSolution[] lines = [.. Enumerable.Range(1, 12)
            .Select(count => ProductLineSolver.Solve(problem with { Count = count }, new ProductLineSolverSettings()))];
        Assert.All(lines.Skip(1).Zip(lines), pair => Assert.True(pair.First.Value <= pair.Second.Value + 1e-9));
        Assert.Equal(costs.Select(row => row.Min()), lines[^1].CustomerCosts);
    }

    [Fact]
    public void Wrong_numbers_are_refused()
    {
        Assert.Throws<ArgumentException>(() => new ProductLineProblem([[-1]], [1], 1, new ProductLineObjective.Mean()));
        Assert.Throws<ArgumentException>(() => new ProductLineProblem([[1]], [0], 1, new ProductLineObjective.Mean()));
        Assert.Throws<ArgumentException>(() => new ProductLineProblem([[1, 2]], [1], 1, new ProductLineObjective.Mean(), [1]));
        Assert.Throws<ArgumentException>(() => new ProductLineProblem([[1]], [1], 1, new ProductLineObjective.Percentile(0)));
        Assert.Throws<ArgumentException>(() => new ProductLineProblem([[1]], [1], 1, new ProductLineObjective.Blend(1.1)));
    }
}
