using FrameOpt.Reports.Text;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>How far each dimension may be off, alone, before a limit is violated.</summary>
internal static class BuildErrorsSection
{
    /// <summary>A row for each limit that the design meets; nothing without limits.</summary>
    public static IEnumerable<AnswerSection> Of(StudyResult result)
    {
        if (result.Chosen is not { } chosen || result.Study.Limits.Count == 0)
            yield break;
        var isSampled = LimitsSection.IsSampled(result);
        string Cell(StudyLimit limit, StudyFactor factor) =>
            string.Join(" or ", result.Margins.Where(margin => margin.Limit == limit && margin.Factor.Input == factor.Input).Select(Change))
                is { Length: > 0 } text ? text
                : $"more than {factor.Unit.Text(BuildMargins.MostTolerances * BuildTolerance.Si(factor.Input))}";
        yield return new AnswerSection(
            "How far a dimension may be off",
            [
                $"The change of one dimension alone that violates a limit. A drill and a weld hold about "
                    + $"{NumberFormat.Text(1000 * BuildTolerance.LengthMetres, "mm")}, a mount about "
                    + $"{NumberFormat.Text(180 / Math.PI * BuildTolerance.AngleRadians, "deg")} (common practice, no source).",
            ],
            new AnswerTable(
                ["limit", .. isSampled ? ["met in, of the cases"] : Array.Empty<string>(),
                    .. result.Study.BuildDimensions.Select(factor => factor.Input.ShortName)],
                [.. result.Study.Limits.Index().Where(item => item.Item.IsMetBy(chosen)).Select(item => (IReadOnlyList<string>)
                [
                    StudyText.LimitTitle(item.Item), .. isSampled ? [UncertaintySection.MetIn(result, item.Index)] : Array.Empty<string>(),
                    .. result.Study.BuildDimensions.Select(factor => Cell(item.Item, factor)),
                ])]));
    }

    /// <summary>"3 mm to the left", "0.4 deg more".</summary>
    public static string Change(LimitMargin margin)
    {
        var unit = margin.Factor.Unit;
        var amount = unit.Text(Math.Round(Math.Abs(margin.ChangeSi) / unit.SiPerUnit, 1) * unit.SiPerUnit);
        if (margin.Factor.Input.ChangeWords is { } words)
            return words.Text(margin.ChangeSi, amount);
        var way = margin.Factor.Input.IsSided ? $"to the {SideText.Side(margin.ChangeSi)}" : margin.ChangeSi > 0 ? "more" : "less";
        return $"{amount} {way}";
    }
}
