using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class BoxBehnkenTests
{
    // G. E. P. Box and D. W. Behnken 1960, Technometrics 2:455-475: the twelve middles of the edges of a cube.
    [Fact]
    public void Three_factors_give_the_middles_of_the_edges_in_the_published_order()
    {
        var plan = BoxBehnken.Build(PlanNames.Letters(3), 3);
        Assert.Equal(
            ["--0", "+-0", "-+0", "++0", "-0-", "+0-", "-0+", "+0+", "0--", "0+-", "0-+", "0++", "000", "000", "000"],
                plan.Runs.Select(run => run.Signs()));
    }

    // The same source: every pair of four factors at plus and minus one, the others zero.
    [Fact]
    public void Four_factors_give_the_published_points()
    {
        string[] published =
        [
            "--00", "-+00", "+-00", "++00", "-0-0", "-0+0", "+0-0", "+0+0", "-00-", "-00+", "+00-", "+00+",
            "0--0", "0-+0", "0+-0", "0++0", "0-0-", "0-0+", "0+0-", "0+0+", "00--", "00-+", "00+-", "00++",
        ];
        var plan = BoxBehnken.Build(PlanNames.Letters(4), 1);
        Assert.Equal(published.Order(StringComparer.Ordinal), plan.Runs.SkipLast(1)
            .Select(run => run.Signs()).Order(StringComparer.Ordinal));
    }

    // Run counts without centre runs from the same source (from memory); each factor is at its ends equally often.
    [Theory]
    [InlineData(3, 12)]
    [InlineData(4, 24)]
    [InlineData(5, 40)]
    [InlineData(6, 48)]
    [InlineData(7, 56)]
    public void Every_plan_treats_its_factors_alike_and_estimates_the_quadratic_model(int factors, int edges)
    {
        var plan = BoxBehnken.Build(PlanNames.Letters(factors), 3);
        Assert.Equal(edges, plan.Runs.Count(run => run.Kind == PointKind.Edge));
        Assert.Single(Enumerable.Range(0, factors).Select(f => plan.Column(f).Count(value => value != 0)).Distinct());
        var quality = PlanQuality.Of(plan, PlanModel.Quadratic(factors));
        Assert.NotNull(quality);
        Assert.All(quality.VarianceInflation.Skip(1).Take(factors), inflation =>
            Check.Close(1, inflation, absolute: 1e-9, because: "rounding of the inverse"));
    }

    [Fact]
    public void Seven_factors_go_through_their_ends_with_every_other_in_one_group_of_eight_runs()
    {
        var plan = BoxBehnken.Build(PlanNames.Letters(7), 1);
        for (var i = 0; i < 7; i++)
        {
            for (var j = 0; j < i; j++)
                Assert.Equal(8, plan.Runs.Count(run => run.Coded[i] != 0 && run.Coded[j] != 0));
        }
    }

    [Fact]
    public void Plan_without_a_run_at_the_middle_is_refused() =>
        Assert.Contains("centre runs", Assert.Throws<ArgumentException>(() => BoxBehnken.Build(PlanNames.Letters(3), 0)).Message);
}
