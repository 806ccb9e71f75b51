using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>Names of factors, responses and objectives in headers and on axes.</summary>
internal static class PlanLabels
{
    private const int MaxNameLength = 40;

    /// <summary>A factor without underscores, so that a header can break.</summary>
    public static string Name(StudyFactor factor) => factor.Name.Replace('_', ' ');

    /// <summary>A factor with its unit.</summary>
    public static string WithUnit(StudyFactor factor) => $"{Name(factor)} [{factor.Unit.Symbol}]";

    /// <summary>A response with its unit, short enough for an axis.</summary>
    public static string WithUnit(Response response) => WithUnit(Short(response.Name), response);

    /// <summary>An objective with its unit, short enough for an axis.</summary>
    public static string WithUnit(StudyObjective objective) =>
        WithUnit(Short(StudyText.Name(objective.Response, objective.Magnitude)), objective.Response);

    /// <summary>A label with the response's unit.</summary>
    public static string WithUnit(string label, Response response) => response.Unit.Length == 0 ? label : $"{label} [{response.Unit}]";

    /// <summary>A coded value as the factor's own, in its unit.</summary>
    public static double Natural(StudyPlan plan, int factor, double coded) =>
        Math.Round(plan.Factors[factor].Unit.FromSi(plan.Scales[factor].Natural(coded)), 4);

    private static string Short(string name) => TextTruncation.Truncate(name.Replace('_', ' '), MaxNameLength);
}
