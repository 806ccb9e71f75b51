namespace FrameOpt.Plans;

/// <summary>As many levels of every factor as there are runs, each level used once.</summary>
/// <remarks>Source: M. D. McKay, R. J. Beckman and W. J. Conover 1979, A comparison of three methods for selecting values of input variables,
/// Technometrics 21:239-245 (from memory).</remarks>
public static class LatinHypercube
{
    /// <summary>Levels paired at random.</summary>
    /// <param name="factors">How many factors, 1 or more.</param>
    /// <param name="runs">How many runs, 2 or more.</param>
    /// <param name="random">Where the numbers come from.</param>
    /// <returns>For each run one level a factor, from 0 to runs - 1.</returns>
    /// <exception cref="ArgumentException">No factor, or fewer than two runs.</exception>
    public static int[][] Random(int factors, int runs, Pcg32 random)
    {
        PlanArguments.AtLeast(1, factors, "number of factors");
        PlanArguments.AtLeast(2, runs, "number of runs");
        var columns = Enumerable.Range(0, factors).Select(_ => random.Shuffled([.. Enumerable.Range(0, runs)])).ToArray();
        return [.. Enumerable.Range(0, runs).Select(run => columns.Select(column => column[run]).ToArray())];
    }

    /// <summary>The best found of several random starts, each spread out by exchanging levels between two runs for as long as that helps: the two closest runs lie
    /// as far apart as possible.</summary>
    /// <param name="factors">How many factors, 1 or more.</param>
    /// <param name="runs">How many runs, 2 or more; the work of one start grows with the cube of it.</param>
    /// <param name="random">Where the numbers come from.</param>
    /// <param name="starts">How many random starts, 1 or more.</param>
    /// <returns>For each run one level a factor, from 0 to runs - 1.</returns>
    /// <exception cref="ArgumentException">No factor, fewer than two runs, or no start.</exception>
    public static int[][] Maximin(int factors, int runs, Pcg32 random, int starts)
    {
        PlanArguments.AtLeast(1, starts, "number of starts");
        return Enumerable.Range(0, starts).Select(_ => new HypercubeSpread(Random(factors, runs, random)))
            .MinBy(spread => spread.Crowding())!.Runs;
    }
}
