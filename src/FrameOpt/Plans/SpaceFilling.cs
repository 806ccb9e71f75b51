using FrameOpt.Numerics;

namespace FrameOpt.Plans;

/// <summary>Space-filling plans: runs spread over the whole cube, without assuming a model.</summary>
public static class SpaceFilling
{
    /// <summary>Beyond so many factors the first points of a sequence are no longer even.</summary>
    private const int MostFactorsOfSequence = 12;

    /// <summary>A Latin hypercube with levels paired at random.</summary>
    /// <param name="factors">The names, at least 1.</param>
    /// <param name="runs">Number of runs, at least 2.</param>
    /// <param name="seed">The same seed gives the same plan.</param>
    /// <exception cref="ArgumentException">No factor, a name twice, or fewer than two runs.</exception>
    public static Plan RandomLatinHypercube(IReadOnlyList<string> factors, int runs, ulong seed) =>
        FromLevels("random Latin hypercube", factors, () => LatinHypercube.Random(factors.Count, runs, new Pcg32(seed)));

    /// <summary>A Latin hypercube whose closest runs lie far apart.</summary>
    /// <param name="factors">The names, at least 1.</param>
    /// <param name="runs">Number of runs, at least 2.</param>
    /// <param name="seed">The same seed gives the same plan.</param>
    /// <param name="starts">Number of random starts to improve, at least 1.</param>
    /// <exception cref="ArgumentException">No factor, a name twice, fewer than two runs, or no start.</exception>
    public static Plan MaximinLatinHypercube(IReadOnlyList<string> factors, int runs, ulong seed, int starts = 20) =>
        FromLevels("maximin Latin hypercube", factors, () => LatinHypercube.Maximin(factors.Count, runs, new Pcg32(seed), starts));

    /// <summary>The first points of the Sobol sequence.</summary>
    /// <param name="factors">The names, 1 to 12.</param>
    /// <param name="runs">Number of runs; a power of two keeps the sequence balanced.</param>
    /// <exception cref="ArgumentException">More factors, a name twice, or no run.</exception>
    public static Plan Sobol(IReadOnlyList<string> factors, int runs) => FromUnit("Sobol sequence", factors, runs, SobolSequence.Points);

    /// <summary>The first points of the Halton sequence.</summary>
    /// <param name="factors">The names, 1 to 12.</param>
    /// <param name="runs">Number of runs.</param>
    /// <exception cref="ArgumentException">More factors, a name twice, or no run.</exception>
    public static Plan Halton(IReadOnlyList<string> factors, int runs) => FromUnit("Halton sequence", factors, runs, HaltonSequence.Points);

    /// <summary>Each level is the middle of its share of the range.</summary>
    private static Plan FromLevels(string kind, IReadOnlyList<string> factors, Func<int[][]> levels)
    {
        PlanArguments.Factors(factors, kind, 1, 100);
        var runs = levels();
        return FromCoded(kind, factors, runs.Select(run => run.Select(level => (((2.0 * level) + 1) / runs.Length) - 1).ToArray()));
    }

    private static Plan FromUnit(string kind, IReadOnlyList<string> factors, int runs, Func<int, int, IEnumerable<double[]>> points)
    {
        PlanArguments.Factors(factors, kind, 1, MostFactorsOfSequence);
        PlanArguments.AtLeast(1, runs, "number of runs");
        return FromCoded(kind, factors, points(factors.Count, runs).Select(point => point.Select(value => (2 * value) - 1).ToArray()));
    }

    private static Plan FromCoded(string kind, IReadOnlyList<string> factors, IEnumerable<double[]> coded) =>
        Plan.Numbered(kind, factors, Plan.Points(PointKind.SpaceFilling, coded));
}
