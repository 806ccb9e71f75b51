using CsCheck;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Fronts;

public sealed class NonDominatedSortTests
{
    /// <summary>Few different values make many ties and equal points.</summary>
    private static readonly double[] fewValues = [0, 1, 2, 3, 4, -0.0, double.NegativeInfinity, double.PositiveInfinity];

    private static readonly Gen<double[][]> allPoints =
        from objectives in Gen.Int[2, 6]
        from points in Gen.OneOf(Gen.Int[0, fewValues.Length - 1].Select(i => fewValues[i]), Gen.Double[0, 1]).Array[objectives].Array[
            1, 150]
        select points;

    /// <summary>Source: moocore, python/tests/test_moocore.py (three levels of three points).</summary>
    [Fact]
    public void Three_levels_of_three_points_have_ranks_0_1_and_2()
    {
        double[] level = [1, 2, 3, 3, 1, 2, 2, 3, 1];
        double[] values = [.. level, .. level.Select(value => 10 * value), .. level.Select(value => 100 * value)];
        Assert.Equal([0, 0, 0, 1, 1, 1, 2, 2, 2], NonDominatedSort.Ranks(values, 3));
    }

    [Fact]
    public void Ranks_are_those_of_taking_one_front_away_after_the_other() =>
        allPoints.Sample(points => Assert.Equal(Peeled(points), Ranks(points)), iter: 1000);

    [Fact]
    public void Order_of_the_points_does_not_change_their_ranks() =>
        allPoints.SelectMany(points => Gen.Shuffle(Enumerable.Range(0, points.Length).ToArray()).Select(order => (points, order))).Sample(
            (points, order) =>
        {
            var ranks = Ranks(points);
            Assert.Equal(Array.ConvertAll(order, i => ranks[i]), Ranks(Array.ConvertAll(order, i => points[i])));
        }, iter: 300);

    /// <summary>Enough for the sort by digits; every rank must hold the front of what is left.</summary>
    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    public void First_ranks_of_many_points_are_their_fronts(int objectives)
    {
        var random = new Random(objectives);
        var values = Enumerable.Range(0, 5000 * objectives).Select(_ => Math.Round(random.NextDouble(), objectives == 2 ? 2 : 1)).ToArray();
        var ranks = NonDominatedSort.Ranks(values, objectives);
        int[] left = [.. Enumerable.Range(0, 5000)];
        for (var rank = 0; left.Length > 0; rank++)
        {
            var front = Front.Of([.. left.SelectMany(i => values[(i * objectives)..((i + 1) * objectives)])], objectives);
            Assert.Equal(front.Select(k => left[k]), left.Where(i => ranks[i] == rank));
            left = [.. left.Where(i => ranks[i] > rank)];
        }
    }

    [Fact]
    public void An_instance_used_again_remembers_nothing()
    {
        var sort = new NonDominatedSort();
        allPoints.Sample(points =>
        {
            var ranks = new int[points.Length];
            var fronts = sort.Rank([.. points.SelectMany(p => p)], points[0].Length, ranks);
            Assert.Equal(Peeled(points), ranks);
            Assert.Equal(ranks.Max() + 1, fronts);
        }, iter: 300, threads: 1);
    }

    [Fact]
    public void A_chain_has_as_many_fronts_as_points() =>
        Assert.Equal(Enumerable.Range(0, 3000), NonDominatedSort.Ranks([.. Enumerable.Range(0, 9000).Select(k => (double)(k / 3))], 3));

    [Fact]
    public void No_points_have_no_ranks() => Assert.Empty(NonDominatedSort.Ranks([], 3));

    [Fact]
    public void What_is_not_a_number_is_refused() =>
        Assert.Throws<ArgumentException>(() => NonDominatedSort.Ranks([1, 2, 1, double.NaN], 2));

    [Theory]
    [InlineData(1)]
    [InlineData(7)]
    public void Too_few_or_too_many_objectives_are_refused(int objectives) =>
        Assert.Throws<ArgumentException>(() => NonDominatedSort.Ranks(new double[7], objectives));

    private static int[] Ranks(double[][] points) => NonDominatedSort.Ranks([.. points.SelectMany(p => p)], points[0].Length);

    private static int[] Peeled(double[][] points)
    {
        var ranks = new int[points.Length];
        int[] left = [.. Enumerable.Range(0, points.Length)];
        for (var rank = 0; left.Length > 0; rank++)
        {
            int[] front = [.. SimpleFronts.EveryPair(Array.ConvertAll(left, i => points[i])).Select(k => left[k])];
            foreach (var i in front)
                ranks[i] = rank;
            left = [.. left.Except(front)];
        }
        return ranks;
    }
}
