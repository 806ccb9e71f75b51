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

    [Fact]
    public void No_more_are_left_out_than_may_be() =>
        Assert.Empty(PartlyServed.SetAside(awkward, 0.995, new ProductLineSolverSettings()));
}
