using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>Names on the sheets of a plan.</summary>
internal static class PlanLabels
{
    private const int MaxNameLength = 40;

    /// <summary>A factor without underscores, so that a header can break.</summary>
    public static string Name(StudyFactor factor) => factor.Name.Replace('_', ' ');

    /// <summary>A factor with its unit.</summary>
    public static string WithUnit(StudyFactor factor) => $"{Name(factor)} [{factor.Unit.Symbol}]";

    /// <summary>A response with its unit, short enough for an axis.</summary>
    public static string WithUnit(Response response)
    {
        var name = TextTruncation.Truncate(response.Name.Replace('_', ' '), MaxNameLength);
        return response.Unit.Length == 0 ? name : $"{name} [{response.Unit}]";
    }

    /// <summary>A label with the response's unit.</summary>
    public static string WithUnit(string label, Response response) => response.Unit.Length == 0 ? label : $"{label} [{response.Unit}]";

    /// <summary>A coded value as the factor's own, in its unit.</summary>
    public static double Natural(StudyPlan plan, int factor, double coded) =>
        Math.Round(plan.Factors[factor].Unit.FromSi(plan.Scales[factor].Natural(coded)), 4);
}
