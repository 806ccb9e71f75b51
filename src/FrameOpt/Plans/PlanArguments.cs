namespace FrameOpt.Plans;

/// <summary>What every plan asks of its arguments, said in words.</summary>
internal static class PlanArguments
{
    /// <summary>Names that are there, differ, and are as many as the plan takes.</summary>
    public static void Factors(IReadOnlyList<string> names, string plan, int least, int most)
    {
        if (names.Count < least || names.Count > most)
            throw new ArgumentException($"a {plan} takes {least} to {most} factors, not {names.Count}");
        if (names.Any(string.IsNullOrWhiteSpace))
            throw new ArgumentException("every factor needs a name");
        var twice = names.GroupBy(name => name).FirstOrDefault(group => group.Count() > 1);
        if (twice is not null)
            throw new ArgumentException($"the factor \"{twice.Key}\" is named {twice.Count()} times; each factor belongs in the plan once");
    }

    /// <summary>A count of nought or more.</summary>
    public static void NotNegative(int count, string what)
    {
        if (count < 0)
            throw new ArgumentException($"the {what} cannot be negative, but is {count}");
    }

    /// <summary>A count of at least some number.</summary>
    public static void AtLeast(int least, int count, string what)
    {
        if (count < least)
            throw new ArgumentException($"the {what} must be {least} or more, but is {count}");
    }
}
