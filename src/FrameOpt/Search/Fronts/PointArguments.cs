namespace FrameOpt.Search.Fronts;

/// <summary>What is asked of points given one after the other, each with all its objectives.</summary>
internal static class PointArguments
{
    public const int MaxObjectives = 6;

    /// <summary>How many points there are.</summary>
    /// <exception cref="ArgumentException">There are fewer than 2 or more than 6 objectives, part of a point, or a value that is not a
    /// number.</exception>
    public static int Count(ReadOnlySpan<double> values, int objectives)
    {
        if (objectives is < 2 or > MaxObjectives)
            throw new ArgumentException($"expected 2 to {MaxObjectives} objectives, not {objectives}", nameof(objectives));
        if (values.Length % objectives != 0)
            throw new ArgumentException($"{values.Length} values are no whole number of points with {objectives} objectives",
                nameof(values));
        var allNumbers = true;
        foreach (var value in values)
            allNumbers &= !double.IsNaN(value);
        if (!allNumbers)
            throw new ArgumentException("an objective is not a number", nameof(values));
        return values.Length / objectives;
    }
}
