using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class PlackettBurmanTests
{
    [Theory]
    [InlineData(8)]
    [InlineData(12)]
    [InlineData(16)]
    [InlineData(20)]
    [InlineData(24)]
    public void Columns_are_balanced_and_orthogonal(int runs)
    {
        var plan = PlackettBurman.Build(PlanNames.Letters(runs - 1), runs);
        Assert.Equal(runs, plan.Runs.Count);
        for (var i = 0; i < runs - 1; i++)
        {
            Assert.Equal(0, plan.Column(i).Sum());
            for (var j = 0; j < i; j++)
                Assert.Equal(0, PlanNames.Dot(plan.Column(i), plan.Column(j)));
        }
    }

    // First rows: R. L. Plackett and J. P. Burman 1946, Biometrika 33:305-325 (from memory).
    [Theory]
    [InlineData(8, "+++-+--")]
    [InlineData(12, "++-+++---+-")]
    [InlineData(20, "++--++++-+-+----++-")]
    [InlineData(24, "+++++-+-++--++--+-+----")]
    public void First_row_is_the_published_one_and_the_last_has_every_factor_low(int runs, string first)
    {
        var plan = PlackettBurman.Build(PlanNames.Letters(runs - 1), runs);
        Assert.Equal(first, plan.Runs[0].Signs());
        Assert.All(plan.Runs[^1].Coded, value => Assert.Equal(-1, value));
    }

    // A known property of the 12-run plan: M. Hamada and C. F. J. Wu 1992, J. Quality Technol. 24:130-137 (from memory).
    [Fact]
    public void Twelve_runs_alias_each_interaction_by_a_third_with_every_other_main_effect()
    {
        var plan = PlackettBurman.Build(PlanNames.Letters(11), 12);
        for (var i = 0; i < 11; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var interaction = plan.Column(new EffectWord(1u << i | 1u << j));
                for (var f = 0; f < 11; f++)
                    Assert.Equal(f == i || f == j ? 0 : 4, Math.Abs(PlanNames.Dot(interaction, plan.Column(f))));
            }
        }
    }

    [Theory]
    [InlineData(7, 8)]
    [InlineData(8, 12)]
    [InlineData(19, 20)]
    [InlineData(23, 24)]
    public void Fewest_runs_that_hold_the_factors_are_taken(int factors, int runs) =>
        Assert.Equal(runs, PlackettBurman.Build(PlanNames.Letters(factors)).Runs.Count);

    [Fact]
    public void Other_runs_and_too_many_factors_are_refused_in_words()
    {
        Assert.Contains("8, 12, 16, 20, 24", Assert.Throws<ArgumentException>(() => PlackettBurman.Build(["a", "b"], 28)).Message);
        Assert.Contains("2 to 7 factors", Assert.Throws<ArgumentException>(() => PlackettBurman.Build(PlanNames.Letters(8), 8)).Message);
    }
}
