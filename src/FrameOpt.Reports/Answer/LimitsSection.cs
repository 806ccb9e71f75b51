using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>Which limits the design meets, by how much, and with what wing; and how many designs each excludes.</summary>
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
        var others = result.Scenarios.Where(scenario => scenario.Case != WingCase.AsGiven).ToList();
        string[] headers = ["limit", result.Chosen is null ? "nearest miss" : "this design", "state",
            .. IsSampled(result) ? ["met in, of the cases"] : Array.Empty<string>(),
            .. result.Chosen is null ? Array.Empty<string>() : ["violated by"],
            .. others.Select(scenario => StudyText.Name(scenario.Case)),
            .. result.Study.IsOneFrame ? Array.Empty<string>() : ["designs excluded"]];
        return new AnswerSection("Limits", ends, new AnswerTable(headers, [.. result.Study.Limits.Select((limit, i) =>
            Row(result, i, design, others))]));
    }

    /// <summary>True when the study has noise and a design whose cases can be counted.</summary>
    public static bool IsSampled(StudyResult result) => result is { Chosen: not null, Study.Noise.Sources.Count: > 0 };

    /// <summary>For each limit a sentence: what the design has, with which wing it is met, and whether it can be built.</summary>
    public static IReadOnlyList<string> Verdicts(StudyResult result) => result.Study.Limits.Count == 0
        ? ["The study has no limits."]
        : [.. result.Study.Limits.Select(limit => Verdict(result, limit))];

    /// <summary>The limits that the design meets with the wing as given and violates in another case, in words.</summary>
    public static IEnumerable<string> BrokenInOtherCases(StudyResult result) => result.Study.Limits
        .Where(limit => result.Chosen is { } chosen && limit.IsMetBy(chosen))
        .Select(limit => (limit, Cases: CasesViolating(result, limit)))
        .Where(item => item.Cases.Count > 0)
        .Select(item => $"{StudyText.LimitTitle(item.limit)} ({string.Join(" or ", item.Cases)})");

    private static string Verdict(StudyResult result, StudyLimit limit)
    {
        var design = (result.Chosen ?? result.NearestMiss?.Evaluation)!;
        var value = NumberFormat.Text(limit.ValueOf(design), limit.Response.Entry);
        if (!limit.IsMetBy(design))
            return $"{StudyText.Capitalised(StudyText.LimitTitle(limit))}: {value}, VIOLATED.";
        var broken = CasesViolating(result, limit);
        var wing = limit.Response.IsOverCases ? "met over the cases of the noise, those of the wing among them"
            : broken.Count == 0 ? "met in every case of the wing"
            : $"met with the wing as given, VIOLATED with {string.Join(" or ", broken)}";
        var nearest = Nearest(result, limit);
        return $"{StudyText.Capitalised(StudyText.LimitTitle(limit))}: {value}, {wing}."
            + (nearest?.InTolerances < 1 ? $" NOT BUILDABLE TO TOLERANCE: {Words(nearest)} violates it." : "");
    }

    /// <summary>A sentence for each end of a range at which chosen geometries of a line lie, with their names.</summary>
    public static IEnumerable<string> RangeEndWarnings(ProductLineResult result) => result.Geometries
        .Where(geometry => !geometry.IsFixed)
        .SelectMany(geometry => RangeEndWarnings(result.Study, geometry.Design), (geometry, warning) => (geometry.Name, Warning: warning))
        .GroupBy(item => item.Warning)
        .Select(group => $"{string.Join(", ", group.Select(item => item.Name))}: {group.Key}");

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

    private static string[] Row(
        StudyResult result, int index, DesignEvaluation? design, IReadOnlyList<WingScenario> others)
    {
        var limit = result.Study.Limits[index];
        var value = design is { Failure: null } ? limit.ValueOf(design) : double.NaN;
        var margin = Nearest(result, limit);
        return
        [
            StudyText.LimitTitle(limit),
            NumberFormat.Text(value, limit.Response.Entry),
            margin?.InTolerances < 1 ? "NOT BUILDABLE TO TOLERANCE" : State(limit, value),
            .. IsSampled(result) ? [UncertaintySection.MetIn(result, index)] : Array.Empty<string>(),
            .. result.Chosen is null ? Array.Empty<string>() : [ViolatedBy(limit, margin)],
            .. others.Select(scenario => InCase(limit, scenario.Chosen)),
            .. result.Study.IsOneFrame ? Array.Empty<string>() : [NumberFormat.Count(result.Counts.ViolatedBy[index])],
        ];
    }

    private static List<string> CasesViolating(StudyResult result, StudyLimit limit) =>
        [.. result.Scenarios.Where(scenario => !limit.Response.IsOverCases && !limit.IsMetBy(scenario.Chosen))
            .Select(scenario => StudyText.Name(scenario.Case))];

    private static LimitMargin? Nearest(StudyResult result, StudyLimit limit) =>
        result.Margins.Where(margin => margin.Limit == limit).MinBy(margin => margin.InTolerances);

    private static string Words(LimitMargin margin) => $"{margin.Factor.Input.ShortName} {BuildErrorsSection.Change(margin)}";

    private static string ViolatedBy(StudyLimit limit, LimitMargin? margin) => limit.Response.IsOverCases ? "in the cases"
        : margin is null ? "no error of building" : Words(margin);

    private static string InCase(StudyLimit limit, DesignEvaluation design) => limit.Response.IsOverCases ? "in the cases"
        : design.Failure is not null ? "cannot fly"
        : NumberFormat.Text(limit.ValueOf(design), limit.Response.Unit) + (limit.IsMetBy(design) ? "" : " VIOLATED");

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
