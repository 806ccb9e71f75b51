using CsCheck;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Fronts;

public sealed class HypervolumeLawTests
{
    private const double Reference = 1;
    private const string Rounding = "sums of some hundred terms below 1";

    /// <summary>Few and many different values, some on the boundary and beyond it.</summary>
    private static Gen<double[][]> Points(int fewest, int most, int fewestObjectives = 2) =>
        from objectives in Gen.Int[fewestObjectives, 6]
        from values in Gen.OneOf(Gen.Int[0, 4].Select(k => k * 0.25), Gen.Double[0, 1.1]).Array[objectives].Array[fewest, most]
        select values;

    [Fact]
    public void Volume_is_that_of_inclusion_and_exclusion() =>
        Points(1, 9).Sample(points => Check.Close(InclusionExclusion(points), Volume(points), absolute: 1e-12, because: Rounding),
            iter: 2000);

    [Fact]
    public void A_point_more_never_lessens_the_volume() =>
        Points(2, 40).Sample(points => Assert.True(Volume(points) >= Volume(points[1..]) - 1e-12), iter: 300);

    [Fact]
    public void Contribution_is_what_the_whole_loses_without_the_point() =>
        Points(1, 25).Sample(points =>
        {
            var contributions = Contributions(points);
            var whole = Volume(points);
            for (var i = 0; i < points.Length; i++)
                Check.Close(whole - Volume([.. points[..i], .. points[(i + 1)..]]), contributions[i], absolute: 1e-12, because: Rounding);
        }, iter: 500);

    [Fact]
    public void Dominated_and_equal_points_contribute_exactly_nothing() =>
        Points(1, 25).Sample(points =>
        {
            var contributions = Contributions([.. points, points[0], [.. points[^1].Select(x => x + 0.25)]]);
            Assert.Equal(0, contributions[0]);
            Assert.Equal(0, contributions[^2]);
            Assert.Equal(0, contributions[^1]);
        }, iter: 500);

    [Fact]
    public void The_least_contributor_contributes_least() =>
        Points(1, 40).Sample(points =>
        {
            var contributions = Contributions(points);
            Assert.Equal(Array.IndexOf(contributions, contributions.Min()), Hypervolume.LeastContributor(Flat(points), Corner(points)));
        }, iter: 300);

    [Fact]
    public void Order_of_points_and_of_objectives_does_not_matter() =>
        Points(2, 30).Sample(points =>
        {
            double[][] turned = [.. points.Reverse().Select(point => (double[])[.. point[1..], point[0]])];
            Check.Close(Volume(points), Volume(turned), absolute: 1e-12, because: Rounding);
            var contributions = Contributions(points);
            var turnedContributions = Contributions(turned);
            for (var i = 0; i < points.Length; i++)
                Check.Close(contributions[i], turnedContributions[points.Length - 1 - i], absolute: 1e-12, because: Rounding);
        }, iter: 300);

    [Fact]
    public void An_objective_in_which_all_are_equal_only_scales() =>
        Points(1, 30).Where(points => points[0].Length < 6).Select(Gen.Int[0, 5]).Sample((points, place) =>
        {
            double[][] wider = [.. points.Select(point => point.ToList())
                .Select(point => { point.Insert(Math.Min(place, point.Count), 0.5); return point.ToArray(); })];
            Check.Close(0.5 * Volume(points), Volume(wider), absolute: 1e-12, because: Rounding);
        }, iter: 300);

    /// <summary>Long staircases and many strips.</summary>
    [Fact]
    public void Contributions_of_a_large_front_of_three_objectives_are_what_the_whole_loses()
    {
        var random = new Random(3);
        double[][] points = [.. Enumerable.Range(0, 600).Select(_ =>
        {
            var (a, b) = (random.NextDouble(), random.NextDouble());
            return new[] { Math.Max(a, b) - Math.Min(a, b), Math.Min(a, b), 1 - Math.Max(a, b) };
        })];
        var contributions = Contributions(points);
        var whole = Volume(points);
        for (var i = 0; i < points.Length; i += 7)
            Check.Close(whole - Volume([.. points[..i], .. points[(i + 1)..]]), contributions[i], absolute: 1e-12, because: Rounding);
    }

    /// <summary>The volume of the union of boxes, from those of all their intersections.</summary>
    private static double InclusionExclusion(double[][] points)
    {
        var volume = 0.0;
        for (var chosen = 1; chosen < 1 << points.Length; chosen++)
        {
            var box = 1.0;
            for (var j = 0; j < points[0].Length; j++)
            {
                var highest = points.Where((_, i) => (chosen >> i & 1) == 1).Max(point => point[j]);
                box *= Math.Max(0, Reference - highest);
            }
            volume += int.PopCount(chosen) % 2 == 1 ? box : -box;
        }
        return volume;
    }

    private static double Volume(double[][] points) => points.Length == 0 ? 0 : Hypervolume.Of(Flat(points), Corner(points));

    private static double[] Contributions(double[][] points) => Hypervolume.Contributions(Flat(points), Corner(points));

    private static double[] Flat(double[][] points) => [.. points.SelectMany(point => point)];

    private static double[] Corner(double[][] points) => [.. Enumerable.Repeat(Reference, points[0].Length)];
}
