namespace FrameOpt.Analysis;

/// <summary>Analysis of variance of several factors whose levels are categories.</summary>
public static class FactorialAnova
{
    /// <summary>Main effects and interactions, balanced or not.</summary>
    /// <param name="factorNames">One for each factor.</param>
    /// <param name="levels">For each run the level of each factor, by any names.</param>
    /// <param name="y">The response of each run.</param>
    /// <param name="order">Of the highest interaction: 1 for main effects only.</param>
    /// <param name="errors">Whether the runs were measured or computed.</param>
    /// <remarks>Source: regression on columns of levels coded to add up to 0; adjusted sums respect marginality (Nelder 1977, from
    /// memory).</remarks>
    public static AnovaTable Of(IReadOnlyList<string> factorNames, IReadOnlyList<IReadOnlyList<string>> levels, IReadOnlyList<double> y,
        int order,
        ErrorKind errors)
    {
        var sets = Enumerable.Range(0, 1 << factorNames.Count).Where(set => int.PopCount(set) <= order).OrderBy(set => int.PopCount(set))
            .ToArray();
        var coded = factorNames.Select((_, f) => Coded([.. levels.Select(run => run[f])])).ToArray();
        var groups = sets.Select((set, s) => new ColumnGroup(
            string.Join(" × ", factorNames.Where((_, f) => (set >> f & 1) == 1)),
            Columns(set, coded, y.Count),
            other => other != s && (sets[other] & set) == set)).ToArray();
        var basis = new OrthogonalColumns(groups.SelectMany(group => group.Columns));
        var (along, rest) = basis.Project(y);
        return new AnovaTable(errors, [.. ColumnGroup.SumsOf(groups, basis, along).Skip(1)], rest.Sum(value => value * value),
            y.Count - basis.Kept.Count);
    }

    /// <summary>A column for each level but the last: 1 there, -1 at the last, 0 elsewhere.</summary>
    private static double[][] Coded(string[] levels)
    {
        var distinct = levels.Distinct().ToArray();
        return [.. distinct[..^1].Select(level => levels.Select(own => own == level ? 1.0 : own == distinct[^1] ? -1.0 : 0.0).ToArray())];
    }

    /// <summary>The columns of an interaction: every product of one column of each factor; the constant for none.</summary>
    private static double[][] Columns(int set, double[][][] coded, int runs)
    {
        double[][] columns = [[.. Enumerable.Repeat(1.0, runs)]];
        for (var f = 0; f < coded.Length; f++)
        {
            if ((set >> f & 1) == 1)
                columns = [.. columns.SelectMany(column => coded[f].Select(other => column.Zip(other, (a, b) => a * b).ToArray()))];
        }

        return columns;
    }
}

/// <summary>Analysis of variance of groups.</summary>
public static class OneWayAnova
{
    /// <summary>Between groups against within them.</summary>
    /// <param name="source">What the groups differ by.</param>
    /// <param name="groups">Two or more, none empty; of any sizes.</param>
    /// <param name="errors">Whether the runs were measured or computed.</param>
    /// <returns>One line; the residual is within.</returns>
    public static AnovaTable Of(string source, IReadOnlyList<IReadOnlyList<double>> groups, ErrorKind errors)
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

        return new AnovaTable(errors, [new SumsOfSquares(source, groups.Count - 1, between, between)], within, runs - groups.Count);
    }
}
