using FrameOpt.Analysis;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using static FrameOpt.Reports.Runs.RunFigures;
using static System.FormattableString;

namespace FrameOpt.Reports.Runs;

/// <summary>What measured runs say, for terminal and page.</summary>
public static class RunAnalysisSections
{
    private const double LargeCook = 1;

    /// <summary>What was read, then for each response its fit, variances, effects, runs and, where the file has it, the model's values
    /// beside it.</summary>
    /// <param name="table">All runs.</param>
    /// <param name="analyses">One for each response; none where no factor is a number.</param>
    /// <param name="optimum">The setting that meets the goals best; null without goals.</param>
    public static IReadOnlyList<AnswerSection> Of(RunTable table, IReadOnlyList<RunAnalysis> analyses, RunOptimum? optimum) =>
        [Read(table), .. table.Words.Count == 0 ? [] : table.Responses.SelectMany(response => RunWordSections.Of(table, response)),
            .. analyses.SelectMany(OfResponse), .. optimum is null ? [] : new[] { RunOptimumSection.Of(table, optimum) }];

    private static IEnumerable<AnswerSection> OfResponse(RunAnalysis analysis)
    {
        if (analysis.Response.Predicted is not null)
            yield return BesideModel(analysis);
        if (analysis.TwoLevel is { } effects)
            yield return Effects(analysis, effects);
        yield return RunFitSections.Fit(analysis);
        yield return analysis.Fit.WholePlots is { } plots ? RunPlotSections.Variances(analysis, plots) : RunFitSections.Variances(analysis);
        yield return Runs(analysis);
    }

    private static AnswerSection Read(RunTable table)
    {
        var blocks = table.Blocks.Distinct().Count();
        var plots = table.WholePlots.Distinct().Count();
        return new AnswerSection("What was read",
        [
            $"{NumberFormat.Count(table.Runs.Count, "run")}{(blocks > 1 ? $" in {NumberFormat.Count(blocks, "block")}" : "")}"
                + $"{(plots > 0 ? $" in {NumberFormat.Count(plots, "whole plot")}" : "")}; read: "
                + $"{string.Join(", ", table.Responses.Select(response => response.Measured.Header))}.",
            .. table.Words.Select(word => $"{word.Name} has {NumberFormat.Count(word.Values.Distinct().Count())} levels: "
                + $"{string.Join(", ", word.Values.Distinct())}."),
            .. table.Words.Count == 0 || table.Factors.Count == 0 ? [] : new[] { "THE FIT BELOW IS OF THE NUMBERS ONLY: what the words do "
                + "counts in it as error." },
            .. table.Factors.Count == 0 ? [] : new[]
            {
                "Coded -1 and +1 stand for "
                    + $"{string.Join("; ", table.Factors.Select((factor, f) => $"{factor.Name} {Ends(table, f)}"))}.",
            },
            .. table.NotUsed.Count == 0 ? [] : new[] { $"Columns not used: {string.Join(", ", table.NotUsed)}." },
        ]);
    }

    private static string Ends(RunTable table, int f) => Invariant($"{table.Coding.Centre[f] - table.Coding.HalfRange[f]:0.######} and ")
        + Invariant($"{table.Coding.Centre[f] + table.Coding.HalfRange[f]:0.######} {table.Factors[f].Unit}").TrimEnd();

    private static AnswerSection BesideModel(RunAnalysis analysis)
    {
        var errors = analysis.ModelErrors().Where(double.IsFinite).ToList();
        var unit = analysis.Response.Measured.Unit;
        var noise = analysis.Fit.NoTestsReason is null ? analysis.Fit.Anova.ResidualDeviation : null;
        var rms = errors.Count == 0 ? double.NaN : Math.Sqrt(errors.Average(error => error * error));
        return new AnswerSection($"{analysis.Response.Measured.Name}: the model beside what was measured", errors.Count == 0
            ? ["The model has no value for these runs."]
            :
            [
                $"On average the model says {Digits(Math.Abs(errors.Average()), unit)} {(errors.Average() < 0 ? "less" : "more")} than was "
                    + $"measured; root mean square difference {Digits(rms, unit)}, largest {Digits(errors.Max(Math.Abs), unit)} in run "
                    + $"{analysis.Table.Runs[analysis.Used[analysis.ModelErrors().ToList().FindIndex(error =>
                        Math.Abs(error) == errors.Max(Math.Abs))]]}."
                    + (noise is { } s ? $" The runs themselves scatter by {Digits(s, unit)} about their own fit." : "")
                    + " The model's values are those of the file: of the settings as planned.",
            ]);
    }

    private static AnswerSection Effects(RunAnalysis analysis, TwoLevelRuns runs)
    {
        var unit = analysis.Response.Measured.Unit;
        List<string> names = [.. analysis.Table.Factors.Select(factor => factor.Name)];
        var places = runs.HalfNormalPoints().ToDictionary(point => point.Index);
        var hasPlots = runs.BetweenPlots.Count > 0;
        var order = Enumerable.Range(0, runs.Effects.Count).OrderByDescending(i => Math.Abs(runs.Effects[i].Value)).ToList();
        return new AnswerSection($"{analysis.Response.Measured.Name}: effects of a two-level plan",
        [
            "An effect is the mean at the high level less the mean at the low one. Effects that are errors only lie on a line through the "
                + "origin when plotted against the half-normal quantile.",
            .. runs.LostInBlocks.Count == 0 ? []
                : new[] { $"Confounded with the blocks: {string.Join(", ", runs.LostInBlocks.Select(term => term.NamedWith(names)))}." },
            .. Margins(runs.Margins, hasPlots ? " within whole plots" : "", unit),
            .. Margins(runs.PlotMargins, " between whole plots", unit),
            .. hasPlots
                ? new[]
                {
                    "Effects between whole plots are judged by what whole plots differ by, all others by what runs of one whole plot "
                        + "differ by; each kind has quantiles of its own.",
                } : [],
            .. hasPlots && runs.PlotMargins is null
                ? new[] { "Too few effects between whole plots, or repeated ones, to judge those here: see the fit." } : [],
            .. runs.Error is { } error
                ? new[]
                {
                    $"Standard error of an effect {Digits(error.StandardError, unit)}, from what repeated runs differ by "
                        + $"({NumberFormat.Count(error.DegreesOfFreedom)} degrees of freedom).",
                } : [],
            .. runs.Curvature is { } curvature
                ? new[]
                {
                    $"The corners are on average {Digits(Math.Abs(curvature.Difference), unit)} "
                        + (curvature.Difference < 0 ? "below " : "above ")
                        + "the centre" + (curvature.P is { } p ? $" (p {P(p)}): " + (p < Small ? "THE RESPONSE IS CURVED, which no "
                        + "two-level plan can describe; add axial runs." : "no sign of curvature.") : "; one centre run cannot tell "
                        + "whether that is curvature."),
                } : [],
        ],
            new AnswerTable(["effect", "aliased with", Title("value", unit), "share [%]", "half-normal quantile",
                    .. runs.Error is null ? Array.Empty<string>() : ["t", "p"], .. hasPlots ? ["between"] : Array.Empty<string>(), ""],
                [.. order.Select(i => (IReadOnlyList<string>)
                [
                    runs.Effects[i].Term.NamedWith(names),
                    string.Join(", ", runs.Effects[i].Aliases.Select(alias =>
                        (alias.IsNegative ? "-" : "") + alias.Term.NamedWith(names))),
                    Digits(runs.Effects[i].Value, ""), Invariant($"{runs.Effects[i].ContributionPercent:0.0}"),
                    Invariant($"{places[i].Quantile:0.00}"),
                    .. runs.Error is not { } own ? Array.Empty<string>() : [Ratio(own.T(runs.Effects[i])), P(own.P(runs.Effects[i]))],
                    .. !hasPlots ? Array.Empty<string>() : [runs.BetweenPlots.Contains(runs.Effects[i].Term) ? "whole plots" : "runs"],
                    Verdict(runs, runs.Effects[i]),
                ])]));
    }

    private static IEnumerable<string> Margins(LenthMargins? margins, string which, string unit) => margins is null ? [] :
        [$"By errors alone one effect{which} chosen beforehand stays below {Digits(margins.MarginOfError, unit)}, the largest of all "
            + $"below {Digits(margins.SimultaneousMargin, unit)} (19 of 20 times; Lenth's pseudo standard error "
            + $"{Digits(margins.PseudoStandardError, unit)})."];

    /// <summary>By the error of repeated runs, with one chance in 20 for all effects together (Bonferroni), or by Lenth's
    /// margins.</summary>
    private static string Verdict(TwoLevelRuns runs, Effect effect)
    {
        if (runs.Error is { } error)
            return error.P(effect) < Small / runs.Effects.Count ? "REAL" : error.P(effect) < Small ? "perhaps real" : "";
        return runs.MarginsOf(effect) is not { } margins ? "" : Math.Abs(effect.Value) > margins.SimultaneousMargin ? "REAL"
            : Math.Abs(effect.Value) > margins.MarginOfError ? "perhaps real" : "";
    }

    private static AnswerSection Runs(RunAnalysis analysis)
    {
        var fit = analysis.Fit;
        var mostLeverage = 2.0 * fit.Terms.Count / fit.Runs.Count;
        var strange = StrangestAllowed(fit);
        string Remark(FittedRun run) => string.Join("; ", new[]
        {
            Math.Abs(run.ExternallyStudentised ?? 0) > strange ? "OUTLIER" : "",
            run.CookDistance > LargeCook ? "moves the fit" : "",
            run.Leverage > mostLeverage && run.Leverage < 1 ? "far out" : "",
        }.Where(word => word.Length > 0));
        List<string> outliers = [.. fit.Runs.Index().Where(pair => Math.Abs(pair.Item.ExternallyStudentised ?? 0) > strange)
            .Select(pair => analysis.Table.Runs[analysis.Used[pair.Index]])];
        return new AnswerSection($"{analysis.Response.Measured.Name}: run by run",
        [
            fit.Anova.ResidualDegreesOfFreedom < 2 ? "No run can be judged: hardly more runs than terms."
                : outliers.Count > 0 ? $"LOOK AGAIN AT RUN {string.Join(", ", outliers)}: unlike all others by the fit. Measure again "
                    + "before believing the rest." : "No run is unlike the others.",
            .. fit.WholePlots is null ? [] : new[]
            {
                "Fitted values have in them most of what the whole plot of the run is off, so that a residual is of the run alone.",
            },
        ],
            new AnswerTable(["run", Title("measured", analysis.Response.Measured.Unit), "fitted", "residual", "studentised", "leverage",
                    "Cook's distance", ""],
                [.. fit.Runs.Select((run, i) => (IReadOnlyList<string>)
                [
                    analysis.Table.Runs[analysis.Used[i]], Digits(run.Observed, ""), Digits(run.Fitted, ""), Digits(run.Residual, ""),
                    Optional(run.ExternallyStudentised, value => Invariant($"{value:0.00}")), Invariant($"{run.Leverage:0.000}"),
                    Optional(run.CookDistance, value => Invariant($"{value:0.000}")), Remark(run),
                ])]));
    }

    /// <summary>The largest studentised residual that so many runs reach by chance in 1 of 20 cases (Bonferroni).</summary>
    private static double StrangestAllowed(RegressionFit fit) => fit.Anova.ResidualDegreesOfFreedom < 2 ? double.PositiveInfinity
        : Numerics.Quantile.Student(1 - ((1 - Confidence) / (2 * fit.Runs.Count)), fit.Anova.ResidualDegreesOfFreedom - 1);
}
