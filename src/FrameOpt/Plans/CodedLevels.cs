namespace FrameOpt.Plans;

/// <summary>Levels of a factor in coded units.</summary>
public static class CodedLevels
{
    /// <summary>Levels evenly spaced from -1 to +1.</summary>
    /// <param name="count">How many, 2 or more.</param>
    /// <exception cref="ArgumentException">Fewer than two.</exception>
    public static double[] EvenlySpaced(int count)
    {
        PlanArguments.AtLeast(2, count, "number of levels");
        return [.. Enumerable.Range(0, count).Select(level => (2.0 * level / (count - 1)) - 1)];
    }

    /// <summary>Every combination of levels, the first factor fastest.</summary>
    internal static IEnumerable<double[]> Combinations(double[][] levels)
    {
        var count = levels.Aggregate(1, (product, list) => product * list.Length);
        for (var number = 0; number < count; number++)
        {
            var (rest, point) = (number, new double[levels.Length]);
            for (var f = 0; f < levels.Length; f++)
            {
                point[f] = levels[f][rest % levels[f].Length];
                rest /= levels[f].Length;
            }

            yield return point;
        }
    }

    /// <summary>The corners of the cube in standard order.</summary>
    internal static IEnumerable<double[]> Corners(int factors) => Combinations([.. Enumerable.Repeat(EvenlySpaced(2), factors)]);
}
