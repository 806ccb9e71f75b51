using CsCheck;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Fronts;

public sealed class FrontTests
{
    /// <summary>Few different values make many ties and equal points.</summary>
    private static readonly double[] fewValues = [0, 1, 2, 3, 4, -0.0, double.NegativeInfinity, double.PositiveInfinity];

    private static readonly Gen<double[][]> allPoints =
        from objectives in Gen.Int[2, 5]
        from points in Gen.OneOf(Gen.Int[0, fewValues.Length - 1].Select(i => fewValues[i]), Gen.Double[0, 1]).Array[objectives].Array[
            1, 150]
        select points;

    [Fact]
    public void Front_is_what_comparing_every_pair_leaves() =>
        allPoints.Sample(points => Assert.Equal(SimpleFronts.EveryPair(points), FrontOf(points)), iter: 1000);

    [Fact]
    public void Front_of_points_in_another_order_is_the_same_points() =>
        allPoints.SelectMany(points => Gen.Shuffle(Enumerable.Range(0, points.Length).ToArray()).Select(order => (points, order))).Sample(
            (points, order) =>
            {
                var shuffled = Array.ConvertAll(order, i => points[i]);
                Assert.Equal(FrontOf(points), FrontOf(shuffled).Select(i => order[i]).Order());
            }, iter: 300);

    [Fact]
    public void Front_of_a_front_is_all_of_it() =>
        allPoints.Sample(points =>
        {
            var front = Array.ConvertAll(FrontOf(points), i => points[i]);
            Assert.Equal(Enumerable.Range(0, front.Length), FrontOf(front));
        }, iter: 300);

    [Fact]
    public void Front_of_two_points_keeps_equal_designs() =>
        Assert.Equal([0, 2], FrontOf([[1, 2], [1, 3], [1, 2]]));

    [Fact]
    public void Both_zeros_are_the_same_value() =>
        Assert.Equal([0, 1], FrontOf([[0.0, -0.0, 1], [-0.0, 0.0, 1], [0.0, 0.0, 2]]));

    [Fact]
    public void Infinities_are_ordinary_values() =>
        Assert.Equal([0, 2], FrontOf([[double.NegativeInfinity, double.PositiveInfinity], [0, double.PositiveInfinity], [1, 1]]));

    [Fact]
    public void A_single_point_is_its_own_front() => Assert.Equal([0], FrontOf([[3, 1, 2]]));

    [Fact]
    public void No_points_have_no_front() => Assert.Empty(Front.Of([], 3));

    /// <summary>
    /// Source: tests of the open-source package moocore: these nine points have the ranks 0 0 0 1 1 1 2 2 2; ranks by the
    /// definition of Deb, Pratap, Agarwal and Meyarivan, A fast and elitist multiobjective genetic algorithm: NSGA-II, 2002.
    /// </summary>
    [Fact]
    public void Peeling_front_after_front_gives_the_published_ranks()
    {
        double[][] first = [[1, 2, 3], [3, 1, 2], [2, 3, 1]];
        double[][] points = [.. first, .. first.Select(p => p.Select(x => 10 * x).ToArray()),
            .. first.Select(p => p.Select(x => 100 * x).ToArray())];
        Assert.Equal([0, 1, 2], FrontOf(points));
        Assert.Equal([0, 1, 2], FrontOf(points[3..]));
        Assert.Equal([0, 1, 2], FrontOf(points[6..]));
    }

    /// <summary>Source: Zitzler, Deb and Thiele, Comparison of multiobjective evolutionary algorithms: empirical results, 2000: the front
    /// of ZDT1 is f2 = 1 - sqrt f1 (from memory).</summary>
    [Fact]
    public void Front_of_ZDT1_is_the_published_curve_and_nothing_above_it()
    {
        var curve = Enumerable.Range(0, 1001).Select(i => new[] { i / 1000.0, 1 - Math.Sqrt(i / 1000.0) }).ToArray();
        var above = curve.Select(p => new[] { p[0], p[1] + 0.001 });
        Assert.Equal(Enumerable.Range(0, curve.Length), FrontOf([.. curve, .. above]));
    }

    [Fact]
    public void A_value_that_is_not_a_number_is_refused() =>
        Assert.Throws<ArgumentException>(() => Front.Of([1, 2, double.NaN, 3], 2));

    [Theory]
    [InlineData(1)]
    [InlineData(6)]
    public void Fewer_than_two_or_more_than_five_objectives_are_refused(int objectives) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Front.Of(new double[30], objectives));

    [Fact]
    public void A_last_point_without_all_its_objectives_is_refused() =>
        Assert.Throws<ArgumentException>(() => Front.Of([1, 2, 3], 2));

    private static int[] FrontOf(double[][] points) => Front.Of(points.SelectMany(p => p).ToArray(), points[0].Length);
}
