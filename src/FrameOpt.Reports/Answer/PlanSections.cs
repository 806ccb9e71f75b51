using FrameOpt.Forms;
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
        [ModelSharesSection.Of(answer.Shares), ModelSharesSection.Of(answer.Screening), Runs(answer), AliasStructure(answer.Plan),
            Quality(answer.Plan), .. answer.Surfaces.Select(surface => SurfaceSection.Of(answer.Plan, surface))];

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
        if (plan.HardToChange.Count > 0)
            lines.Add(WholePlots(plan));
        if (answer.MeetsLimits.Contains(false))
            lines.Add($"{NumberFormat.Count(answer.MeetsLimits.Count(meets => !meets))} OF THEM LEAVE THE LIMITS of the study: compute "
                + "them, and do not build or fly them.");
        lines.AddRange(answer.Failures.Select((failure, i) => (failure, i)).Where(run => run.failure is not null)
            .Select(run => $"Run {run.i + 1} cannot fly and is excluded from every fit. {FailureText.Describe(run.failure!)}"));
        return new AnswerSection("Plan", lines, new AnswerTable(
            ["run", "kind", .. plan.Plan.WholePlots > 0 ? [RunHeading.WholePlot] : Array.Empty<string>(), "limits",
                .. plan.Factors.Select(factor => $"{factor.Name} coded"),
                .. plan.Factors.Select(factor => $"{factor.Name} [{factor.Unit.Symbol}]")],
            [.. plan.Plan.Runs.Select((run, i) => (IReadOnlyList<string>)
            [
                Invariant($"{run.Number}"),
                run.Kind.ToString().ToLowerInvariant(),
                .. run.WholePlot > 0 ? [Invariant($"{run.WholePlot}")] : Array.Empty<string>(),
                answer.MeetsLimits[i] ? "met" : "LEFT",
                .. run.Coded.Select(value => Invariant($"{value:0.####}")),
                .. plan.Factors.Select(factor => Invariant($"{factor.Unit.FromSi(plan.Designs[i][factor.Input]):0.####}")),
            ])]));
    }

    private static string WholePlots(StudyPlan plan)
    {
        var settings = plan.Plan.Runs.Select(run => string.Join('|', plan.HardToChange.Select(factor =>
            run.Coded[plan.Factors.ToList().IndexOf(factor)]))).Distinct().Count();
        return $"{string.Join(", ", plan.HardToChange.Select(factor => factor.Name))} hard to change: "
            + $"{NumberFormat.Count(plan.Plan.WholePlots, "whole plot")} with {NumberFormat.Count(settings, "different setting")}. Set it "
            + "once for each whole plot, also where the next one has the same value: take it apart and set it again.";
    }

    /// <summary>Which effects the plan can and cannot tell apart.</summary>
    public static AnswerSection AliasStructure(StudyPlan plan)
    {
        var lines = new List<string> { $"The fitted surface has {PlanLabels.ModelDescription(plan.Model)}." };
        if (plan.Fraction is not { } fraction)
            return Partial(plan, lines);
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

    /// <summary>Of a plan that is no regular fraction: what each term takes with it of interactions that are not fitted.</summary>
    private static AnswerSection Partial(StudyPlan plan, List<string> lines)
    {
        const string title = "Alias structure of the plan";
        List<string> names = [.. plan.Factors.Select(factor => factor.Name)];
        var aliases = PartialAlias.Of(plan.Plan, plan.Terms);
        if (aliases.Count == 0)
            return new AnswerSection(title, lines);
        lines.Add("Interactions of two factors are not fitted, and what they do goes into other terms, in the shares below: a term may "
            + "look important because of them.");
        return new AnswerSection(title, lines, new AnswerTable(["term", "takes with it"], [.. aliases.Select(alias =>
            (IReadOnlyList<string>)
            [
                alias.Term.NamedWith(names),
                string.Join(", ", alias.Interactions.Select(pair =>
                    Invariant($"{pair.Share:0.##} of {pair.Interaction.NamedWith(names)}"))),
            ])]));
    }

    /// <summary>How well the plan would estimate its terms if its runs were measured, with noise: efficiencies, and for each term its
    /// standard error, its variance inflation and the chance to see it.</summary>
    public static AnswerSection Quality(StudyPlan plan)
    {
        const string title = "If the runs were measured";
        var model = new PlanModel(plan.Terms);
        if (PlanQuality.Of(plan.Plan, model) is not { } quality)
            return new AnswerSection(title, ["These runs cannot estimate all terms separately, so no quality can be given.",
                .. plan.Plan.Runs.All(run => run.Kind == PointKind.SpaceFilling) ? [Filling(plan.Plan)] : Array.Empty<string>()]);
        List<string> lines =
        [
            Invariant($"D efficiency {quality.DEfficiency:0.000}, A efficiency {quality.AEfficiency:0.000}, ")
                + Invariant($"G efficiency {quality.GEfficiency:0.000}; ")
                + Invariant($"mean prediction variance over the cube {quality.AverageVariance:0.000} times the noise variance; ")
                + $"{quality.ErrorDegreesOfFreedom} degrees of freedom for error.",
            .. plan.Plan.WholePlots == 0 ? [] : new[] { PlotError(plan, quality) },
            "Standard errors are multiples of the noise (standard deviation of one run). "
                + "Power is that of a two-sided t test at the 5 % level to detect a change from low "
                + "to high (for a square: from the centre to an end, half of that) as large as the noise, and twice as large.",
        ];
        if (plan.Plan.Runs.All(run => run.Kind == PointKind.SpaceFilling))
            lines.Add(Filling(plan.Plan));
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

    /// <summary>The constant is always one of the terms that whole plots decide.</summary>
    private static string PlotError(StudyPlan plan, PlanQuality quality) =>
        "A setting of what is hard to change is taken to err as much as a run. Terms of those factors alone are judged by "
            + $"{quality.TermDegreesOfFreedom[0]} degrees of freedom"
            + (quality.TermDegreesOfFreedom[0] == 0 ? ": THEY CANNOT BE JUDGED, only computed; " + (plan.Plan.Runs.Any(run =>
                run.Kind == PointKind.Optimal) ? "give more whole_plots." : "make the plan twice with `repeats: 2`.") : ".");

    /// <summary>How evenly a plan fills the cube, beside what chance gives.</summary>
    private static string Filling(Plan plan)
    {
        var own = Discrepancy.Of(plan);
        var random = Discrepancy.OfRandom(plan.Runs.DistinctBy(run => string.Join('|', run.Coded)).Count(), plan.Factors.Count);
        static string Beside(string name, double value, double chance) => Invariant($"{name} {value:0.0000} ({chance:0.0000})");
        return "How unevenly the runs fill the cube, discrepancy (in brackets that of as many random runs, root mean square): "
            + $"{Beside("centred L2", own.Centred, random.Centred)}, {Beside("wrap-around", own.WrapAround, random.WrapAround)}, "
            + $"{Beside("mixture", own.Mixture, random.Mixture)}, {Beside("L2-star", own.Star, random.Star)}; smaller is better.";
    }

    private static string PowerText(PlanQuality quality, int term, double coefficient) =>
        term == 0 || quality.TermDegreesOfFreedom[term] < 1 ? "" : Invariant($"{PlanPower.Of(quality, term, coefficient, 1):0.00}");

    /// <summary>A warning where pairs and squares are missing from the surfaces.</summary>
    internal static IEnumerable<string> OmittedTermsWarning(StudyPlan plan)
    {
        if (plan.Model == SurfaceModel.Linear)
            yield return "The surfaces of this plan have no interaction or quadratic terms, so part of a share may be due to them; a "
                + "plan with more runs can separate them.";
    }

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
        var matter = $"{(terms.Count == 0 ? "no term has a share of 1 % or more" : string.Join(", ", terms))}.{PlanLabels.Unassigned(fit)}";
        return surface.Check is not { } check
            ? $"The runs: {matter}"
            : $"The runs: {matter} The largest error of the polynomial is "
                + $"{PlanLabels.FourDigits(check.Everywhere.Largest, surface.Response.Unit)}, range of the response "
                + $"{PlanLabels.FourDigits(check.Everywhere.Range, surface.Response.Unit)}; R² {SurfaceSection.RSquared(check.Everywhere)}"
                + (check.WithinLimits is { } within ? $", over the designs that meet the limits {SurfaceSection.RSquared(within)}." : ".");
    }
}
