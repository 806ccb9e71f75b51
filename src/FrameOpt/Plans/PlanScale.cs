namespace FrameOpt.Plans;

/// <summary>How a coded value becomes the value of a factor: -1 is low, +1 is high, linear, also beyond -1 and +1.</summary>
public sealed record PlanScale
{
    /// <summary>The scale of one factor.</summary>
    /// <param name="low">The value at coded -1, in the factor's unit.</param>
    /// <param name="high">The value at coded +1, in the same unit; above low.</param>
    /// <exception cref="ArgumentException">High is not above low, or either is not a finite number.</exception>
    public PlanScale(double low, double high)
    {
        if (!double.IsFinite(low) || !double.IsFinite(high) || !(high > low))
            throw new ArgumentException($"the high level ({high}) must be above the low level ({low})");
        (Low, High) = (low, high);
    }

    /// <summary>The value at coded -1.</summary>
    public double Low { get; }

    /// <summary>The value at coded +1.</summary>
    public double High { get; }

    /// <summary>The value of the factor at a coded value, in the unit of low and high.</summary>
    public double Natural(double coded) => Low + ((coded + 1) / 2 * (High - Low));

    /// <summary>The coded value of a value of the factor.</summary>
    public double Coded(double natural) => (2 * (natural - Low) / (High - Low)) - 1;

    /// <summary>The widest scale on which coded values out to ±<paramref name="furthest"/> stay between two limits.</summary>
    /// <param name="least">The smallest value the factor can take.</param>
    /// <param name="most">The largest value the factor can take.</param>
    /// <param name="furthest">The largest coded distance of the plan, such as the axial distance of a central composite; at least
    /// 1.</param>
    /// <exception cref="ArgumentException">Most is not above least, or furthest is below 1.</exception>
    public static PlanScale Within(double least, double most, double furthest)
    {
        if (!(furthest >= 1))
            throw new ArgumentException($"the furthest coded distance must be 1 or more, but is {furthest}");
        var (middle, half) = ((least + most) / 2, (most - least) / 2 / furthest);
        return new PlanScale(middle - half, middle + half);
    }
}

/// <summary>Levels of a factor in coded units.</summary>
public static class CodedLevels
{
    /// <summary>Levels evenly spaced from -1 to +1.</summary>
    /// <param name="count">Number of levels, at least 2.</param>
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
