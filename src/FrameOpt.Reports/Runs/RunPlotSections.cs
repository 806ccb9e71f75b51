using FrameOpt.Analysis;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using static FrameOpt.Reports.Runs.RunFigures;

namespace FrameOpt.Reports.Runs;

/// <summary>What is different for runs in whole plots: two errors.</summary>
internal static class RunPlotSections
{
    /// <summary>How large both errors are, and what cannot be judged.</summary>
    public static IEnumerable<string> Errors(RunAnalysis analysis, WholePlotErrors plots)
    {
        var unit = analysis.Response.Measured.Unit;
        var run = analysis.Fit.Anova.ResidualDeviation!.Value;
        yield return $"{NumberFormat.Count(plots.Plots, "whole plot")}, so two errors. Standard deviation of a run {Digits(run, unit)} "
            + $"({NumberFormat.Count(plots.RunDegreesOfFreedom)} degrees of freedom), of a setting of the factors that are hard to change "
            + (plots.PlotDegreesOfFreedom == 0 ? "UNKNOWN"
                : plots.Ratio > 0 ? Digits(run * Math.Sqrt(plots.Ratio), unit)
                : "not seen: whole plots differ no more than runs let expect")
            + $" ({NumberFormat.Count(plots.PlotDegreesOfFreedom)} degrees of freedom). A term that is the same throughout each whole plot "
            + "is judged by whole plots. Intervals hold 19 of 20 times.";
        if (plots.PlotDegreesOfFreedom == 0)
            yield return "THE FACTORS THAT ARE HARD TO CHANGE CANNOT BE JUDGED: as many terms as whole plots. Set them more often, or "
                + "fit fewer terms with --model.";
        if (plots.Strata is null)
            yield return "The runs are not balanced over the whole plots: variances by residual maximum likelihood, tests approximate.";
    }

    /// <summary>The analysis of variance, between whole plots and within them.</summary>
    public static AnswerSection Variances(RunAnalysis analysis, WholePlotErrors plots)
    {
        var title = $"{analysis.Response.Measured.Name}: analysis of variance";
        if (plots.Strata is not { } strata)
            return new AnswerSection(title,
                ["Sums of squares do not add up for runs that are not balanced over whole plots; the tests stand with the fit."]);
        var (names, terms) = (Names(analysis), analysis.Fit.Terms.ToDictionary(term => term.Name));
        IEnumerable<IReadOnlyList<string>> Rows(AnovaTable anova, string error) =>
        [
            .. anova.Lines.Select(line => (IReadOnlyList<string>)
            [
                terms[line.Source].NamedWith(names), NumberFormat.Count(line.DegreesOfFreedom), Digits(line.SequentialSumOfSquares, ""),
                Digits(line.AdjustedSumOfSquares, ""), Digits(line.AdjustedSumOfSquares / line.DegreesOfFreedom, ""),
                Optional(line.F, Ratio), Optional(line.P, P),
            ]),
            [
                error, NumberFormat.Count(anova.ResidualDegreesOfFreedom), Digits(anova.ResidualSumOfSquares, ""), "",
                Optional(anova.ResidualDeviation, deviation => Digits(deviation * deviation, "")), "", "",
            ],
        ];
        var runs = analysis.Fit.Runs.Count;
        return new AnswerSection(title,
        [
            "First what differs between whole plots, against what they differ by beyond it; then what differs within them, against what "
                + "runs differ by. In sequence: after the terms above. Adjusted: after every other that does not contain the term; F and p "
                + "are of these.",
        ],
            new AnswerTable(["source", "degrees of freedom", "sum of squares in sequence", "adjusted", "mean square", "F", "p"],
                [
                    .. Rows(strata.Plots, "between whole plots, error"), .. Rows(strata.Runs, "within whole plots, error"),
                    [
                        "total", NumberFormat.Count(runs - 1),
                        Digits(strata.Plots.TotalSumOfSquares + strata.Runs.TotalSumOfSquares, ""), "", "", "", "",
                    ],
                ]));
    }
}
