using CsCheck;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Fronts;

public sealed class HypervolumeTests
{
    private const string Rounding = "sums of a few products of decimal fractions";

    /// <summary>Sources: pagmo2, tests/hypervolume.cpp, and moocore, python/tests/test_moocore.py; each also by inclusion and
    /// exclusion.</summary>
    [Theory]
    [InlineData(3, new double[] { 1, 2, 2, 1 }, new double[] { 3, 3 })]
    [InlineData(17.91, new double[] { 2.3, 4.5, 3.4, 3.4, 6, 1.2 }, new double[] { 7, 7 })]
    [InlineData(66.386, new double[] { 2.3, 4.5, 3.2, 3.4, 3.4, 3.4, 6, 1.2, 3.6 }, new double[] { 7, 7, 7 })]
    [InlineData(5, new double[] { 1, 0, 1, 0, 1, 0 }, new double[] { 2, 2, 2 })]
    [InlineData(8, new double[] { 1, 1, 1, 2, 2, 2 }, new double[] { 3, 3, 3 })]
    [InlineData(16, new double[] { 1, 1, 1, 1, 2, 2, 2, 2 }, new double[] { 3, 3, 3, 3 })]
    [InlineData(16, new double[] { 1, 1, 1, 1, 1, 1, 1, 1, 0, 0, 0, 0 }, new double[] { 2, 2, 2, 2 })]
    public void Published_examples_have_their_volume(double expected, double[] values, double[] reference) =>
        Check.Close(expected, Hypervolume.Of(values, reference), relative: 1e-14, because: Rounding);

    /// <summary>Worked by inclusion and exclusion; R package emoa agrees on the whole.</summary>
    [Fact]
    public void Worked_example_of_four_objectives()
    {
        double[] values = [1, 4, 2, 3, 2, 1, 4, 2, 4, 2, 1, 1, 3, 3, 3, 0.5];
        double[] reference = [5, 5, 5, 5];
        Check.Close(101, Hypervolume.Of(values, reference), relative: 1e-14, because: Rounding);
        CloseAll([12, 19, 27, 12], Hypervolume.Contributions(values, reference), 1e-12);
    }

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    public void Points_on_the_boundary_or_beyond_dominate_nothing(int objectives)
    {
        double[] reference = [.. Enumerable.Repeat(3.0, objectives)];
        double[] onBoundary = [3, .. Enumerable.Repeat(1.0, objectives - 1)];
        double[] beyond = [.. Enumerable.Repeat(1.0, objectives - 1), double.PositiveInfinity];
        Assert.Equal(0, Hypervolume.Of([.. onBoundary, .. beyond], reference));
        Assert.Equal([0, 0], Hypervolume.Contributions([.. onBoundary, .. beyond], reference));
        Assert.Equal(0, Hypervolume.Of([], reference));
        Assert.Empty(Hypervolume.Contributions([], reference));
    }

    /// <summary>
    /// Integrals of the fronts of ZDT1 (f2 = 1 - sqrt f1) and ZDT2 (f2 = 1 - f1^2): 1 - 2/3 and 1 - 1/3 below, plus what lies
    /// between the front's box and the reference. Equal steps of f1, from below, miss less than a step of the fall of f2, which is 1.
    /// </summary>
    [Theory]
    [InlineData(1, 1.0, 2.0 / 3)]
    [InlineData(1, 1.1, 0.876666666667)]
    [InlineData(1, 11.0, 120.666666666667)]
    [InlineData(2, 1.0, 1.0 / 3)]
    [InlineData(2, 1.1, 0.543333333333)]
    [InlineData(2, 11.0, 120.333333333333)]
    public void Finely_sampled_fronts_come_near_their_integral_from_below(int front, double reference, double integral)
    {
        const int steps = 100_000;
        var values = new double[2 * (steps + 1)];
        for (var i = 0; i <= steps; i++)
        {
            var x = (double)i / steps;
            (values[2 * i], values[2 * i + 1]) = (x, 1 - (front == 1 ? Math.Sqrt(x) : x * x));
        }
        var volume = Hypervolume.Of(values, [reference, reference]);
        Assert.InRange(volume, integral - 1.0 / steps, integral + 1e-10);
    }

    /// <summary>
    /// The front of DTLZ1 with three objectives is the triangle with sum 0.5: a cube of 0.5 less a corner of 0.5^3 / 6. A lattice of n
    /// steps misses a sixth of a cell for each of its cells on the triangle and less than n + 1 cells at the edges: below 0.5^3 x 2 / n in
    /// all.
    /// </summary>
    [Theory]
    [InlineData(0.5, 0.104166666667)]
    [InlineData(1.0, 0.979166666667)]
    public void A_lattice_on_the_triangle_of_DTLZ1_comes_near_its_volume_from_below(double reference, double volume)
    {
        const int steps = 200;
        var values = new List<double>();
        for (var a = 0; a <= steps; a++)
            for (var b = 0; a + b <= steps; b++)
                values.AddRange([0.5 * a / steps, 0.5 * b / steps, 0.5 * (steps - a - b) / steps]);
        var sampled = Hypervolume.Of(values.ToArray(), [reference, reference, reference]);
        Assert.InRange(sampled, volume - 0.125 * 2 / steps, volume + 1e-10);
    }

    /// <summary>Source: pagmo2, tests/hypervolume.cpp.</summary>
    [Fact]
    public void Published_contributions_of_twelve_points()
    {
        double[] values = [1, 6.5, 1, 6, 1, 5, 2, 5, 3, 5, 3, 3, 4, 6.5, 4.5, 4, 5, 3, 5, 1.5, 7, 1.5, 7, 3.5];
        CloseAll([0, 0, 1, 0, 0, 3.5, 0, 0, 0, 3, 0, 0], Hypervolume.Contributions(values, [7, 6.5]), 1e-14);
    }

    /// <summary>Source: pagmo2, tests/hypervolume.cpp.</summary>
    [Theory]
    [InlineData(1, new double[] { 2.5, 1, 2, 2, 1, 3 })]
    [InlineData(0, new double[] { 3.5, 1, 2, 2, 1, 3 })]
    public void Published_least_contributors(int expected, double[] values) =>
        Assert.Equal(expected, Hypervolume.LeastContributor(values, [4, 4]));

    [Theory]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    public void Of_equal_contributors_the_first_is_least(int objectives) =>
        Assert.Equal(1, Hypervolume.LeastContributor(
            [.. new double[] { 0, 1, 1, 0.5 }.SelectMany((x, i) => Enumerable.Repeat(x, objectives - 1).Append(i == 3 ? 2 : 1))],
            [.. Enumerable.Repeat(3.0, objectives)]));

    [Fact]
    public void What_has_no_volume_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Hypervolume.Of([1, double.NaN], [3, 3]));
        Assert.Throws<ArgumentException>(() => Hypervolume.Of([1, double.NegativeInfinity], [3, 3]));
        Assert.Throws<ArgumentException>(() => Hypervolume.Of([1, 2], [3, double.PositiveInfinity]));
        Assert.Throws<ArgumentException>(() => Hypervolume.Of([1, 2], [3, double.NaN]));
        Assert.Throws<ArgumentException>(() => Hypervolume.Of([1, 2, 3], [3, 3]));
        Assert.Throws<ArgumentException>(() => Hypervolume.Of([1], [3]));
        Assert.Throws<ArgumentException>(() => Hypervolume.LeastContributor([], [3, 3]));
    }

    private static void CloseAll(double[] expected, double[] actual, double absolute)
    {
        Assert.Equal(expected.Length, actual.Length);
        for (var i = 0; i < expected.Length; i++)
            Check.Close(expected[i], actual[i], absolute: absolute, because: Rounding);
    }
}
