using FrameOpt.Model;
using FrameOpt.Studies;

namespace FrameOpt.Reports;

/// <summary>Which limits bind, and what each excluded.</summary>
internal static class LimitsSection
{
    private const double BindsWithin = 0.01;

    public static AnswerSection Of(StudyResult result)
    {
        var design = result.Chosen ?? result.NearestMiss?.Evaluation;
        if (result.Study.Limits.Count == 0)
            return new AnswerSection("Limits", ["The study sets none."]);
        string[] headers = ["limit", result.Chosen is null ? "nearest miss" : "this design", "", "designs it excludes"];
        var rows = result.Study.Limits.Select((limit, i) => Row(limit, design, result.Counts.OutsideBy[i].Count));
        return new AnswerSection("Limits", [], new AnswerTable(headers, [.. rows]));
    }

    private static string[] Row(StudyLimit limit, DesignEvaluation? design, long excluded)
    {
        var value = design is { Failure: null } ? design[limit.Response] : double.NaN;
        var shown = limit.Magnitude ? Math.Abs(value) : value;
        return [StudyWords.Limit(limit), Figures.Text(shown, limit.Response.Entry), State(limit, shown), Figures.Count(excluded)];
    }

    private static string State(StudyLimit limit, double value)
    {
        if (double.IsNaN(value))
            return "";
        if (value < limit.AtLeast || value > limit.AtMost)
            return "BROKEN";
        return IsClose(limit.AtLeast, value) || IsClose(limit.AtMost, value) ? "binds" : "met with room";
    }

    private static bool IsClose(double? bound, double value) =>
        bound is { } at && Math.Abs(value - at) <= BindsWithin * Math.Max(Math.Abs(at), BindsWithin);
}
