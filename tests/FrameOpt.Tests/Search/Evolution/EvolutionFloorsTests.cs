using FrameOpt.Search;
using FrameOpt.Search.Evolution;
using FrameOpt.Search.Fronts;

namespace FrameOpt.Tests.Search.Evolution;

/// <summary>
/// How near the evolutionary searches come to known fronts: median and worst of eleven seeds, of the front of everything evaluated. Largest
/// volumes
/// are worked from the closed forms of the fronts; floors are the means of a public library (pagmo2 2.18, NSGA-II, same problem, population
/// and number of evaluations)
/// where we have them, else shares of the largest volume.
/// </summary>
public sealed class EvolutionFloorsTests
{
    private const int Seeds = 11;

    [Fact]
    public void Zdt1_is_found_as_well_as_by_a_public_library() =>
        Floors(Nsga2, KnownProblems.Zdt1(), 25_000, [1.1, 1.1], median: 0.8696, worst: 0.99 * 0.8766667);

    [Fact]
    public void Zdt2_is_found() =>
        Floors(Nsga2, KnownProblems.Zdt2(), 25_000, [1.1, 1.1], median: 0.99 * 0.5433333, worst: 0.98 * 0.5433333);

    [Fact]
    public void Zdt3_is_found_as_well_as_by_a_public_library() =>
        Floors(Nsga2, KnownProblems.Zdt3(), 25_000, [1.1, 1.1], median: 1.3275, worst: 0.98 * 1.3318);

    /// <summary>Largest volume 1.1³ less an eighth of the unit ball.</summary>
    [Fact]
    public void A_sphere_of_three_objectives_is_found_by_either_search()
    {
        var largest = 1.331 - Math.PI / 6;
        Floors(Nsga3, KnownProblems.Dtlz2(3, 12), 25_000, [1.1, 1.1, 1.1], median: 0.79, worst: 0.975 * largest);
        Floors(Nsga2, KnownProblems.Dtlz2(3, 12), 10_000, [1.1, 1.1, 1.1], median: 0.95 * largest, worst: 0.94 * largest);
    }

    /// <summary>Largest volume 1.1⁴ less a sixteenth of the unit ball of four dimensions, π²/2.</summary>
    [Fact]
    public void A_sphere_of_four_objectives_is_found_by_directions()
    {
        var largest = 1.4641 - Math.PI * Math.PI / 32;
        Floors(Nsga3, KnownProblems.Dtlz2(4, 13), 10_000, [1.1, 1.1, 1.1, 1.1], median: 0.92 * largest, worst: 0.9 * largest);
    }

    /// <summary>Largest volume worked from the front x = y up to 3, then y = 3.</summary>
    [Fact]
    public void Bnh_is_found_inside_its_limits() =>
        Floors(Nsga2, KnownProblems.Bnh(), 5_000, [140, 50], median: 0.995 * 5285.3333, worst: 0.99 * 5285.3333);

    /// <summary>Largest volume by fine sampling of the boundary.</summary>
    [Fact]
    public void Tnk_is_found_along_its_limits() =>
        Floors(Nsga2, KnownProblems.Tnk(), 10_000, [1.2, 1.2], median: 0.98 * 0.65506, worst: 0.97 * 0.65506);

    /// <summary>The front is a part of the line x = 3y - 10, of x = -2.5 and of the circle x² + y² = 225.</summary>
    [Fact]
    public void All_three_pieces_of_srn_are_found()
    {
        var problem = KnownProblems.Srn();
        IEnumerable<(double X, double Y)> pieces =
        [
            .. Steps(3.7, 2.5).Select(y => (3 * y - 10, y)),
            .. Steps(2.5, 14.79).Select(y => (-2.5, y)),
            .. Steps(-2.5, -4.84).Select(x => (x, Math.Sqrt(225 - x * x))),
        ];
        double[][] targets = [.. pieces.Select(point => TestProblem.Objectives(problem, point.X, point.Y))];
        double[] ranges = [222.97 - 10.1, 217.74 + 2.61];
        foreach (var seed in Enumerable.Range(1, Seeds))
        {
            var front = EvaluatedRun.Of(Nsga2((ulong)seed), problem, 10_000).FrontValues().ToArray();
            var farthest = targets.Max(target => front.Min(point => Math.Max(
                Math.Abs(point[0] - target[0]) / ranges[0], Math.Abs(point[1] - target[1]) / ranges[1])));
            Assert.True(farthest < 0.03, $"seed {seed} leaves a gap of {farthest:P1} of the range");
        }
    }

    /// <summary>Least values: -20 at the origin, -11.627286837 at -1.1527 three times.</summary>
    [Fact]
    public void Kursawes_front_is_found_to_its_ends()
    {
        foreach (var seed in Enumerable.Range(1, Seeds))
        {
            var front = EvaluatedRun.Of(Nsga2((ulong)seed), KnownProblems.Kursawe(), 10_000).Front;
            Check.Close(-20, front.Columns[0].Min(), relative: 0.005, because: "a share of the best value");
            Check.Close(-11.627286837, front.Columns[1].Min(), relative: 0.005, because: "a share of the best value");
        }
    }

    private static ISearch Nsga2(ulong seed) => new Nsga2Search(new EvolutionSettings(100, seed));

    private static ISearch Nsga3(ulong seed) => new Nsga3Search(new EvolutionSettings(100, seed));

    private static IEnumerable<double> Steps(double from, double to) => Enumerable.Range(0, 21).Select(i => from + (to - from) * i / 20);

    private static void Floors(Func<ulong, ISearch> search, Problem problem, int evaluations, double[] reference, double median,
        double worst)
    {
        double[] volumes = [.. Enumerable.Range(1, Seeds).Select(seed =>
            EvaluatedRun.Of(search((ulong)seed), problem, evaluations).Volume(reference)).Order()];
        var all = string.Join(", ", volumes.Select(volume => volume.ToString("F5")));
        Assert.True(volumes[Seeds / 2] >= median, $"median below {median}: {all}");
        Assert.True(volumes[0] >= worst, $"worst below {worst}: {all}");
    }
}
