namespace FrameOpt.Analysis;

/// <summary>Analysis of variance of groups.</summary>
public static class OneWayAnova
{
    /// <summary>Between groups against within them.</summary>
    /// <param name="groups">Two or more, none empty; of any sizes.</param>
    /// <param name="errors">Whether the runs were measured or computed.</param>
    /// <returns>One line, "between"; the residual is within.</returns>
    public static AnovaTable Of(IReadOnlyList<IReadOnlyList<double>> groups, ErrorKind errors)
    {
        var runs = groups.Sum(group => group.Count);
        var mean = groups.Sum(group => group.Sum()) / runs;
        double between = 0, within = 0;
        foreach (var group in groups)
        {
            // From the grand mean, so that numbers that differ in their last digits keep them.
            var shift = group.Sum(value => value - mean) / group.Count;
            between += group.Count * shift * shift;
            within += group.Sum(value => (value - mean - shift) * (value - mean - shift));
        }

        return new AnovaTable(errors, [new SumsOfSquares("between", groups.Count - 1, between, between)], within, runs - groups.Count);
    }
}
