using FrameOpt.Numerics;

namespace FrameOpt.Plans;

/// <summary>Latin hypercubes: as many levels of every factor as runs, each level used once.</summary>
/// <remarks>Source: M. D. McKay, R. J. Beckman and W. J. Conover 1979, A comparison of three methods for selecting values of input
/// variables, Technometrics 21:239-245 (from memory).</remarks>
public static class LatinHypercube
{
    /// <summary>Levels paired at random.</summary>
    /// <param name="factors">Number of factors, at least 1.</param>
    /// <param name="runs">Number of runs, at least 2.</param>
    /// <param name="random">Random number generator.</param>
    /// <returns>For each run one level per factor, from 0 to runs - 1.</returns>
    /// <exception cref="ArgumentException">No factor, or fewer than two runs.</exception>
    public static int[][] Random(int factors, int runs, Pcg32 random)
    {
        PlanArguments.AtLeast(1, factors, "number of factors");
        PlanArguments.AtLeast(2, runs, "number of runs");
        var columns = Enumerable.Range(0, factors).Select(_ => random.Shuffled([.. Enumerable.Range(0, runs)])).ToArray();
        return [.. Enumerable.Range(0, runs).Select(run => columns.Select(column => column[run]).ToArray())];
    }

    /// <summary>The best found of several random starts, each spread out by exchanging levels between two runs while that improves the
    /// spread: the two closest runs lie as far apart as possible.</summary>
    /// <param name="factors">Number of factors, at least 1.</param>
    /// <param name="runs">How many runs, at least 2; the work of one start grows with the cube of it.</param>
    /// <param name="random">Random number generator.</param>
    /// <param name="starts">How many random starts, at least 1.</param>
    /// <returns>For each run one level per factor, from 0 to runs - 1.</returns>
    /// <exception cref="ArgumentException">No factor, fewer than two runs, or no start.</exception>
    public static int[][] Maximin(int factors, int runs, Pcg32 random, int starts)
    {
        PlanArguments.AtLeast(1, starts, "number of starts");
        return Enumerable.Range(0, starts).Select(_ => new MaximinExchange(Random(factors, runs, random)))
            .MinBy(spread => spread.PhiP())!.Runs;
    }
}

/// <summary>Spreads the runs of a Latin hypercube: exchanges the levels of a factor between two runs for as long as that makes them less
/// crowded.</summary>
/// <remarks>Source: M. D. Morris and T. J. Mitchell 1995, Exploratory designs for computational experiments, J. Stat. Plan. Inference
/// 43:381-402: the sum over all pairs of distance to the power -p, here p = 50, so that the closest pairs decide (from memory).</remarks>
internal sealed class MaximinExchange
{
    private readonly int[,] squaredDistances;

    /// <summary>Spreads some runs; their levels are changed in place.</summary>
    public MaximinExchange(int[][] runs)
    {
        Runs = runs;
        squaredDistances = new int[runs.Length, runs.Length];
        for (var i = 0; i < runs.Length; i++)
        {
            for (var j = 0; j < runs.Length; j++)
                squaredDistances[i, j] = runs[i].Zip(runs[j], (a, b) => (a - b) * (a - b)).Sum();
        }

        while (Pass())
        {
        }
    }

    /// <summary>The runs: one level a factor each.</summary>
    public int[][] Runs { get; }

    /// <summary>The sum over all pairs of runs.</summary>
    public double PhiP()
    {
        var sum = 0.0;
        for (var i = 0; i < Runs.Length; i++)
        {
            for (var j = 0; j < i; j++)
                sum += Closeness(squaredDistances[i, j]);
        }

        return sum;
    }

    private bool Pass()
    {
        var helped = false;
        for (var first = 0; first < Runs.Length; first++)
        {
            for (var second = first + 1; second < Runs.Length; second++)
            {
                for (var f = 0; f < Runs[0].Length; f++)
                {
                    if (Gain(first, second, f) <= 1e-9)
                        continue;
                    Exchange(first, second, f);
                    helped = true;
                }
            }
        }

        return helped;
    }

    /// <summary>Relative decrease of the closeness of two runs to all others when they exchange their levels of a factor; their own
    /// distance stays.</summary>
    private double Gain(int first, int second, int factor)
    {
        var (before, after) = (0.0, 0.0);
        for (var other = 0; other < Runs.Length; other++)
        {
            if (other == first || other == second)
                continue;
            var (change, toFirst, toSecond) = (Change(first, second, factor, other), squaredDistances[first, other],
                squaredDistances[second, other]);
            before += Closeness(toFirst) + Closeness(toSecond);
            after += Closeness(toFirst + change) + Closeness(toSecond - change);
        }

        return before == 0 ? 0 : 1 - (after / before);
    }

    private void Exchange(int first, int second, int factor)
    {
        for (var other = 0; other < Runs.Length; other++)
        {
            if (other == first || other == second)
                continue;
            var change = Change(first, second, factor, other);
            squaredDistances[first, other] = squaredDistances[other, first] += change;
            squaredDistances[second, other] = squaredDistances[other, second] -= change;
        }

        (Runs[first][factor], Runs[second][factor]) = (Runs[second][factor], Runs[first][factor]);
    }

    /// <summary>How the squared distance of the first run to another changes when it takes the level of the second; that of the second
    /// changes by the opposite.</summary>
    private int Change(int first, int second, int factor, int other)
    {
        var (toFirst, toSecond) = (Runs[first][factor] - Runs[other][factor], Runs[second][factor] - Runs[other][factor]);
        return (toSecond * toSecond) - (toFirst * toFirst);
    }

    /// <summary>Distance to the power -50: its square to the power -25.</summary>
    private static double Closeness(int squaredDistance)
    {
        var inverse = 1.0 / squaredDistance;
        var to8 = inverse * inverse;
        to8 *= to8;
        to8 *= to8;
        return to8 * to8 * to8 * inverse;
    }
}
