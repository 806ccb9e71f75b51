namespace FrameOpt.Plans;

/// <summary>As many levels of every factor as there are runs, each level used once.</summary>
/// <remarks>Source: M. D. McKay, R. J. Beckman and W. J. Conover 1979, Technometrics 21:239-245; the criterion for spreading the runs:
/// M. D. Morris and T. J. Mitchell 1995, J. Stat. Plan. Inference 43:381-402 (from memory).</remarks>
public static class LatinHypercube
{
    /// <summary>Half the power p of Morris and Mitchell, as squared distances are used.</summary>
    private const int HalfPower = 25;

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
        return Enumerable.Range(0, starts).Select(_ => Spread(Random(factors, runs, random))).MinBy(Crowding)!;
    }

    private static int[][] Spread(int[][] runs)
    {
        for (var helped = true; helped;)
        {
            helped = false;
            for (var first = 0; first < runs.Length; first++)
            {
                for (var second = first + 1; second < runs.Length; second++)
                {
                    for (var f = 0; f < runs[0].Length; f++)
                        helped |= Exchange(runs, first, second, f);
                }
            }
        }

        return runs;
    }

    /// <summary>Exchanges the levels of a factor between two runs where that helps.</summary>
    private static bool Exchange(int[][] runs, int first, int second, int factor)
    {
        void Swap() => (runs[first][factor], runs[second][factor]) = (runs[second][factor], runs[first][factor]);
        var before = Around(runs, first, second);
        Swap();
        if (Around(runs, first, second) < before * (1 - 1e-9))
            return true;
        Swap();
        return false;
    }

    /// <summary>How crowded two runs are by the others; their own distance does not change when they exchange a level.</summary>
    private static double Around(int[][] runs, int first, int second)
    {
        var sum = 0.0;
        for (var other = 0; other < runs.Length; other++)
        {
            if (other != first && other != second)
                sum += Closeness(runs[first], runs[other]) + Closeness(runs[second], runs[other]);
        }

        return sum;
    }

    private static double Crowding(int[][] runs)
    {
        var sum = 0.0;
        for (var first = 0; first < runs.Length; first++)
        {
            for (var second = first + 1; second < runs.Length; second++)
                sum += Closeness(runs[first], runs[second]);
        }

        return sum;
    }

    private static double Closeness(int[] left, int[] right)
    {
        var squared = 0.0;
        for (var f = 0; f < left.Length; f++)
            squared += (left[f] - right[f]) * (left[f] - right[f]);
        return Math.Pow(squared, -HalfPower);
    }
}
