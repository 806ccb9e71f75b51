using CsCheck;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Fronts;

public sealed class FrontBuilderTests
{
    private static readonly Gen<double[][]> allPoints =
        from objectives in Gen.Int[2, 5]
        from points in Gen.Int[0, 6].Select(i => (double)i).Array[objectives].Array[1, 200]
        select points;

    [Fact]
    public void Batches_do_not_change_the_front() =>
        allPoints.Select(Gen.Int[1, 50], Gen.Int[1, 3]).Sample((points, batch, threads) =>
            Assert.Equal(SimpleFronts.EveryPair(points), Ids(Build(points, batch, threads))), iter: 500);

    [Fact]
    public void Designs_that_are_not_usable_neither_appear_nor_dominate() =>
        allPoints.SelectMany(points => Gen.Byte[0, 1].Array[points.Length].Select(feasible => (points, feasible))).Sample(
            (points, feasible) =>
        {
            var builder = new FrontBuilder(points[0].Length, threads: 2);
            builder.Add(Columns(points), feasible, points.Length, firstId: 0);
            var positions = Enumerable.Range(0, points.Length).Where(i => feasible[i] != 0).ToArray();
            var expected = SimpleFronts.EveryPair(Array.ConvertAll(positions, i => points[i])).Select(i => (long)positions[i]);
            Assert.Equal(expected, builder.Result().Ids);
        }, iter: 500);

    /// <summary>Large enough for the sieve, for taking the front several times, and for every thread to have work.</summary>
    [Theory]
    [InlineData(2, 1)]
    [InlineData(3, 1)]
    [InlineData(4, 1)]
    [InlineData(5, 1)]
    [InlineData(2, 3)]
    [InlineData(3, 2)]
    [InlineData(4, 2)]
    [InlineData(5, 3)]
    public void Front_of_a_hundred_thousand_points_is_what_a_simple_archive_keeps(int objectives, int threads)
    {
        var random = new Random(objectives);
        var points = Enumerable.Range(0, 100_000).Select(_ => RandomPoint(random, objectives)).ToArray();
        Assert.Equal(SimpleFronts.LexicographicArchive(points), Ids(Build(points, batch: 30_000, threads)));
    }

    [Fact]
    public void Ties_and_a_constant_objective_are_exact_among_a_hundred_thousand_points()
    {
        var random = new Random(1);
        var points = Enumerable.Range(0, 100_000).Select(_ => new double[] { random.Next(300), 7, random.Next(40), random.Next(20) })
            .ToArray();
        var expected = SimpleFronts.LexicographicArchive(points);
        Assert.Equal(expected, Ids(Build(points, batch: 100_000, threads: 1)));
        Assert.Equal(expected, Ids(Build(points, batch: 7_000, threads: 2)));
    }

    /// <summary>Most points of a thin shell are on the front, so that the division has all the work and shares it out.</summary>
    [Theory]
    [InlineData(3, 1)]
    [InlineData(4, 1)]
    [InlineData(3, 2)]
    [InlineData(4, 3)]
    [InlineData(5, 4)]
    public void Front_of_a_thin_shell_is_what_a_simple_archive_keeps(int objectives, int threads)
    {
        var random = new Random(objectives);
        var points = Enumerable.Range(0, 4000).Select(_ => RandomPoint(random, objectives)).ToArray();
        foreach (var point in points)
        {
            var scale = (1 + 0.01 * random.NextDouble()) / Math.Sqrt(point.Sum(x => x * x));
            for (var j = 0; j < objectives; j++)
                point[j] *= scale;
        }
        Assert.Equal(SimpleFronts.LexicographicArchive(points), Ids(Build(points, batch: 4000, threads)));
    }

    /// <summary>Of points on a falling line none dominates another: more are held than the buffer takes, and none may be lost.</summary>
    [Fact]
    public void A_front_larger_than_the_buffer_is_kept_whole()
    {
        var points = Enumerable.Range(0, 400_000).Select(i => new double[] { i, -i }).ToArray();
        Assert.Equal(Enumerable.Range(0, points.Length), Ids(Build(points, batch: 100_000, threads: 2)));
    }

    [Fact]
    public void Ids_ascend_and_stand_with_their_values_in_whatever_order_batches_came()
    {
        var builder = new FrontBuilder(2, threads: 1);
        builder.Add([[1, 2], [2, 1]], [1, 1], 2, firstId: 50);
        builder.Add([[0, 9], [3, 9]], [1, 1], 2, firstId: 10);
        var front = builder.Result();
        Assert.Equal([10, 50, 51], front.Ids);
        Assert.Equal([0, 1, 2], front.Columns[0]);
        Assert.Equal([3, 2, 1], front.Columns[1]);
    }

    [Fact]
    public void More_designs_may_follow_a_result()
    {
        var builder = new FrontBuilder(2, threads: 1);
        builder.Add([[1], [1]], [1], 1, firstId: 0);
        Assert.Equal([0], builder.Result().Ids);
        builder.Add([[0], [1]], [1], 1, firstId: 1);
        Assert.Equal([1], builder.Result().Ids);
    }

    [Fact]
    public void A_column_too_few_is_refused() =>
        Assert.Throws<ArgumentException>(() => new FrontBuilder(3, threads: 1).Add([[1], [1]], [1], 1, firstId: 0));

    private static double[] RandomPoint(Random random, int objectives)
    {
        var point = new double[objectives];
        for (var j = 0; j < objectives; j++)
            point[j] = random.NextDouble();
        return point;
    }

    private static FrontPoints Build(double[][] points, int batch, int threads)
    {
        var builder = new FrontBuilder(points[0].Length, threads);
        for (var start = 0; start < points.Length; start += batch)
        {
            var part = points[start..Math.Min(points.Length, start + batch)];
            var feasible = new byte[part.Length];
            Array.Fill(feasible, (byte)1);
            builder.Add(Columns(part), feasible, part.Length, start);
        }
        return builder.Result();
    }

    private static double[][] Columns(double[][] points) =>
        [.. Enumerable.Range(0, points[0].Length).Select(j => Array.ConvertAll(points, p => p[j]))];

    private static int[] Ids(FrontPoints front) => Array.ConvertAll(front.Ids, id => (int)id);
}
