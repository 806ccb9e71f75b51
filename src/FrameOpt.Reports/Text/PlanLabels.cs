using FrameOpt.Analysis;
using FrameOpt.Model.Mission;
using FrameOpt.Plans;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>Factors, responses, terms and models of a plan in words and numbers, for screen, sheets and page.</summary>
internal static class PlanLabels
{
    /// <summary>A smaller part of no single term is not told, %.</summary>
    public const double LeastUnassigned = 0.1;

    private const int MaxNameLength = 40;

    /// <summary>A factor without underscores, so that a header can break.</summary>
    public static string Name(StudyFactor factor) => factor.Name.Replace('_', ' ');

    /// <summary>A factor with its unit.</summary>
    public static string WithUnit(StudyFactor factor) => $"{Name(factor)} [{factor.Unit.Symbol}]";

    /// <summary>A response with its unit, short enough for an axis.</summary>
    public static string WithUnit(Response response) => WithUnit(Short(response.Name), response);

    /// <summary>An objective with its unit, short enough for an axis.</summary>
    public static string WithUnit(StudyObjective objective) =>
        WithUnit(Short(StudyText.Title(objective.Response, objective.Magnitude)), objective.Response);

    /// <summary>A label with the response's unit.</summary>
    public static string WithUnit(string label, Response response) => response.Unit.Length == 0 ? label : $"{label} [{response.Unit}]";

    /// <summary>A coded value converted to the factor's own unit.</summary>
    public static double Natural(StudyPlan plan, int factor, double coded) =>
        Math.Round(plan.Factors[factor].Unit.FromSi(plan.Scales[factor].Natural(coded)), 4);

    private static string Short(string name) => TextTruncation.Truncate(name.Replace('_', ' '), MaxNameLength);

    /// <summary>The terms of a fit: first the constant, then the others by their share of the variation over the runs.</summary>
    public static IReadOnlyList<(ModelTerm Term, double Coefficient, double? Share)> Terms(RegressionFit fit)
    {
        var shares = fit.Anova.Lines.ToDictionary(line => line.Source, line => line.ContributionPercent);
        return [.. fit.Coefficients
            .Select(coefficient => (coefficient.Term, coefficient.Value,
                Share: shares.TryGetValue(coefficient.Term.Name, out var share) ? share : (double?)null))
            .OrderByDescending(row => row.Share ?? double.PositiveInfinity)];
    }

    /// <summary>The part of the variation that the terms explain together only, from 0.1 % on; empty below.</summary>
    public static string Unassigned(RegressionFit fit) => fit.Anova.UnassignedPercent switch
    {
        > LeastUnassigned => FormattableString.Invariant($" {fit.Anova.UnassignedPercent:0.0} % is of no single term: some go together ")
            + "over these runs.",
        < -LeastUnassigned => FormattableString.Invariant($" The shares add up to {-fit.Anova.UnassignedPercent:0.0} % more: some terms ")
            + "work against each other over these runs.",
        _ => "",
    };

    /// <summary>The terms of a model in words.</summary>
    public static string ModelDescription(SurfaceModel model) => model switch
    {
        SurfaceModel.Linear => "a constant and one term for each factor",
        SurfaceModel.Interactions => "a constant, one term for each factor and one for each pair",
        SurfaceModel.LinearAndSquares => "a constant, one term for each factor and its square; interactions are not fitted",
        _ => "a constant, one term for each factor, each pair and each square",
    };

    /// <summary>A value to four digits with its unit.</summary>
    public static string FourDigits(double value, string unit)
    {
        var text = NumberFormat.SignificantDigits(value, 4);
        return unit.Length > 0 ? $"{text} {unit}" : text;
    }
}
