namespace FrameOpt.Analysis;

/// <summary>What the levels of factors that are words, and of those with few values, do to one response.</summary>
/// <param name="Means">Of every level of every factor, then of every pair of levels of two factors.</param>
/// <param name="Anova">Main effects, and interactions of two where the runs leave something for the error.</param>
/// <param name="LeftOut">Factors of numbers with too many values to be levels.</param>
public sealed record RunWords(IReadOnlyList<LevelMean> Means, AnovaTable Anova, IReadOnlyList<string> LeftOut)
{
    private const int MostLevels = 8;

    /// <summary>The levels of a table and one of its responses.</summary>
    /// <param name="table">With one factor of words or more.</param>
    /// <param name="response">With three readings or more.</param>
    public static RunWords Of(RunTable table, MeasuredResponse response)
    {
        int[] used = [.. Enumerable.Range(0, table.Runs.Count).Where(run => double.IsFinite(response.Measured.Values[run]))];
        var few = table.Factors.ToLookup(factor => factor.Values.Distinct().Count() <= MostLevels);
        List<WordColumn> factors =
        [
            new WordColumn("block", table.Blocks), .. table.Words,
            .. few[true].Select(factor => new WordColumn(
                factor.Name, [.. factor.Values.Select(value => FormattableString.Invariant($"{value}"))])),
        ];
        factors.RemoveAll(factor => used.Select(run => factor.Values[run]).Distinct().Count() < 2);
        double[] y = [.. used.Select(run => response.Measured.Values[run])];
        IEnumerable<LevelMean> Means(string name, Func<int, string> level, bool isOfPair) => used.GroupBy(level).Select(runs =>
            new LevelMean(name, runs.Key, runs.Count(), runs.Average(run => response.Measured.Values[run]),
                isOfPair));
        return new RunWords(
            [
                .. factors.SelectMany(factor => Means(factor.Name, run => factor.Values[run], isOfPair: false)),
                .. factors.SelectMany((one, f) => factors.Skip(f + 1).SelectMany(other =>
                    Means($"{one.Name} × {other.Name}", run => $"{one.Values[run]}, {other.Values[run]}", isOfPair: true))),
            ],
            Variances(factors, used, y), [.. few[false].Select(factor => factor.Name)]);
    }

    private static AnovaTable Variances(IReadOnlyList<WordColumn> factors, int[] used, double[] y)
    {
        // Of one factor alone the sums need no columns, which loses no digit.
        if (factors.Count == 1)
            return OneWayAnova.Of(factors[0].Name,
                [.. used.Select((run, i) => (Level: factors[0].Values[run], Value: y[i])).GroupBy(pair => pair.Level, pair => pair.Value)
                    .Select(level => level.ToList())], ErrorKind.Measured);
        AnovaTable Up(int order) => FactorialAnova.Of([.. factors.Select(factor => factor.Name)],
            [.. used.Select(run => factors.Select(factor => factor.Values[run]).ToArray())], y, order, ErrorKind.Measured);
        return Up(2) is { ResidualDegreesOfFreedom: > 0 } pairs ? pairs : Up(1);
    }
}

/// <summary>The mean of the runs with one level of a factor, or of two.</summary>
/// <param name="Factor">Its name; both with a cross between them.</param>
/// <param name="Level">The level; both with a comma between them.</param>
/// <param name="Runs">How many.</param>
/// <param name="Value">In the unit of the response.</param>
/// <param name="IsOfPair">True for two factors.</param>
public sealed record LevelMean(string Factor, string Level, int Runs, double Value, bool IsOfPair);
