using FrameOpt.Search;
using FrameOpt.Studies;
using FrameOpt.StudyFile.Values;

namespace FrameOpt.Tests.Search;

public class ExhaustiveSearchTests
{
    // A problem whose evaluation is its design: what comes out says what was put in.
    private static Problem Echo(int[] levels, int rowFactor, params Constraint[] bounds) => new(
        [.. levels.Select((count, f) => new Factor.Discrete($"f{f}", [.. Enumerable.Range(0, count).Select(i => (double)i)]))],
        rowFactor,
        [.. levels.Select((_, f) => new Objective($"f{f}", false))],
        bounds,
        batch =>
        {
            var length = batch.Designs.RowLength;
            for (var r = 0; r < batch.Designs.RowCount; r++)
            {
                for (var i = 0; i < length; i++)
                {
                    for (var f = 0; f < levels.Length; f++)
                        batch.Objectives[f][r * length + i] = f == rowFactor ? batch.Designs.RowValues(r, batch.Problem)[i]
                            : batch.Designs.Row(r, levels.Length)[f];
                    foreach (var column in batch.ConstraintValues)
                        column[r * length + i] = batch.Objectives[0][r * length + i];
                    batch.Failures[r * length + i] = batch.Objectives[^1][r * length + i] == 1 ? (ushort)7 : (ushort)0;
                }
            }
        });

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(7)]
    public void Every_design_comes_once_in_the_order_of_its_number(int threads)
    {
        var problem = Echo([5, 41, 61, 13], 2);
        var grid = new Grid(problem);
        long number = 0;
        foreach (var batch in new ExhaustiveSearch().Run(problem, threads))
        {
            Assert.Equal(number, batch.Designs.FirstNumber);
            for (var i = 0; i < batch.Designs.Count; i++, number++)
            {
                if (i % 97 == 0)
                    Assert.Equal(grid.Design(number), batch.Objectives.Select(column => column[i]));
            }
        }

        Assert.Equal(5 * 41 * 61 * 13, number);
        Assert.Equal(number, grid.Count);
    }

    [Fact]
    public void The_row_factor_is_fastest_and_the_first_factor_slowest()
    {
        var grid = new Grid(Echo([2, 3, 4], 1));
        Assert.Equal([0, 0, 0], grid.Design(0));
        Assert.Equal([0, 1, 0], grid.Design(1));
        Assert.Equal([0, 0, 1], grid.Design(3));
        Assert.Equal([1, 0, 0], grid.Design(12));
        Assert.Equal([1, 2, 3], grid.Design(23));
    }

    [Fact]
    public void Failures_and_limits_are_counted_and_the_nearest_miss_is_kept()
    {
        var counts = new EvaluationCounts(1);
        foreach (var batch in new ExhaustiveSearch().Run(Echo([6, 2, 4], 2, new Constraint("f0", 3, double.PositiveInfinity)), 2))
            counts.Add(batch.Counts);
        Assert.Equal(48, counts.Evaluated);
        Assert.Equal(12, counts.Failed); // every fourth has its last factor at 1
        Assert.Equal(12, counts.Failures[7]);
        Assert.Equal(18, counts.Infeasible); // f0 of 0, 1 or 2: half of the 36 that succeed
        Assert.Equal(18, counts.ViolatedBy[0]);
        Assert.Equal(18, counts.Feasible);
        Assert.Equal(16, counts.NearestMiss); // the first design with f0 = 2
        Check.Close(1.0 / 3, counts.NearestMissViolation, relative: 1e-15, because: "one short of three");
    }

    [Fact]
    public void A_value_that_is_not_a_number_keeps_no_limit()
    {
        var bound = new Constraint("x", double.NegativeInfinity, 5);
        Assert.False(bound.IsSatisfiedBy(double.NaN));
        Assert.Equal(double.PositiveInfinity, bound.Violation(double.NaN));
        Assert.Equal(0, bound.Violation(5));
        Check.Close(0.2, bound.Violation(6), relative: 1e-15, because: "one over five");
        Check.Close(2, new Constraint("x", 0, 5).Violation(-2), relative: 1e-15, because: "a bound of zero is measured in ones");
    }
}
