using FrameOpt.Plans;

namespace FrameOpt.Tests.Plans;

public class DiscrepancyTests
{
    private const string Rounding = "rounding of sums of products";

    // K.-T. Fang, R. Li and A. Sudjianto 2006, Design and Modeling for Computer Experiments: 0.0081 and 0.0105, squared; more digits from
    // the documentation of scipy.stats.qmc.discrepancy.
    [Theory]
    [InlineData("13 26 32 45 51 64", 0.008142039609053464)]
    [InlineData("15 24 33 42 51 66", 0.010456854423869011)]
    public void Six_points_have_the_published_centred_discrepancy(string points, double squared) =>
        Check.Close(squared, Square(Of(points, 2, level => (level - 0.5) / 6).Centred), relative: 1e-12, because: Rounding);

    // Y.-D. Zhou, K.-T. Fang and J.-H. Ning 2013, Mixture discrepancy for quasi-random point sets, example 4, squared, as the tests of
    // scipy.stats.qmc quote it.
    [Fact]
    public void Seven_points_in_six_factors_have_the_published_discrepancies()
    {
        var found = Of("211222 122222 211111 111122 122211 222211 222122", 6, level => ((2 * level) - 1) / 4);
        Check.Close(2.5, Square(found.Mixture), absolute: 1e-4, because: "printed digits");
        Check.Close(1.3680, Square(found.WrapAround), absolute: 1e-4, because: "printed digits");
        Check.Close(0.3172, Square(found.Centred), absolute: 1e-4, because: "printed digits");
    }

    // T. Pillards, B. Vandewoestyne and R. Cools 2005: a single point in the last corner has 3^(-d/2).
    [Theory]
    [InlineData(2)]
    [InlineData(8)]
    public void One_point_in_the_last_corner_has_the_published_star_discrepancy(int factors) =>
        Check.Close(Math.Pow(3, -factors / 2.0), Discrepancy.Of(new Plan("corner", PlanNames.Letters(factors),
            [new PlanRun(1, PointKind.Given, 1, [.. Enumerable.Repeat(1.0, factors)])])).Star, relative: 1e-12, because: Rounding);

    [Fact]
    public void Random_points_have_the_stated_mean_square()
    {
        var random = new FrameOpt.Numerics.Pcg32(5);
        double Value() => (2 * random.NextDouble()) - 1;
        var sets = Enumerable.Range(0, 400).Select(_ => Discrepancy.Of(new Plan("random", ["a", "b"],
            [.. Enumerable.Range(1, 6).Select(run => new PlanRun(run, PointKind.Given, 1, [Value(), Value()]))]))).ToList();
        var stated = Discrepancy.OfRandom(6, 2);
        void IsNear(double expected, Func<Discrepancy, double> which) => Check.Close(Square(expected),
            sets.Average(one => Square(which(one))), relative: 0.15,
            because: "mean of 400 squares that scatter by about as much as their mean: three standard errors");
        IsNear(stated.Centred, one => one.Centred);
        IsNear(stated.WrapAround, one => one.WrapAround);
        IsNear(stated.Mixture, one => one.Mixture);
        IsNear(stated.Star, one => one.Star);
    }

    private static double Square(double value) => value * value;

    private static Discrepancy Of(string points, int factors, Func<double, double> unit) => Discrepancy.Of(new Plan("points",
        PlanNames.Letters(factors), [.. points.Split(' ').Select((point, run) => new PlanRun(run + 1, PointKind.Given, 1,
            [.. point.Select(digit => (2 * unit(digit - '0')) - 1)]))]));
}
