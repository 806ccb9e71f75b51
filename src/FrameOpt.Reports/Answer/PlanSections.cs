using FrameOpt.Analysis;
using FrameOpt.Plans;
using FrameOpt.Plans.Classical;
using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Answer;

/// <summary>A study's plan and what it taught, for the terminal and the workbook.</summary>
public static class PlanSections
{
    /// <summary>The plan, what it can tell, and for each response which terms matter and how far the surface is from the model.</summary>
    public static IReadOnlyList<AnswerSection> Of(PlanResult answer) =>
        [Runs(answer), AliasStructure(answer.Plan), PlanQualitySection.Of(answer.Plan),
            .. answer.Surfaces.Select(surface => Surface(answer.Plan, surface))];

    /// <summary>One row for each run: coded values and the values to build.</summary>
    public static AnswerSection Runs(PlanResult answer)
    {
        var plan = answer.Plan;
        var lines = new List<string>
        {
            $"{plan.Plan.Kind}: {NumberFormat.Count(plan.Plan.Runs.Count)} runs on {plan.Factors.Count} factors. Coded -1 and +1 stand for "
                + string.Join(
                    "; ", plan.Factors
                    .Select((factor, f) =>
                    $"{factor.Name} {factor.Unit.Text(plan.Scales[f].Low)} and {factor.Unit.Text(plan.Scales[f].High)}")) + ".",
        };
        lines.AddRange(answer.Failures.Select((failure, i) => (failure, i)).Where(run => run.failure is not null)
            .Select(run => $"Run {run.i + 1} cannot fly and is left out of every fit. {FailureText.Describe(run.failure!)}"));
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

    /// <summary>What the plan can and cannot tell apart.</summary>
    public static AnswerSection AliasStructure(StudyPlan plan)
    {
        var lines = new List<string> { $"A surface fitted to it has {ModelDescription(plan.Model)}." };
        if (plan.Fraction is not { } fraction)
            return new AnswerSection("What the plan can tell", lines);
        var letters = plan.Factors.Select((factor, f) => $"{EffectWord.Letters[f]} {factor.Name}");
        lines.Add($"Letters: {string.Join(", ", letters)}.");
        if (fraction.Resolution is { } resolution)
        {
            lines.Add($"Defining relation: I = {string.Join(" = ", fraction.DefiningRelation)}; resolution {resolution}; "
                + $"words of length 3, 4, ...: {string.Join(", ", fraction.WordLengthPattern.Skip(2))}.");
        }

        return new AnswerSection("What the plan can tell", lines, new AnswerTable(
            ["effects it cannot tell apart"], [.. fraction.Aliases().Select(group => (IReadOnlyList<string>)[group.ToString()])]));
    }

    /// <summary>A warning where pairs and squares are missing from the surfaces.</summary>
    internal static IEnumerable<string> OmittedTermsWarning(StudyPlan plan)
    {
        if (plan.Model == SurfaceModel.Linear)
            yield return "Pairs of factors and curves are not in the surfaces of this plan, so part of a share may be theirs; a plan with more runs can tell them apart.";
    }

    /// <summary>Which terms matter to one response, and how far its surface is from the model.</summary>
    public static AnswerSection Surface(StudyPlan plan, FittedSurface surface)
    {
        var title = $"Surface of {surface.Response.Name}";
        if (surface.Fit is not { } fit)
            return new AnswerSection(title, ["Too few runs can fly to fit a surface."]);
        var unit = surface.Response.Unit;
        var names = plan.Factors.Select(factor => factor.Name).ToList();
        var lines = new List<string> { FitQuality(fit, unit) };
        if (fit.Aliased.Count > 0)
            lines.Add($"Left out, because these runs cannot tell them from other terms: {string.Join(", ", fit.Aliased.Select(term => term.NamedWith(names)))}.");
        if (surface.Check is { } check)
        {
            lines.Add($"Against the model itself on {NumberFormat.Count(check.Points)} designs of the plan's cube: largest error {FourDigits(check.LargestError, unit)}, "
                + $"root mean square {FourDigits(check.RootMeanSquareError, unit)}, where the response ranges over {FourDigits(check.Range, unit)}. Largest at "
                + string.Join(
                    ", ", plan.Factors
                    .Select((factor, f) => $"{factor.Name} {FactorValue(factor, plan.Scales[f].Natural(check.WorstCoded[f]))}")) + ".");
        }

        if (surface.Shape is { } shape)
            lines.Add($"Stationary point: {shape.ShapeInWords}{StationaryPointText(plan, shape)}.");
        if (fit.NoTestsReason is { } why)
            lines.Add($"No p-values and no F tests: {why}.");
        return new AnswerSection(title, lines, new AnswerTable(
            ["term", unit.Length > 0 ? $"coefficient, coded [{unit}]" : "coefficient, coded", "share of variation [%]"],
            [.. Terms(fit).Select(row => (IReadOnlyList<string>)
            [
                row.Term.NamedWith(names),
                FourDigits(row.Coefficient, ""),
                row.Share is { } share ? Invariant($"{share:0.0}") : "",
            ])]));
    }

    /// <summary>The terms of a fit: the constant, then by share of the variation over the runs.</summary>
    public static IReadOnlyList<(ModelTerm Term, double Coefficient, double? Share)> Terms(RegressionFit fit)
    {
        var shares = fit.Anova.Lines.ToDictionary(line => line.Source, line => line.ContributionPercent);
        return [.. fit.Coefficients
            .Select(coefficient => (coefficient.Term, coefficient.Value,
                Share: shares.TryGetValue(coefficient.Term.Name, out var share) ? share : (double?)null))
            .OrderByDescending(row => row.Share ?? double.PositiveInfinity)];
    }

    private static string FitQuality(RegressionFit fit, string unit)
    {
        var crossValidation = CrossValidation.LeaveOneOut(fit);
        var explained = Invariant($"The terms explain {100 * fit.Anova.RSquared:0.00} % of the variation over the runs.");
        return crossValidation is null
            ? explained
            : $"{explained} Predicting each run from the others: typical error {FourDigits(crossValidation.RootMeanSquare, unit)}, worst {FourDigits(crossValidation.Worst, unit)}.";
    }

    private static string StationaryPointText(StudyPlan plan, ResponseSurface shape)
    {
        if (shape.StationaryPoint is not { } point)
            return "";
        var place = string.Join(", ", plan.Factors.Select((factor, f) =>
            $"{factor.Name} {FactorValue(factor, plan.Scales[f].Natural(point[f]))}"));
        return $"; it lies at {place}{(point.Any(value => Math.Abs(value) > 1) ? ", outside the plan's cube" : "")}";
    }

    /// <summary>Where something lies, to a tenth of the unit.</summary>
    private static string FactorValue(StudyFactor factor, double si) => Invariant($"{factor.Unit.FromSi(si):0.#} {factor.Unit.Symbol}");

    /// <summary>The terms of a model in words.</summary>
    internal static string ModelDescription(SurfaceModel model) => model switch
    {
        SurfaceModel.Linear => "a constant and one term for each factor",
        SurfaceModel.Interactions => "a constant, one term for each factor and one for each pair",
        SurfaceModel.LinearAndSquares => "a constant, one term for each factor and its square; pairs are not fitted",
        _ => "a constant, one term for each factor, each pair and each square",
    };

    /// <summary>A value to four digits with its unit.</summary>
    internal static string FourDigits(double value, string unit)
    {
        var text = NumberFormat.SignificantDigits(value, 4);
        return unit.Length > 0 ? $"{text} {unit}" : text;
    }
}
