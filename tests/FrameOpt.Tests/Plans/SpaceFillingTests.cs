using FrameOpt.Numerics;
using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class SpaceFillingTests
{
    // S. Joe and F. Y. Kuo 2008, direction numbers new-joe-kuo-6.21201, unscrambled in Gray-code order; the first eight in two dimensions
    // are those of the tests
    // of scipy.stats.qmc.Sobol, all sixteen were worked again in five.
    private static readonly double[][] sobol =
    [
        [0, 0, 0, 0, 0], [.5, .5, .5, .5, .5], [.75, .25, .25, .25, .75], [.25, .75, .75, .75, .25],
        [.375, .375, .625, .875, .375], [.875, .875, .125, .375, .875], [.625, .125, .875, .625, .625], [.125, .625, .375, .125, .125],
        [.1875, .3125, .9375, .4375, .5625], [.6875, .8125, .4375, .9375, .0625], [.9375, .0625, .6875, .1875, .3125],
            [.4375, .5625, .1875, .6875, .8125],
        [.3125, .1875, .3125, .5625, .9375], [.8125, .6875, .8125, .0625, .4375], [.5625, .4375, .0625, .8125, .1875],
            [.0625, .9375, .5625, .3125, .6875],
    ];

    [Fact]
    public void First_Sobol_points_are_the_published_ones() => Assert.Equal(sobol, SobolSequence.Points(5, 16));

    [Fact]
    public void Every_Sobol_dimension_puts_one_of_the_first_1024_points_in_each_of_1024_cells()
    {
        var points = SobolSequence.Points(12, 1024).ToArray();
        for (var d = 0; d < 12; d++)
            Assert.Equal(Enumerable.Range(0, 1024), points.Select(point => (int)(1024 * point[d])).Order());
        for (var d = 0; d < 12; d++)
            Assert.Equal(0.49951171875, points.Average(point => point[d]));
    }

    // J. H. Halton 1960; the figures are those of the tests of scipy.stats.qmc.Halton.
    [Fact]
    public void First_Halton_points_are_the_published_ones()
    {
        double[][] published = [[0, 0], [1 / 2.0, 1 / 3.0], [1 / 4.0, 2 / 3.0], [3 / 4.0, 1 / 9.0], [1 / 8.0, 4 / 9.0], [5 / 8.0, 7 / 9.0],
            [3 / 8.0, 2 / 9.0], [7 / 8.0, 5 / 9.0]];
        foreach (var (expected, found) in published.Zip(HaltonSequence.Points(2, 8)))
        {
            Check.Close(expected[0], found[0], absolute: 1e-15, because: "rounding");
            Check.Close(expected[1], found[1], absolute: 1e-15, because: "rounding");
        }
    }

    // Largest squared distance of the two closest runs in two factors on levels 0 to n-1, found by trying every hypercube; agrees with E.
    // R. van Dam,
    // B. Husslage, D. den Hertog and H. Melissen 2007, Maximin Latin hypercube designs in two dimensions, Oper. Res. 55:158-169 (from
    // memory).
    [Theory]
    [InlineData(2, 2)]
    [InlineData(3, 2)]
    [InlineData(4, 5)]
    [InlineData(5, 5)]
    [InlineData(6, 5)]
    [InlineData(7, 8)]
    [InlineData(8, 8)]
    [InlineData(9, 10)]
    public void Maximin_hypercube_reaches_the_largest_least_distance(int runs, int squared)
    {
        for (var seed = 1ul; seed <= 3; seed++)
        {
            var found = LatinHypercube.Maximin(2, runs, new Pcg32(seed), 200);
            Assert.Equal(squared, Pairs(found).Min(pair => ((pair.A[0] - pair.B[0]) * (pair.A[0] - pair.B[0]))
                + ((pair.A[1] - pair.B[1]) * (pair.A[1] - pair.B[1]))));
        }
    }

    [Fact]
    public void Every_level_of_a_Latin_hypercube_is_used_once_and_lies_in_the_middle_of_its_share()
    {
        foreach (var plan in (Plan[])[SpaceFilling.RandomLatinHypercube(["a", "b", "c"], 10, 4),
            SpaceFilling.MaximinLatinHypercube(["a", "b", "c"], 10, 4)])
        {
            for (var f = 0; f < 3; f++)
                Assert.Equal([-.9, -.7, -.5, -.3, -.1, .1, .3, .5, .7, .9], plan.Column(f).Order().Select(value => Math.Round(value, 12)));
        }
    }

    [Fact]
    public void Sequences_become_plans_from_minus_one_up()
    {
        Assert.Equal([[-1, -1], [0, 0], [.5, -.5]], SpaceFilling.Sobol(["a", "b"], 3).Runs.Select(run => run.Coded));
        Assert.Equal([-1, 0, -.5], SpaceFilling.Halton(["a"], 3).Runs.Select(run => run.Coded[0]));
        Assert.Contains("1 to 12", Assert.Throws<ArgumentException>(() => SpaceFilling.Sobol(PlanNames.Letters(13), 8)).Message);
    }

    private static IEnumerable<(int[] A, int[] B)> Pairs(int[][] runs) =>
        from first in Enumerable.Range(0, runs.Length)
        from second in Enumerable.Range(0, first)
        select (runs[first], runs[second]);
}
