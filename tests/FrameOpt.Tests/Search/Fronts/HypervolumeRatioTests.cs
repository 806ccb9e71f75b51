using FrameOpt.Numerics;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Fronts;

public class HypervolumeRatioTests
{
    [Fact]
    public void Share_of_two_objectives_is_exact()
    {
        // By hand: the corner is (1.1, 1.1). The whole dominates 0.1 + 0.1 x 1 less the overlap 0.1 x 0.1; the part its own strip.
        var share = HypervolumeRatio.Of(Front([0, 1]), Front([0, 1], [1, 0]));
        Check.Close((1.1 * 0.1) / (1.1 * 0.1 + 1.1 * 0.1 - 0.1 * 0.1), share.Ratio, relative: 1e-12, because: "rounding");
        Assert.Equal(0, share.SamplePoints);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    public void Share_of_more_objectives_is_the_exact_one_within_its_standard_error(int objectives)
    {
        var random = new Pcg32(5);
        double[] Point() => Normed([.. Enumerable.Range(0, objectives).Select(_ => 0.05 + random.NextDouble())]);
        var whole = Front([.. Enumerable.Range(0, 60).Select(_ => Point())]);
        var part = Front([.. Enumerable.Range(0, 15).Select(i => whole.Columns.Select(column => column[4 * i] + 0.02 * random.NextDouble())
            .ToArray())]);
        double[] corner = [.. whole.Columns.Select(column => column.Max() + 0.1 * (column.Max() - column.Min()))];
        var exact = Hypervolume.Of(Values(part), corner) / Hypervolume.Of(Values(whole), corner);
        var share = HypervolumeRatio.Of(part, whole);
        Assert.Equal(1 << 14, share.SamplePoints);
        Check.Close(exact, share.Ratio, absolute: 3 * share.StandardError,
            because: "three standard errors of a plain random sample; evenly spread points do better");
    }

    [Fact]
    public void Nothing_found_is_no_share() => Assert.Equal(0, HypervolumeRatio.Of(new FrontPoints([], [[], []]), Front([0, 1])).Ratio);

    private static double[] Normed(double[] point)
    {
        var norm = Math.Sqrt(point.Sum(value => value * value));
        return [.. point.Select(value => 1 - value / norm)];
    }

    private static double[] Values(FrontPoints front) =>
        [.. Enumerable.Range(0, front.Ids.Length).SelectMany(i => front.Columns.Select(column => column[i]))];

    private static FrontPoints Front(params double[][] points) =>
        new([.. points.Select((_, i) => (long)i)],
            [.. Enumerable.Range(0, points[0].Length).Select(j => points.Select(point => point[j]).ToArray())]);
}
