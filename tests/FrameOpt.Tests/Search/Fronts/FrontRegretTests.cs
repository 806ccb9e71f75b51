using CsCheck;
using FrameOpt.Numerics;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Fronts;

public class FrontRegretTests
{
    [Fact]
    public void Regret_is_the_largest_shortfall_of_the_nearest_substitute()
    {
        // By hand: ranges 10 and 20. For (0, 20) the substitute is (1, 20), for (10, 0) it is (10, 3): shortfalls 1 and 3.
        var regret = FrontRegret.Of(Front((1, 20), (10, 3)), Front((0, 20), (10, 0)));
        Assert.Equal([1, 3], regret);
    }

    [Fact]
    public void A_front_has_no_regret_against_itself_or_against_a_part_of_itself() => Points.Sample(points =>
    {
        Assert.All(FrontRegret.Of(Front(points), Front(points)), regret => Assert.Equal(0, regret));
        Assert.All(FrontRegret.Of(Front(points), Front(points[..1])), regret => Assert.Equal(0, regret));
    });

    [Fact]
    public void The_largest_regret_in_ranges_is_the_additive_epsilon_of_the_scaled_fronts() => Gen.Select(Points, Points).Sample((a, b) =>
    {
        // Definition of the additive epsilon indicator, Zitzler et al. 2003 (from memory): for each reference point the least largest
        // excess.
        var (found, reference) = (Front(a), Front(b));
        double[] ranges = [.. reference.Columns.Select(c => c.Max() > c.Min() ? c.Max() - c.Min() : 1)];
        var epsilon = b.Max(r => a.Min(q => Math.Max((q.Item1 - r.Item1) / ranges[0], (q.Item2 - r.Item2) / ranges[1])));
        var regret = FrontRegret.Of(found, reference).Select((value, j) => value / ranges[j]).Max();
        Check.Close(Math.Max(0, epsilon), regret, absolute: 1e-12, because: "the same differences in another order");
    });

    [Fact]
    public void Among_thousands_of_points_the_substitute_is_the_first_of_the_nearest()
    {
        // The definition, point by point; whole numbers make many points equally near.
        var random = new Pcg32(3);
        FrontPoints Many(int count) => new([.. Enumerable.Range(0, count).Select(i => (long)i)],
            [.. Enumerable.Range(0, 4).Select(_ => Enumerable.Range(0, count).Select(_ => Math.Floor(20 * random.NextDouble()))
                .ToArray())]);
        var (found, reference) = (Many(3000), Many(200));
        double[] ranges = [.. reference.Columns.Select(column => column.Max() - column.Min())];
        var expected = new double[4];
        for (var p = 0; p < 200; p++)
        {
            double Excess(int q) => Enumerable.Range(0, 4).Max(j => (found.Columns[j][q] - reference.Columns[j][p]) / ranges[j]);
            var nearest = Enumerable.Range(0, 3000).MinBy(Excess);
            expected = [.. expected.Select((most, j) => Math.Max(most, found.Columns[j][nearest] - reference.Columns[j][p]))];
        }

        Assert.Equal(expected, FrontRegret.Of(found, reference));
    }

    private static Gen<(double, double)[]> Points => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 1]).Array[1, 12];

    private static FrontPoints Front(params (double, double)[] points) =>
        new([.. points.Select((_, i) => (long)i)], [[.. points.Select(p => p.Item1)], [.. points.Select(p => p.Item2)]]);
}
