using FrameOpt.ProductLine;
using FrameOpt.ProductLine.PMedian;

namespace FrameOpt.Tests.ProductLine;

public class UnservedTests
{
    private const double No = double.PositiveInfinity;
    private static readonly string[] names = ["light", "middling", "heavy"];

    [Fact]
    public void A_customer_nobody_can_serve_is_named_and_the_rest_are_served()
    {
        var problem = new ProductLineProblem([[1, 2], [2, 1], [No, No]], [1, 1, 1], 2, new ProductLineObjective.Mean());
        var solution = ProductLineSolver.Solve(problem, new ProductLineSolverSettings());
        Assert.True(solution.Feasible);
        Assert.Equal(1, solution.Value);
        Assert.Equal([2], solution.Unservable);
        Assert.Contains("No candidate is allowed for heavy", Assert.Single(UnservedExplanation.UnservedMessages(solution, names,
            problem.Count, problem.Groups is not null)));
    }

    [Fact]
    public void Too_few_variants_are_told_with_the_nearest_miss()
    {
        var problem = new ProductLineProblem([[1, No, No], [1, 2, No], [No, No, 1]], [1, 1, 1], 1, new ProductLineObjective.Worst());
        var solution = ProductLineSolver.Solve(problem, new ProductLineSolverSettings());
        Assert.False(solution.Feasible);
        Assert.Equal([0], solution.Chosen);
        Assert.Equal([2], solution.Unserved);
        Assert.Equal(No, solution.Bound);
        Assert.Equal(
            "No choice of one candidate serves every customer: the closest leaves unserved heavy. "
                + "Allow more variants, or widen the limits of those customers.",
            Assert.Single(UnservedExplanation.UnservedMessages(solution, names, problem.Count, problem.Groups is not null)));
    }

    [Fact]
    public void Groups_that_cannot_serve_all_are_told_as_such()
    {
        var problem = new ProductLineProblem([[1, No], [No, 1]], [1, 1], 2, new ProductLineObjective.Mean(), groups: [7, 8]);
        var solution = ProductLineSolver.Solve(problem, new ProductLineSolverSettings());
        Assert.False(solution.Feasible);
        Assert.Contains("of one group", Assert.Single(UnservedExplanation.UnservedMessages(solution, names, problem.Count, problem.Groups
            is not null)));
    }

    [Fact]
    public void Nobody_servable_is_an_answer_and_no_crash()
    {
        var solution = ProductLineSolver.Solve(new ProductLineProblem([[No]], [1], 1, new ProductLineObjective.Mean()),
            new ProductLineSolverSettings());
        Assert.False(solution.Feasible);
        Assert.Empty(solution.Chosen);
        Assert.Equal([0], solution.Unservable);
    }

    [Fact]
    public void Regret_is_cost_over_made_to_measure()
    {
        var problem = new ProductLineProblem([[4, 9, 1], [5, 6, 7], [No, 3, No]], [1, 1, 1], 1, new ProductLineObjective.Mean());
        var solution = ProductLineSolver.Solve(problem, new ProductLineSolverSettings());
        Assert.Equal([1], solution.Chosen);
        CustomerRegret[] regrets =
            [.. problem.Costs.Select((row, customer) => CustomerRegret.Of(customer, row, solution.CustomerCosts[customer]))];
        Assert.Equal([8, 1, 0], regrets.Select(regret => regret.Regret));
        Assert.Equal([2, 0, 1], regrets.Select(regret => regret.BestCandidate));
    }
}
