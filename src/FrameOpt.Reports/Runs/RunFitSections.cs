using FrameOpt.Analysis;
using FrameOpt.Plans;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using static FrameOpt.Reports.Runs.RunFigures;
using static System.FormattableString;

namespace FrameOpt.Reports.Runs;

/// <summary>The fit of one response to measured runs.</summary>
internal static class RunFitSections
{
    private const double HardToSeparate = 5;

    /// <summary>A smaller gain may be chance.</summary>
    private const double MuchBetter = 0.7;

    /// <summary>Coefficients with their errors, and how good the fit is.</summary>
    public static AnswerSection Fit(RunAnalysis analysis)
    {
        var (fit, unit) = (analysis.Fit, analysis.Response.Measured.Unit);
        var names = Names(analysis);
        var plots = fit.WholePlots;
        var isShorter = fit.Terms.Count < ModelTerms.Of(analysis.Model, analysis.Table.Factors.Count).Count;
        List<string> lines =
        [
            $"{NumberFormat.Count(analysis.Used.Count, "run")}; {PlanLabels.ModelDescription(analysis.Model)}"
                + $"{(isShorter ? ", less what was left out" : "")}"
                + $"{(analysis.BlockNames.Count > 0 ? "; the constant is of the mean of the blocks" : "")}."
                + (plots is not null ? "" : Invariant($" R² {fit.Anova.RSquared:0.0000}")
                + (fit.Anova.AdjustedRSquared is { } adjusted && fit.NoTestsReason is null
                ? Invariant($", adjusted {adjusted:0.0000}") : "") + (fit.PredictedRSquared is { } predicted
                ? Invariant($", predicting each run without it {predicted:0.0000}") : "") + "."),
        ];
        if (fit.NoTestsReason is { } why)
            lines.Add($"No tests: {why}.");
        else if (plots is not null)
            lines.AddRange(RunPlotSections.Errors(analysis, plots));
        else
            lines.Add($"Standard deviation of a run {Digits(fit.Anova.ResidualDeviation!.Value, unit)}, "
                + $"{NumberFormat.Count(fit.Anova.ResidualDegreesOfFreedom)} degrees of freedom. Intervals hold 19 of 20 times.");
        if (fit.Aliased.Count > 0)
            lines.Add($"Left out because the runs cannot tell them from others: {Join(fit.Aliased, names)}.");
        if (fit.LackOfFit is { F: not null } lack)
            lines.Add(lack.P < Small
                ? $"THE MODEL DOES NOT FIT (lack of fit: F {Ratio(lack.F.Value)}, p {P(lack.P!.Value)}): repeated runs scatter less "
                    + "than the fit misses them."
                : $"No lack of fit (F {Ratio(lack.F.Value)}, p {P(lack.P!.Value)}, against repeated runs).");
        if (fit.Coefficients.Where(one => one.VarianceInflation > HardToSeparate).Select(one => one.Term).ToList() is { Count: > 0 } hard)
            lines.Add($"Hard to separate from others (variance inflation above {HardToSeparate:0}): {Join(hard, names)}.");
        if (analysis.Shape is { } shape)
            lines.Add(Shape(analysis, shape));
        if (analysis.Smooth is { } smooth)
            lines.Add(Smooth(analysis, smooth));
        return new AnswerSection($"{analysis.Response.Measured.Name}: fit", lines, new AnswerTable(
            ["term", Title("coefficient, coded", unit), "standard error", "t", "p", "from", "to",
                plots is null ? "variance inflation" : "degrees of freedom"],
            [.. fit.Coefficients.Select(one => (IReadOnlyList<string>)
            [
                one.Term.NamedWith(names), Digits(one.Value, ""), Optional(one.StandardError, value => Digits(value, "")),
                Optional(one.T, Ratio), Optional(one.P, P), Optional(one.StandardError, error => Digits(one.Value - Half(one, error), "")),
                Optional(one.StandardError, error => Digits(one.Value + Half(one, error), "")),
                plots is null ? Optional(one.VarianceInflation, value => Invariant($"{value:0.00}"))
                    : one.ErrorDegreesOfFreedom > 0 ? NumberFormat.Count(one.ErrorDegreesOfFreedom) : "none",
            ])]));
    }

    private static double Half(Coefficient one, double error) =>
        Numerics.Quantile.Student((1 + Confidence) / 2, one.ErrorDegreesOfFreedom) * error;

    /// <summary>Whether a surface without a polynomial predicts the runs better.</summary>
    private static string Smooth(RunAnalysis analysis, GaussianProcess smooth)
    {
        var (unit, runs) = (analysis.Response.Measured.Unit, analysis.Fit.Runs.Count);
        var polynomial = analysis.Fit.Press is { } press ? Math.Sqrt(press / runs) : (double?)null;
        var text = $"A Gaussian process (Matern 5/2), which takes no polynomial, predicts each run without it to "
            + $"{Digits(smooth.LeaveOneOutError, unit)} (root mean square)"
            + (polynomial is { } own ? $", the polynomial to {Digits(own, unit)}" : "");
        var spread = Math.Sqrt(analysis.Fit.Anova.TotalSumOfSquares / runs);
        return smooth.LeaveOneOutError > MuchBetter * spread ? $"{text}: neither says much more than the mean does."
            : polynomial is { } other && smooth.LeaveOneOutError < MuchBetter * other
                ? $"{text}: THE POLYNOMIAL PREDICTS WORSE. First look for an outlier below, try --select, and --model with more terms; if "
                    + "that does not help, the response bends otherwise than a polynomial: measure between the runs."
                : $"{text}: the polynomial is good enough.";
    }

    private static string Shape(RunAnalysis analysis, ResponseSurface shape)
    {
        var text = $"Stationary point: {shape.ShapeInWords}";
        if (shape.StationaryPoint is not { } point)
            return $"{text}.";
        var natural = analysis.Table.Coding.Uncoded(point);
        var isOutside = point.Zip(analysis.Table.CodedRanges()).Any(pair => pair.First < pair.Second.Low || pair.First > pair.Second.High);
        return isOutside ? $"{text}, but OUTSIDE THE RUNS, where the fit says nothing."
            : $"{text}. It lies at {Place(analysis.Table, natural)}.";
    }

    /// <summary>Which terms explain how much.</summary>
    public static AnswerSection Variances(RunAnalysis analysis)
    {
        var (fit, names) = (analysis.Fit, Names(analysis));
        var terms = fit.Terms.ToDictionary(term => term.Name);
        return new AnswerSection($"{analysis.Response.Measured.Name}: analysis of variance",
        [
            "In sequence: after the terms above. Adjusted: after every other that does not contain the term; shares, F and p are of these, "
                + "and add up to the total only where terms are uncorrelated.",
        ],
            VariancesTable(fit.Anova, source => terms[source].NamedWith(names), fit.LackOfFit is not { DegreesOfFreedom: > 0 } lack ? [] :
            [
                ["  of it lack of fit", NumberFormat.Count(lack.DegreesOfFreedom), Digits(lack.SumOfSquares, ""), "", "",
                    Optional(lack.F, Ratio), Optional(lack.P, P)],
                ["  of it repeated runs", NumberFormat.Count(lack.PureErrorDegreesOfFreedom), Digits(lack.PureErrorSumOfSquares, ""),
                    "", "", "", ""],
            ]));
    }

    /// <summary>An analysis of variance, its residual and the total.</summary>
    /// <param name="anova">The analysis.</param>
    /// <param name="named">Names a source.</param>
    /// <param name="residual">Rows of the parts of the residual; may be empty.</param>
    public static AnswerTable VariancesTable(
        AnovaTable anova, Func<string, string> named, IReadOnlyList<IReadOnlyList<string>> residual) => new(
        ["source", "degrees of freedom", "sum of squares in sequence", "adjusted", "share [%]", "F", "p"],
        [
            .. anova.Lines.Select(line => (IReadOnlyList<string>)
            [
                named(line.Source), NumberFormat.Count(line.DegreesOfFreedom), Digits(line.SequentialSumOfSquares, ""),
                Digits(line.AdjustedSumOfSquares, ""), Invariant($"{line.ContributionPercent:0.0}"), Optional(line.F, Ratio),
                Optional(line.P, P),
            ]),
            ["all terms together", NumberFormat.Count(anova.ModelDegreesOfFreedom), Digits(anova.ModelSumOfSquares, ""), "",
                Invariant($"{100 * anova.RSquared:0.0}"), Optional(anova.F, Ratio), Optional(anova.P, P)],
            ["residual", NumberFormat.Count(anova.ResidualDegreesOfFreedom), Digits(anova.ResidualSumOfSquares, ""), "",
                anova.TotalSumOfSquares > 0 ? Invariant($"{100 * anova.ResidualSumOfSquares / anova.TotalSumOfSquares:0.0}") : "", "", ""],
            .. residual,
            ["total", NumberFormat.Count(anova.ModelDegreesOfFreedom + anova.ResidualDegreesOfFreedom),
                Digits(anova.TotalSumOfSquares, ""), "", "", "", ""],
        ]);
}
