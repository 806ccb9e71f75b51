using FrameOpt.Analysis;
using FrameOpt.Plans;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Answer;

/// <summary>A study's plan and what it shows, for terminal, workbook and page.</summary>
public static class PlanSections
{
    private const int MaxTerms = 3;
    private const double MinSharePercent = 1;

    /// <summary>The plan, what it can tell, and for each response which terms matter and how far the surface is from the model.</summary>
    public static IReadOnlyList<AnswerSection> Of(PlanResult answer) =>
        [ModelSharesSection.Of(answer.Shares), Runs(answer), AliasStructure(answer.Plan), Quality(answer.Plan),
            .. answer.Surfaces.Select(surface => Surface(answer.Plan, surface))];

    /// <summary>One row for each run: coded values and the values to build.</summary>
    public static AnswerSection Runs(PlanResult answer)
    {
        var plan = answer.Plan;
        var lines = new List<string>
        {
            $"{plan.Plan.Kind}: {NumberFormat.Count(plan.Plan.Runs.Count, "run")} on {plan.Factors.Count} factors. Coded -1 and +1 stand "
                + "for "
                + string.Join(
                    "; ", plan.Factors
                    .Select((factor, f) =>
                    $"{factor.Name} {factor.Unit.Text(plan.Scales[f].Low)} and {factor.Unit.Text(plan.Scales[f].High)}")) + ".",
        };
        lines.AddRange(answer.Failures.Select((failure, i) => (failure, i)).Where(run => run.failure is not null)
            .Select(run => $"Run {run.i + 1} cannot fly and is excluded from every fit. {FailureText.Describe(run.failure!)}"));
        return new AnswerSection("Plan", lines, new AnswerTable(
            ["run", "kind", .. plan.Factors.Select(factor => $"{factor.Name} coded"),
                .. plan.Factors.Select(factor => $"{factor.Name} [{factor.Unit.Symbol}]")],
            [.. plan.Plan.Runs.Select((run, i) => (IReadOnlyList<string>)
            [
                Invariant($"{run.Number}"),
                run.Kind.ToString().ToLowerInvariant(),
                .. run.Coded.Select(value => Invariant($"{value:0.####}")),
                .. plan.Factors.Select(factor => Invariant($"{factor.Unit.FromSi(plan.Designs[i][factor.Input]):0.####}")),
            ])]));
    }

    /// <summary>Which effects the plan can and cannot tell apart.</summary>
    public static AnswerSection AliasStructure(StudyPlan plan)
    {
        var lines = new List<string> { $"The fitted surface has {PlanLabels.ModelDescription(plan.Model)}." };
        if (plan.Fraction is not { } fraction)
            return new AnswerSection("Alias structure of the plan", lines);
        var letters = plan.Factors.Select((factor, f) => $"{EffectWord.Letters[f]} {factor.Name}");
        lines.Add($"Letters: {string.Join(", ", letters)}.");
        if (fraction.Resolution is { } resolution)
        {
            lines.Add($"Defining relation: I = {string.Join(" = ", fraction.DefiningRelation)}; resolution {resolution}; "
                + $"word-length pattern from length 3: {string.Join(", ", fraction.WordLengthPattern.Skip(2))}.");
        }

        return new AnswerSection("Alias structure of the plan", lines, new AnswerTable(
            ["aliased effects"], [.. fraction.Aliases().Select(group => (IReadOnlyList<string>)[group.ToString()])]));
    }

    /// <summary>How well the plan would estimate its terms if its runs were measured, with noise: efficiencies, and for each term its
    /// standard error, its variance inflation and the chance to see it.</summary>
    public static AnswerSection Quality(StudyPlan plan)
    {
        const string title = "If the runs were measured";
        var model = new PlanModel(plan.Terms);
        if (PlanQuality.Of(plan.Plan, model) is not { } quality)
            return new AnswerSection(title, ["These runs cannot estimate all terms separately, so no quality can be given."]);
        List<string> lines =
        [
            Invariant($"D efficiency {quality.DEfficiency:0.000}, A efficiency {quality.AEfficiency:0.000}, ")
                + Invariant($"G efficiency {quality.GEfficiency:0.000}; ")
                + Invariant($"mean prediction variance over the cube {quality.AverageVariance:0.000} times the noise variance; ")
                + $"{quality.ErrorDegreesOfFreedom} degrees of freedom for error.",
            "Standard errors are multiples of the noise (standard deviation of one run). "
                + "Power is that of a two-sided t test at the 5 % level to detect a change from low "
                + "to high (for a square: from the centre to an end, half of that) as large as the noise, and twice as large.",
        ];
        return new AnswerSection(title, lines, new AnswerTable(
            ["term", "standard error", "variance inflation", "power, change = noise", "power, twice the noise"],
            [.. quality.Terms.Select((term, t) => (IReadOnlyList<string>)
            [
                term,
                Invariant($"{quality.StandardErrors[t]:0.000}"),
                double.IsNaN(quality.VarianceInflation[t]) ? "" : Invariant($"{quality.VarianceInflation[t]:0.00}"),
                PowerText(quality, t, 0.5),
                PowerText(quality, t, 1),
            ])]));
    }

    private static string PowerText(PlanQuality quality, int term, double coefficient) =>
        term == 0 || quality.ErrorDegreesOfFreedom < 1 ? "" : Invariant($"{PlanPower.Of(quality, term, coefficient, 1):0.00}");

    /// <summary>A warning where pairs and squares are missing from the surfaces.</summary>
    internal static IEnumerable<string> OmittedTermsWarning(StudyPlan plan)
    {
        if (plan.Model == SurfaceModel.Linear)
            yield return "The surfaces of this plan have no interaction or quadratic terms, so part of a share may be due to them; a "
                + "plan with more runs can separate them.";
    }

    /// <summary>Which terms matter to one response, and how far its surface is from the model.</summary>
    public static AnswerSection Surface(StudyPlan plan, FittedSurface surface)
    {
        var title = $"Surface of {surface.Response.Name}";
        if (surface.Fit is not { } fit)
            return new AnswerSection(title, ["Too few runs can fly for a surface to be fitted."]);
        var unit = surface.Response.Unit;
        var names = plan.Factors.Select(factor => factor.Name).ToList();
        var lines = new List<string> { FitQuality(fit, unit) };
        if (fit.Aliased.Count > 0)
            lines.Add("Omitted because they are aliased with other terms in these runs: "
                + $"{string.Join(", ", fit.Aliased.Select(term => term.NamedWith(names)))}.");
        if (surface.Check is { } check)
        {
            lines.Add($"Compared with the model on {NumberFormat.Count(check.Points, "design")} of the plan's cube: maximum error "
                + $"{PlanLabels.FourDigits(check.LargestError, unit)}, "
                + $"root mean square {PlanLabels.FourDigits(check.RootMeanSquareError, unit)}; range of the response "
                + $"{PlanLabels.FourDigits(check.Range, unit)}. The error is largest at "
                + string.Join(
                    ", ", plan.Factors
                    .Select((factor, f) => $"{factor.Name} {FactorValue(factor, plan.Scales[f].Natural(check.WorstCoded[f]))}")) + ".");
        }

        if (surface.Shape is { } shape)
            lines.Add($"Stationary point: {shape.ShapeInWords}{StationaryPointText(plan, shape)}.");
        if (fit.NoTestsReason is { } why)
            lines.Add($"No p-values and no F tests: {why}.");
        return new AnswerSection(title, lines, new AnswerTable(
            ["term", unit.Length > 0 ? $"coefficient, coded [{unit}]" : "coefficient, coded", "share over the runs [%]"],
            [.. PlanLabels.Terms(fit).Select(row => (IReadOnlyList<string>)
            [
                row.Term.NamedWith(names),
                PlanLabels.FourDigits(row.Coefficient, ""),
                row.Share is { } share ? Invariant($"{share:0.0}") : "",
            ])]));
    }

    private static string FitQuality(RegressionFit fit, string unit)
    {
        var crossValidation = CrossValidation.LeaveOneOut(fit);
        var explained = Invariant($"The terms explain {100 * fit.Anova.RSquared:0.00} % of the variation over the runs.");
        return crossValidation is null
            ? explained
            : $"{explained} Leave-one-out prediction: "
                + $"root mean square error {PlanLabels.FourDigits(crossValidation.RootMeanSquare, unit)}, "
                + $"maximum {PlanLabels.FourDigits(crossValidation.Worst, unit)}.";
    }

    private static string StationaryPointText(StudyPlan plan, ResponseSurface shape)
    {
        if (shape.StationaryPoint is not { } point)
            return "";
        var place = string.Join(", ", plan.Factors.Select((factor, f) =>
            $"{factor.Name} {FactorValue(factor, plan.Scales[f].Natural(point[f]))}"));
        return $"; it lies at {place}{(point.Any(value => Math.Abs(value) > 1) ? ", outside the plan's cube" : "")}";
    }

    /// <summary>The value of a factor to a tenth of its unit.</summary>
    private static string FactorValue(StudyFactor factor, double si) => Invariant($"{factor.Unit.FromSi(si):0.#} {factor.Unit.Symbol}");

    /// <summary>What the plan shows, a sentence or two for each response; nothing for a study without a plan.</summary>
    public static IEnumerable<AnswerSection> Summary(StudyResult result)
    {
        if (result.Plan is not { } answer)
            yield break;
        yield return new AnswerSection("Which factors matter", [SummaryOfRuns(answer.Plan), .. OmittedTermsWarning(answer.Plan),
            .. answer.Surfaces.Zip(answer.Shares.Responses).Select(pair =>
                $"{pair.First.Response.Name}: {ModelSharesSection.Summary(answer.Shares, pair.Second)}. "
                    + SummaryLine(answer.Plan, pair.First))]);
    }

    private static string SummaryOfRuns(StudyPlan plan) =>
        "First what matters in the model itself (Shapley effects over the designs of the study's grid, in % of the variance). Then what "
            + $"a plan of {NumberFormat.Count(plan.Plan.Runs.Count, "run")} ({plan.Plan.Kind}) sees of it: shares of the variation over "
            + $"its runs, and a polynomial with {PlanLabels.ModelDescription(plan.Model)}. "
            + "`frameopt plan` and the workbook show the details.";

    private static string SummaryLine(StudyPlan plan, FittedSurface surface)
    {
        if (surface.Fit is not { } fit)
            return "Too few runs can fly for a surface to be fitted.";
        var names = plan.Factors.Select(factor => factor.Name).ToList();
        var terms = PlanLabels.Terms(fit).Where(row => row.Share >= MinSharePercent).Take(MaxTerms)
            .Select(row => Invariant($"{row.Term.NamedWith(names)} {row.Share:0.0} %")).ToList();
        var matter = terms.Count == 0 ? "no term has a share of 1 % or more" : string.Join(", ", terms);
        return surface.Check is not { } check
            ? $"The runs: {matter}."
            : $"The runs: {matter}. The maximum error of the polynomial is "
                + $"{PlanLabels.FourDigits(check.LargestError, surface.Response.Unit)}, range of the response "
                + $"{PlanLabels.FourDigits(check.Range, surface.Response.Unit)}.";
    }
}
