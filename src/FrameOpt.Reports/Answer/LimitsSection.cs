using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>Which limits bind, and how many designs each excludes.</summary>
internal static class LimitsSection
{
    /// <summary>A limit binds when the value is this close to it, as a share of the bound.</summary>
    private const double AtLimitTolerance = 0.01;

    /// <summary>The smallest magnitude of a bound, in its own unit, that the share is taken of: a bound of 0 has no share.</summary>
    private const double MinBoundMagnitude = 0.01;

    public static AnswerSection Of(StudyResult result)
    {
        var design = result.Chosen ?? result.NearestMiss?.Evaluation;
        IReadOnlyList<string> ends = result.Chosen is { } chosen ? [.. RangeEndWarnings(result.Study, chosen.Geometry)] : [];
        if (result.Study.Limits.Count == 0)
            return new AnswerSection("Limits", ["The study has no limits.", .. ends]);
        string[] headers = ["limit", result.Chosen is null ? "nearest miss" : "this design", "state", "designs excluded"];
        var rows = result.Study.Limits.Select((limit, i) => Row(limit, design, result.Counts.ViolatedBy[i]));
        return new AnswerSection("Limits", ends, new AnswerTable(headers, [.. rows]));
    }

    private static IEnumerable<string> RangeEndWarnings(Study study, FrameGeometry geometry)
    {
        foreach (var factor in study.Factors.Where(factor => factor.IsSwept))
        {
            var level = geometry[factor.Input];
            // A continuous factor comes near its end without touching it.
            var near = factor.IsContinuous ? factor.RangeSi / 100 : 0;
            if (level - factor.LevelsSi[0] <= near || factor.LevelsSi[^1] - level <= near)
            {
                var end = level - factor.LevelsSi[0] <= near ? "lower" : "upper";
                yield return $"{factor.Name} is at the {end} end of its range ({factor.Unit.Text(level)}): "
                    + "a better design may lie beyond it.";
            }
        }
    }

    private static string[] Row(StudyLimit limit, DesignEvaluation? design, long excluded)
    {
        var value = design is { Failure: null } ? limit.ValueOf(design) : double.NaN;
        return [StudyText.Limit(limit), NumberFormat.Text(value, limit.Response.Entry), State(limit, value), NumberFormat.Count(excluded)];
    }

    private static string State(StudyLimit limit, double value)
    {
        if (double.IsNaN(value))
            return "";
        if (value < limit.AtLeast || value > limit.AtMost)
            return "VIOLATED";
        return IsClose(limit.AtLeast, value) || IsClose(limit.AtMost, value) ? "at the limit" : "met with margin";
    }

    private static bool IsClose(double? bound, double value) =>
        bound is { } at && Math.Abs(value - at) <= AtLimitTolerance * Math.Max(Math.Abs(at), MinBoundMagnitude);
}
