namespace FrameOpt.Plans;

/// <summary>Every combination of the factors' levels.</summary>
public static class FullFactorial
{
    private const int MaxRuns = 10_000;

    /// <summary>A full factorial with levels evenly spaced from -1 to +1, the first factor changing fastest.</summary>
    /// <param name="factors">The names, 1 to 20.</param>
    /// <param name="levels">Number of levels of each factor, at least 2.</param>
    /// <exception cref="ArgumentException">The counts differ, a factor has fewer than two levels, or there are more than 10,000
    /// runs.</exception>
    public static Plan Build(IReadOnlyList<string> factors, IReadOnlyList<int> levels)
    {
        PlanArguments.Factors(factors, "full factorial", 1, 20);
        if (levels.Count != factors.Count)
            throw new ArgumentException(
                $"there are {factors.Count} factors but {levels.Count} numbers of levels; give one number for each factor");
        for (var f = 0; f < factors.Count; f++)
            PlanArguments.AtLeast(2, levels[f], $"number of levels of {factors[f]}");
        var runs = levels.Aggregate(1.0, (product, count) => product * count);
        if (runs > MaxRuns)
            throw new ArgumentException(
                $"the full factorial has {runs:0} runs; at most {MaxRuns} are built: take fewer levels, or a central composite plan");
        return Plan.Numbered("full factorial", factors, Plan.Points(
            PointKind.Factorial, CodedLevels.Combinations([.. levels.Select(CodedLevels.EvenlySpaced)])));
    }

    /// <summary>A full factorial with two levels of every factor.</summary>
    /// <param name="factors">The names, 1 to 13.</param>
    /// <exception cref="ArgumentException">No factor, too many, or a name twice.</exception>
    public static Plan TwoLevel(IReadOnlyList<string> factors) => Build(factors, [.. factors.Select(_ => 2)]);
}
