using FrameOpt.Analysis;
using FrameOpt.Reports.Answer;
using static FrameOpt.Reports.Runs.RunFigures;
using static System.FormattableString;

namespace FrameOpt.Reports.Runs;

/// <summary>The setting that meets several goals best, or which goals stand in the way.</summary>
internal static class RunOptimumSection
{
    /// <summary>Nothing better can be used.</summary>
    private const double Full = 0.9999;

    public static AnswerSection Of(RunTable table, RunOptimum optimum)
    {
        const string title = "The setting that meets the goals best";
        if (optimum.Overall == 0)
            return new AnswerSection(title, [.. Failures(optimum)]);
        var built = optimum.Built;
        List<string> lines =
        [
            $"{Place(table, optimum.Settings)}. Together the goals are met to {optimum.Overall:0.0000}, where 1 is as good as can be "
                + "used (geometric mean of the desirabilities, Derringer and Suich 1980). It is looked for within the runs; confirm it "
                + "by a run of its own, ground test first."
                + (optimum.Overall > Full ? " Other settings meet them as fully." : ""),
        ];
        if (built is not null)
            lines.Add($"That can be built, beside it: {Place(table, built.Settings)}; "
                + Invariant($"the goals are met to {built.Overall:0.0000}.")
                + (built.Overall == 0 ? " NOT USEFUL in every response: finer steps are needed." : ""));
        return new AnswerSection(title, lines, new AnswerTable(
            ["response", "by the fit", "one further run, from", "to", "desirability",
                .. built is null ? Array.Empty<string>() : ["as built, by the fit", "desirability as built"]],
            [.. optimum.Responses.Select((goal, g) => (IReadOnlyList<string>)
            [
                goal.Response.Measured.Header, Digits(goal.Value, ""), Optional(goal.Interval?.Low, value => Digits(value, "")),
                Optional(goal.Interval?.High, value => Digits(value, "")), Invariant($"{goal.Desirability:0.0000}"),
                .. built is null ? Array.Empty<string>()
                    : [Digits(built.Responses[g].Value, ""), Invariant($"{built.Responses[g].Desirability:0.0000}")],
            ])]));
    }

    private static IEnumerable<string> Failures(RunOptimum optimum)
    {
        yield return "NO SETTING within the runs is useful in every response.";
        foreach (var goal in optimum.Responses.Where(goal => !goal.CanBeMet))
            yield return $"The goal for {goal.Response.Measured.Name} fails alone: by its fit it is between "
                + $"{Digits(goal.Range.Low, "")} and {Digits(goal.Range.High, goal.Response.Measured.Unit)} within the runs. Widen the "
                + "goal, or measure further out.";
        if (optimum.Responses.All(goal => goal.CanBeMet))
            yield return "Each goal can be met alone, but no setting meets all of them: widen one, or leave one out to see which two "
                + $"do not go together. {string.Join("; ", optimum.Responses.Select(goal => $"{goal.Response.Measured.Name} lies between "
                    + $"{Digits(goal.Range.Low, "")} and {Digits(goal.Range.High, goal.Response.Measured.Unit)} within the runs"))}.";
    }
}
