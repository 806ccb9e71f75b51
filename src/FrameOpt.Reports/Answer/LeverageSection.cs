using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>The same design at other yaw leverages, with the roll and yaw parts that the leverage combines.</summary>
internal static class LeverageSection
{
    public static IEnumerable<AnswerSection> Of(StudyResult result)
    {
        if (result.Scenarios.Count == 0)
            yield break;
        var offset = result.Study.Factor(GeometryInput.LateralOffset);
        string[] headers = ["phase", "roll part", "yaw part", .. result.Scenarios.Select(scenario => $"residual, {Heading(scenario)}")];
        var phases = result.Chosen!.Phases.Select((phase, i) => PhaseRow(result, phase, i));
        string[] best = ["offset of the best design at this leverage", "", "",
            .. result.Scenarios.Select(scenario => BestOffset(scenario, offset))];
        yield return new AnswerSection(
            "Influence of the yaw leverage, the least certain parameter",
            [.. OutsideRange(result), .. result.Scenarios.SelectMany(Warnings), .. UnknownBestDesigns(result)],
            new AnswerTable(headers, [.. phases, best]));
        yield return new AnswerSection(
            "The best design at each yaw leverage",
            [.. result.Scenarios.Where(scenario => scenario.Best is not null)
                .Select(scenario => $"At {Heading(scenario)}: {GeometryText.Of(result.Study, scenario.Best!.Geometry)}.")]);
    }

    private static string[] PhaseRow(StudyResult result, PhaseResult phase, int index) =>
    [
        phase.Phase.Name,
        SideText.Moment(phase[PhaseQuantity.WingRollMoment]),
        SideText.Moment(phase[PhaseQuantity.WingYawMoment]),
        .. result.Scenarios.Select(scenario => scenario.Chosen.Failure is null
            ? SideText.Moment(scenario.Chosen.Phases[index][PhaseQuantity.Residual])
            : "cannot fly"),
    ];

    private static string Heading(LeverageScenario scenario)
    {
        var used = scenario.Chosen.Phases.Select(phase => phase[PhaseQuantity.YawLeverage]).ToList();
        var isVaried = used.Count > 0 && used.Max() - used.Min() > 0.005;
        return isVaried ? $"leverage {Range(used)}, {RunText.Leverage(scenario)}" : $"leverage {RunText.Leverage(scenario)}";
    }

    private static string Range(IReadOnlyList<double> used) => FormattableString.Invariant($"{used.Min():0.0#} to {used.Max():0.0#}");

    private static IEnumerable<string> OutsideRange(StudyResult result)
    {
        var used = result.Chosen!.Phases.Select(phase => phase[PhaseQuantity.YawLeverage]).ToList();
        if (used.Min() < YawLeverage.AssumedLowest || used.Max() > YawLeverage.AssumedHighest)
        {
            yield return $"The study's own leverage, {Range(used)} over the phases, lies outside "
                + $"{PlainNumber.Text(YawLeverage.AssumedLowest)} to "
                + $"{PlainNumber.Text(YawLeverage.AssumedHighest)} in "
                + $"{string.Join(", ", result.Chosen.Phases.Where(IsOutside).Select(phase => phase.Phase.Name))}: "
                + "the other columns do not bracket it there.";
        }
    }

    private static bool IsOutside(PhaseResult phase) =>
        phase[PhaseQuantity.YawLeverage] < YawLeverage.AssumedLowest || phase[PhaseQuantity.YawLeverage] > YawLeverage.AssumedHighest;

    private static string BestOffset(LeverageScenario scenario, StudyFactor offset) => scenario.Best is not { } best ? "not known"
        : best.Geometry.OffsetMetres == 0 ? "none"
        : $"{offset.Unit.Text(Math.Abs(best.Geometry.OffsetMetres))} {SideText.Side(best.Geometry.OffsetMetres)}";

    private static IEnumerable<string> UnknownBestDesigns(StudyResult result)
    {
        var labels = result.Scenarios.Where(scenario => scenario.Best is null).Select(RunText.Leverage).ToList();
        if (labels.Count == 0)
            yield break;
        var why = result.Study is { Search: SearchSetting.Exhaustive, GridSize: > RunLimits.MaxDesignsForScenarioSearch and var designs }
            ? $"a grid of {NumberFormat.Count(designs)} designs is not searched again for another leverage"
            : "no design meets every limit at that leverage, or the search was stopped before it finished";
        yield return $"The best design at leverage {string.Join(" and ", labels)} is not known: {why}.";
    }

    private static IEnumerable<string> Warnings(LeverageScenario scenario)
    {
        var excessiveEffort = scenario.Chosen.Phases.Where(phase => phase[PhaseQuantity.Effort] > 1).ToList();
        if (excessiveEffort.Count > 0)
        {
            var phases = string.Join(", ", excessiveEffort.Select(phase =>
                $"{phase.Phase.Name} (effort {NumberFormat.Text(phase[PhaseQuantity.Effort], "")})"));
            yield return $"At leverage {RunText.Leverage(scenario)} the pilot cannot hold this design in {phases}.";
        }
    }
}
