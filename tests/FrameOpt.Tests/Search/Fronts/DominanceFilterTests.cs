using CsCheck;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Fronts;

public sealed class DominanceFilterTests
{
    private static readonly double[] extremes = [
        double.NegativeInfinity, double.PositiveInfinity, double.MaxValue, -double.MaxValue, double.Epsilon, -0.0];

    private static readonly Gen<double> tinySteps = Gen.Int[0, 5].Select(i => 1e9 + i * Math.Pow(2, -23));

    private static readonly Gen<double> fewValues = Gen.Int[0, 5].Select(i => (double)i);

    /// <summary>Values that make rounding matter: ties, tiny steps on a large number, infinities, the largest doubles.</summary>
    private static readonly Gen<double> awkward = Gen.OneOf(
        fewValues, tinySteps, Gen.Double[0, 1], Gen.Int[0, extremes.Length - 1].Select(i => extremes[i]));

    private static readonly Gen<(double[][] Known, double[][] Tried)> sets =
        from objectives in Gen.Int[2, 5]
        from points in Gen.OneOf(awkward, Gen.Double[0, 1], tinySteps, fewValues).Array[objectives].Array[2, 60]
        select (points[..(points.Length / 2)], points);

    [Fact]
    public void What_the_sieve_drops_is_dominated_by_a_point_it_was_built_from() =>
        sets.Sample((known, tried) =>
        {
            var passed = Passed(known, tried);
            for (var i = 0; i < tried.Length; i++)
                if (!passed.Contains(i))
                    Assert.Contains(known, point => SimpleFronts.Dominates(point, tried[i]));
        }, iter: 150);

    [Fact]
    public void The_sieve_drops_what_lies_well_above_a_known_point() =>
        Assert.Equal([0, 1, 2], Passed([[0, 1, 0.5], [1, 0, 0.2], [0.5, 0.5, 0]],
            [[0, 1, 0.5], [1, 0, 0.2], [0.5, 0.5, 0], [0.9, 0.9, 0.6], [2, 2, 2]]));

    [Fact]
    public void The_sieve_still_drops_points_when_an_objective_is_the_same_for_all() =>
        Assert.Equal([0], Passed([[0, 3, 0], [1, 3, 1]], [[0, 3, 0], [1, 3, 1], [0.5, 3, 0.5]]));

    private static int[] Passed(double[][] known, double[][] tried)
    {
        var filter = new DominanceFilter(known[0].Length);
        filter.Rebuild(Columns(known), known.Length);
        var feasible = new byte[tried.Length];
        Array.Fill(feasible, (byte)1);
        var positions = new int[tried.Length];
        return positions[..filter.Survivors(Columns(tried), feasible, 0, tried.Length, positions, threads: 1)];
    }

    private static double[][] Columns(double[][] points) =>
        [.. Enumerable.Range(0, points[0].Length).Select(j => Array.ConvertAll(points, p => p[j]))];
}
