using CsCheck;
using FrameOpt.Search.Evolution;

namespace FrameOpt.Tests.Search.Evolution;

public sealed class CrowdingTests
{
    private const string Rounding = "a few sums of exact quotients";

    /// <summary>Worked by hand from the definition of Deb et al. 2002; R package emoa gives 8, 10, 10, because it does not divide by the
    /// range of 9.</summary>
    [Fact]
    public void Distances_are_divided_by_the_range_and_the_ends_are_infinite()
    {
        var distances = Crowding.Distances([1, 10, 2, 7, 4, 5, 7, 2, 10, 1], 2);
        Assert.Equal(double.PositiveInfinity, distances[0]);
        Check.Close(8.0 / 9, distances[1], relative: 1e-15, because: Rounding);
        Check.Close(10.0 / 9, distances[2], relative: 1e-15, because: Rounding);
        Check.Close(10.0 / 9, distances[3], relative: 1e-15, because: Rounding);
        Assert.Equal(double.PositiveInfinity, distances[4]);
    }

    [Theory]
    [InlineData(new double[] { })]
    [InlineData(new double[] { double.PositiveInfinity, double.PositiveInfinity }, 1.0, 2.0, 2.0, 1.0)]
    public void One_or_two_points_have_no_neighbours(double[] expected, params double[] values) =>
        Assert.Equal(expected, Crowding.Distances(values, 2));

    [Fact]
    public void An_objective_without_range_tells_nothing() =>
        Gen.Shuffle(Enumerable.Range(0, 40).ToArray()).Select(Gen.Shuffle(Enumerable.Range(0, 40).ToArray())).Sample((first, second) =>
            Assert.Equal(
                Crowding.Distances([.. first.SelectMany((x, i) => new double[] { x, second[i] })], 2),
                Crowding.Distances([.. first.SelectMany((x, i) => new double[] { 5, x, second[i] })], 3)));

    [Fact]
    public void Scale_and_origin_of_an_objective_do_not_matter() =>
        Gen.Int[0, 1000].Array[3].Array[3, 50].Select(Gen.Int[1, 8], Gen.Int[-100, 100]).Sample((points, scale, shift) =>
        {
            var plain = Crowding.Distances([.. points.SelectMany(p => p.Select(x => (double)x))], 3);
            var moved = Crowding.Distances([.. points.SelectMany(p => new double[] { p[0], shift + scale * p[1], p[2] })], 3);
            for (var i = 0; i < plain.Length; i++)
                if (double.IsFinite(plain[i]))
                    Check.Close(plain[i], moved[i], absolute: 1e-14, because: "whole numbers, so only the quotients round");
                else
                    Assert.Equal(plain[i], moved[i]);
        });

    [Fact]
    public void Only_the_points_named_are_neighbours()
    {
        double[] all = [1, 10, 3, 3, 2, 7, 4, 5, 0, 0, 7, 2, 10, 1];
        int[] front = [0, 2, 3, 5, 6];
        var distances = new double[7];
        Crowding.Distances(all, 2, front, new double[5], distances);
        Assert.Equal([0, 2, 3, 5, 6], front.Order());
        Check.Close(8.0 / 9, distances[2], relative: 1e-15, because: Rounding);
        Assert.Equal(0, distances[1]);
    }

    [Fact]
    public void Infinite_values_leave_no_distance_undefined() =>
        Gen.Int[0, 3].Select(k => new[] { double.NegativeInfinity, 0, 1, double.PositiveInfinity }[k]).Array[2].Array[1, 12].Sample(
            points =>
            Assert.All(Crowding.Distances([.. points.SelectMany(p => p)], 2), distance => Assert.True(distance >= 0)));

    [Fact]
    public void What_is_not_a_number_is_refused() =>
        Assert.Throws<ArgumentException>(() => Crowding.Distances([1, double.NaN], 2));
}
