using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class FullFactorialTests
{
    [Fact]
    public void Every_combination_of_mixed_levels_comes_once_and_the_first_factor_changes_fastest()
    {
        var plan = FullFactorial.Build(["a", "b", "c"], [3, 2, 4]);
        Assert.Equal(24, plan.Runs.Count);
        Assert.Equal(24, plan.Runs.Select(run => string.Join(' ', run.Coded)).Distinct().Count());
        Assert.Equal([-1, 0, 1, -1], plan.Runs.Take(4).Select(run => run.Coded[0]));
        Assert.Equal(Enumerable.Range(1, 24), plan.Runs.Select(run => run.Number));
    }

    [Fact]
    public void Effects_of_a_two_level_full_factorial_are_orthogonal()
    {
        var plan = FullFactorial.TwoLevel(PlanNames.Letters(4));
        for (var i = 0u; i < 16; i++)
        {
            for (var j = 0u; j < 16; j++)
                Assert.Equal(i == j ? 16 : 0, PlanNames.Dot(plan.Column(new EffectWord(i)), plan.Column(new EffectWord(j))));
        }
    }

    [Fact]
    public void Arguments_that_make_no_plan_are_refused_in_words()
    {
        Assert.Contains("3 numbers of levels", Assert.Throws<ArgumentException>(() => FullFactorial.Build(["a", "b"], [2, 2, 2])).Message);
        Assert.Contains("levels of b", Assert.Throws<ArgumentException>(() => FullFactorial.Build(["a", "b"], [2, 1])).Message);
        Assert.Contains("\"a\" is named 2 times", Assert.Throws<ArgumentException>(() => FullFactorial.TwoLevel(["a", "a"])).Message);
        Assert.Contains("at most", Assert.Throws<ArgumentException>(() => FullFactorial.Build(["a", "b"], [2000, 2000])).Message);
    }
}
