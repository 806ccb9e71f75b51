using FrameOpt.Analysis;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using static FrameOpt.Reports.Runs.RunFigures;
using static System.FormattableString;

namespace FrameOpt.Reports.Runs;

/// <summary>What factors whose levels are words do to one response: means, and whether they differ.</summary>
internal static class RunWordSections
{
    /// <summary>The means of each level, then the analysis of variance.</summary>
    public static IEnumerable<AnswerSection> Of(RunTable table, MeasuredResponse response)
    {
        var words = RunWords.Of(table, response);
        var unit = response.Measured.Unit;
        var error = words.Anova.ResidualDeviation;
        double? Half(int count) => error is { } deviation
            ? Numerics.Quantile.Student((1 + Confidence) / 2, words.Anova.ResidualDegreesOfFreedom) * deviation / Math.Sqrt(count) : null;
        List<string> real = [.. words.Anova.Lines.Where(line => line.P < Small).Select(line => line.Source)];
        var pairs = words.Means.Where(mean => mean.IsOfPair && real.Contains(mean.Factor)).Select(mean => mean.Factor).Distinct().ToList();
        yield return new AnswerSection($"{response.Measured.Name}: means by words",
        [
            error is { } s
                ? $"Standard deviation of a run {Digits(s, unit)}, {NumberFormat.Count(words.Anova.ResidualDegreesOfFreedom)} degrees of "
                    + "freedom. Intervals of the means hold 19 of 20 times, where runs are spread evenly over the other factors."
                : "Each combination was measured once, and nothing is left to tell chance from effect: repeat some runs.",
            .. pairs.Select(pair => $"{pair} act together: which level of one is best depends on the other. Compare their pairs."),
        ],
            new AnswerTable(["factor", "level", "runs", Title("mean", unit), "from", "to"],
                [.. words.Means.Where(mean => !mean.IsOfPair || pairs.Contains(mean.Factor)).Select(mean => (IReadOnlyList<string>)
                [
                    mean.Factor, mean.Level, NumberFormat.Count(mean.Runs), Digits(mean.Value, ""),
                    Optional(Half(mean.Runs), half => Digits(mean.Value - half, "")),
                    Optional(Half(mean.Runs), half => Digits(mean.Value + half, "")),
                ])]));
        yield return new AnswerSection($"{response.Measured.Name}: analysis of variance of levels",
        [
            words.Anova.NoTestsReason is { } why ? $"No tests: {why}."
                : real.Count > 0 ? $"More than chance (p below {Invariant($"{Small}")}): {string.Join(", ", real)}."
                    : "Nothing here is more than chance may do.",
            $"Levels are categories: no order and no distance between them is assumed.{(words.LeftOut.Count == 0 ? ""
                : $" NOT IN IT, because of its many values: {string.Join(", ", words.LeftOut)}.")}",
        ],
            RunFitSections.VariancesTable(words.Anova, source => source, []));
    }
}
