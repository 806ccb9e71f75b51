using CsCheck;
using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.Tests.ProductLine;

/// <summary>Lines of which some variants are given, against the best of all choices that hold those.</summary>
public class FixedVariantsTests
{
    [Fact]
    public void No_choice_beside_the_fixed_variants_is_better_whatever_the_objective_and_the_groups() =>
        BruteForce.Problems.Where(problem => problem.Candidates > 2).SelectMany(problem => Gen.Int[1, 2], (problem, count) => (problem,
            count))
        .Where(one => one.problem.Groups is not { } groups || groups[0] == groups[one.count - 1]).Sample(
        one =>
        {
            var (problem, count) = (one.problem, one.count);
            var line = new ProductLineProblem(problem.Costs, problem.Shares, count + problem.Count, problem.Objective, problem.Groups);
            int[] servable = [.. Enumerable.Range(0, line.Costs.Length).Where(i => line.Costs[i].Any(double.IsFinite))];
            var best = servable.Length == 0 ? double.PositiveInfinity
                : BruteForce.Choices(line).Where(choice => Enumerable.Range(0, count).All(choice.Contains))
                    .Min(choice => ObjectiveValue.Of(line.Objective, [.. servable.Select(i => line.Shares[i])],
                        [.. servable.Select(i => choice.Min(j => line.Costs[i][j]))]));
            var solution = Solve(line, count);
            Assert.Equal(Enumerable.Range(0, count), solution.Chosen.Take(count));
            Assert.True(solution.Chosen.Count <= line.Count);
            if (double.IsInfinity(best))
                Assert.False(solution.Feasible && servable.Length > 0);
            else
                Check.Close(best, solution.Value, relative: 1e-8, absolute: 1e-12, because: "proven to one part in a thousand million");
        },
        iter: 500,
        threads: 1);

    [Fact]
    public void Fixed_variants_alone_are_assigned_and_one_that_nobody_takes_stays_in_the_line()
    {
        var solution = Solve(new ProductLineProblem([[1, 3, 0], [2, 5, 0]], [1, 3], 2, new ProductLineObjective.Mean()), 2);
        Assert.Equal(ProductLineStopReason.Fixed, solution.Stop);
        Assert.Equal([0, 1], solution.Chosen);
        Assert.Equal([0, 0], solution.Assigned);
        // (1 * 1 + 3 * 2) / 4
        Assert.Equal((1.75, 1.75), (solution.Value, solution.Bound));
    }

    private static ProductLineSolution Solve(ProductLineProblem line, int count)
    {
        var beside = new FixedVariants(count, line.Groups);
        var cut = Array.ConvertAll(line.Costs, row =>
        {
            var own = new double[line.Candidates - count];
            beside.Cut(row, own);
            return own;
        });
        var chosen = line.Count == count ? null : ProductLineSolver.Solve(
            new ProductLineProblem(cut, line.Shares, line.Count - count, line.Objective), new ProductLineSolverSettings());
        return beside.With(chosen, line.Objective, line.Shares, line.Candidates, (i, costs) => line.Costs[i].CopyTo(costs));
    }
}
