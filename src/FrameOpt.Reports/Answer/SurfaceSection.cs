using FrameOpt.Analysis;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Answer;

/// <summary>A surface fitted to a plan's runs: which terms matter, and how far it is from the model.</summary>
internal static class SurfaceSection
{
    /// <summary>A surface that explains less than half of what is left to choose is no guide.</summary>
    private const double LeastRSquared = 0.5;

    /// <summary>Which terms matter to one response, and how far its surface is from the model.</summary>
    public static AnswerSection Of(StudyPlan plan, FittedSurface surface)
    {
        var title = $"Surface of {surface.Response.Name}";
        if (surface.Fit is not { } fit)
            return new AnswerSection(title, ["Too few runs can fly for a surface to be fitted."]);
        var unit = surface.Response.Unit;
        var names = plan.Factors.Select(factor => factor.Name).ToList();
        var lines = new List<string> { FitQuality(surface, fit, unit) };
        if (fit.Aliased.Count > 0)
            lines.Add("Omitted because they are aliased with other terms in these runs: "
                + $"{string.Join(", ", fit.Aliased.Select(term => term.NamedWith(names)))}.");
        if (surface.Check is { } check)
            lines.AddRange(Errors(plan, check, unit));
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

    private static string FitQuality(FittedSurface surface, RegressionFit fit, string unit) =>
        Invariant($"The terms explain {100 * fit.Anova.RSquared:0.00} % of the variation over the runs.")
            + PlanLabels.Unassigned(fit)
            + (surface.LeaveOneOut is not { } crossValidation ? ""
                : $" Leave-one-out prediction: root mean square error {PlanLabels.FourDigits(crossValidation.RootMeanSquare, unit)}, "
                    + $"maximum {PlanLabels.FourDigits(crossValidation.Worst, unit)}.");

    /// <summary>How far the surface is from the model, over the cube and where it counts.</summary>
    private static IEnumerable<string> Errors(StudyPlan plan, SurfaceCheck check, string unit)
    {
        string Of(SurfaceError error) => $"largest error on that grid {PlanLabels.FourDigits(error.Largest, unit)}, root mean square "
            + $"{PlanLabels.FourDigits(error.RootMeanSquare, unit)}, R² {RSquared(error)}; range of the response "
            + $"{PlanLabels.FourDigits(error.Range, unit)}";
        yield return $"Compared with the model on {NumberFormat.Count(check.Everywhere.Points, "design")} of the plan's cube: "
            + $"{Of(check.Everywhere)}. The error is largest at " + string.Join(", ", plan.Factors.Select((factor, f) =>
                $"{factor.Name} {FactorValue(factor, plan.Scales[f].Natural(check.WorstCoded[f]))}")) + ".";
        if (check.WithinLimits is { } within)
            yield return $"Over the {NumberFormat.Count(within.Points, "design")} of them that meet every limit: {Of(within)}."
                + (within.RSquared < LeastRSquared ? " WHERE IT COUNTS the surface says little: choose by the model itself." : "");
    }

    /// <summary>In words where the model does not change.</summary>
    public static string RSquared(SurfaceError error) =>
        double.IsNaN(error.RSquared) ? "not defined" : Invariant($"{error.RSquared:0.000}");

    private static string StationaryPointText(StudyPlan plan, ResponseSurface shape)
    {
        if (shape.StationaryPoint is not { } point)
            return "";
        return point.Any(value => Math.Abs(value) > 1) ? "; but it would lie outside the plan's cube, where the surface says nothing"
            : "; it lies at " + string.Join(", ", plan.Factors.Select((factor, f) =>
                $"{factor.Name} {FactorValue(factor, plan.Scales[f].Natural(point[f]))}"));
    }

    /// <summary>The value of a factor to a tenth of its unit.</summary>
    private static string FactorValue(StudyFactor factor, double si) => Invariant($"{factor.Unit.FromSi(si):0.#} {factor.Unit.Symbol}");
}
