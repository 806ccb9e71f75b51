using CsCheck;
using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class FractionalFactorialTests
{
    // Rows and aliases of the half fraction D=ABC: D. C. Montgomery, Design and Analysis of Experiments, the 2^(4-1) of resolution IV.
    [Fact]
    public void Half_fraction_of_four_factors_has_the_published_rows_and_aliases()
    {
        var (plan, fraction) = FractionalFactorial.Build(PlanNames.Letters(4), ["D=ABC"]);
        Assert.Equal(["----", "+--+", "-+-+", "++--", "--++", "+-+-", "-++-", "++++"], plan.Runs.Select(run => run.Signs()));
        Assert.Equal(["ABCD"], fraction.DefiningRelation.Select(word => word.ToString()));
        Assert.Equal(
            ["A = BCD", "B = ACD", "C = ABD", "D = ABC", "AB = CD", "AC = BD", "AD = BC"],
                fraction.Aliases().Select(group => group.ToString()));
    }

    // Defining relations: G. E. P. Box and J. S. Hunter 1961, The 2^(k-p) fractional factorial designs, Technometrics 3:311-351;
    // Montgomery, appendix of
    // alias relations. Worked again by multiplying the words by hand.
    [Theory]
    [InlineData(5, "D=AB E=AC", 3, "ABD ACE BCDE")]
    [InlineData(6, "D=AB E=AC F=BC", 3, "ABD ACE BCF DEF ABEF ACDF BCDE")]
    [InlineData(7, "D=AB E=AC F=BC G=ABC", 3, "ABD ACE AFG BCF BEG CDG DEF ABCG ABEF ACDF ADEG BCDE BDFG CEFG ABCDEFG")]
    [InlineData(5, "E=ABCD", 5, "ABCDE")]
    [InlineData(6, "E=ABC F=BCD", 4, "ABCE ADEF BCDF")]
    [InlineData(7, "E=ABC F=BCD G=ACD", 4, "ABCE ABFG ACDG ADEF BCDF BDEG CEFG")]
    public void Defining_relation_and_resolution_are_the_published_ones(int factors, string generators, int resolution, string words)
    {
        var fraction = FractionalFactorial.Build(PlanNames.Letters(factors), generators.Split(' ')).Fraction;
        Assert.Equal(words, string.Join(' ', fraction.DefiningRelation));
        Assert.Equal(resolution, fraction.Resolution);
    }

    // Word-length patterns from length 3 on: J. Chen, D. X. Sun and C. F. J. Wu 1993, A catalogue of two-level and three-level fractional
    // factorial designs
    // with small runs, Int. Stat. Rev. 61:131-145 (from memory).
    [Theory]
    [InlineData(5, 8, "2 1 0")]
    [InlineData(6, 8, "4 3 0 0")]
    [InlineData(7, 8, "7 7 0 0 1")]
    [InlineData(5, 16, "0 0 1")]
    [InlineData(6, 16, "0 3 0 0")]
    [InlineData(7, 16, "0 7 0 0 0")]
    [InlineData(8, 16, "0 14 0 0 0 1")]
    [InlineData(9, 16, "4 14 8 0 4 1 0")]
    [InlineData(10, 16, "8 18 16 8 8 5 0 0")]
    [InlineData(11, 16, "12 26 28 24 20 13 4 0 0")]
    [InlineData(7, 32, "0 1 2 0 0")]
    [InlineData(8, 32, "0 3 4 0 0 0")]
    [InlineData(9, 32, "0 6 8 0 0 1 0")]
    [InlineData(10, 32, "0 10 16 0 0 5 0 0")]
    [InlineData(11, 32, "0 25 0 27 0 10 0 1 0")]
    [InlineData(8, 64, "0 0 2 1 0 0")]
    [InlineData(9, 64, "0 1 4 2 0 0 0")]
    [InlineData(10, 64, "0 2 8 4 0 1 0 0")]
    [InlineData(11, 64, "0 4 14 8 0 3 2 0 0")]
    [InlineData(9, 128, "0 0 0 3 0 0 0")]
    [InlineData(10, 128, "0 0 3 3 1 0 0 0")]
    [InlineData(11, 128, "0 0 6 6 2 1 0 0 0")]
    public void Fraction_of_least_aberration_has_the_published_word_lengths(int factors, int runs, string pattern)
    {
        var (plan, fraction) = FractionalFactorial.WithMaxRuns(PlanNames.Letters(factors), runs);
        Assert.Equal(runs, plan.Runs.Count);
        Assert.Equal("0 0 " + pattern, string.Join(' ', fraction.WordLengthPattern));
    }

    [Fact]
    public void Enough_runs_give_the_full_factorial_without_a_defining_relation()
    {
        var (plan, fraction) = FractionalFactorial.WithMaxRuns(PlanNames.Letters(4), 31);
        Assert.Equal(16, plan.Runs.Count);
        Assert.Null(fraction.Resolution);
        Assert.Empty(fraction.DefiningRelation);
        Assert.Equal(15, fraction.Aliases().Count);
    }

    [Fact]
    public void Aliased_columns_are_equal_up_to_the_sign_shown_and_columns_of_different_groups_are_orthogonal() =>
        Gen.Select(Gen.Int[4, 8], Gen.ULong).Sample((factors, seed) =>
        {
            var (plan, fraction) = FractionalFactorial.Build(PlanNames.Letters(factors), RandomGenerators(factors, new Pcg32(seed)));
            Assert.Equal((1 << fraction.Generators.Count) - 1, fraction.WordLengthPattern.Sum());
            Assert.Equal(1 << factors, (fraction.Aliases().Count + 1) << fraction.Generators.Count);
            foreach (var word in fraction.DefiningRelation)
                Assert.All(plan.Column(word), value => Assert.Equal(1, value));
            var leading = fraction.Aliases().Select(group => plan.Column(group.Effects[0])).ToArray();
            foreach (var (group, column) in fraction.Aliases().Zip(leading))
                Assert.All(group.Effects, effect => Assert.Equal(column, plan.Column(effect)));
            for (var g = 1; g < leading.Length; g++)
                Assert.Equal(0, PlanNames.Dot(leading[g], leading[g - 1]));
        }, iter: 50);

    [Fact]
    public void Minus_in_a_generator_turns_the_signs_of_the_aliases()
    {
        var (plan, fraction) = FractionalFactorial.Build(PlanNames.Letters(3), ["C=-AB"]);
        Assert.Equal(["---", "+-+", "-++", "++-"], plan.Runs.Select(run => run.Signs()));
        Assert.Equal("-ABC", fraction.DefiningRelation[0].ToString());
        Assert.Equal("A = -BC", fraction.Aliases()[0].ToString());
    }

    [Theory]
    [InlineData("D", "is no generator")]
    [InlineData("AB=CD", "left side")]
    [InlineData("D=AD", "right side")]
    [InlineData("D=C", "right side")]
    [InlineData("D=AXB", "\"X\"")]
    [InlineData("D=AA", "stands twice")]
    [InlineData("D=ABC,D=AB", "two generators")]
    [InlineData("D=AB,E=AB", "never let the two factors differ")]
    [InlineData("D=AB,E=AD", "has a generator itself")]
    public void Generators_that_make_no_plan_are_refused_in_words(string generators, string words) =>
        Assert.Contains(words, Assert.Throws<ArgumentException>(() =>
            FractionalFactorial.Build(PlanNames.Letters(5), generators.Split(','))).Message);

    [Fact]
    public void Too_few_runs_are_refused_with_the_number_needed()
    {
        Assert.Contains("8 or more", Assert.Throws<ArgumentException>(
            () => FractionalFactorial.WithMaxRuns(PlanNames.Letters(7), 7)).Message);
        Assert.Contains("need 16 runs", Assert.Throws<ArgumentException>(
            () => FractionalFactorial.WithMaxRuns(PlanNames.Letters(9), 12)).Message);
    }

    private static string[] RandomGenerators(int factors, Pcg32 random)
    {
        var basic = Enumerable.Range(2, factors - 2).First(
            count => (1 << count) > factors && (count == factors - 1 || random.Next(2) == 0));
        var products = random.Shuffled([.. Enumerable.Range(1, (1 << basic) - 1).Select(bits => new EffectWord((uint)bits))
            .Where(word => word.Length > 1)]);
        return [.. products.Take(factors - basic)
            .Select((product, g) => $"{EffectWord.Letters[basic + g]}={(random.Next(2) == 0 ? "-" : "")}{product}")];
    }
}
