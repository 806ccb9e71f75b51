using FrameOpt.Model;
using FrameOpt.Model.Balance;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>The same design with other yaw leverages and riser couplings, and the three parts of its residual torque.</summary>
internal static class WingSection
{
    public static IEnumerable<AnswerSection> Of(StudyResult result)
    {
        if (result.Scenarios.Count == 0)
            yield break;
        string[] headers = ["phase", "roll part", "yaw part", "wing weight",
            .. result.Scenarios.Select(scenario => StudyText.Name(scenario.Case))];
        yield return new AnswerSection(
            "Influence of the wing: yaw leverage and riser coupling, the least certain numbers of the wing",
            [
                "Residual torque of this design: roll part, yaw part and wing weight as in the study, then their sum, with the yaw "
                    + "leverage low and high and the riser coupling soft and stiff in its place.",
                .. result.Scenarios.SelectMany(scenario => Warnings(scenario)),
                .. NegativeLeverage(result),
                .. result.Study.IsOneFrame ? [] : UnknownBestDesigns(result),
            ],
            new AnswerTable(headers,
            [
                .. result.Chosen!.Phases.Select((phase, p) => PhaseRow(result, phase, p)),
                Row(result, "yaw leverage", scenario => Range(scenario.Chosen)),
                Row(result, "riser coupling", scenario => Coupling(result, scenario)),
                .. result.Study.IsOneFrame ? Array.Empty<string[]>()
                    : [Row(result, "offset of the best design there", scenario => BestOffset(result, scenario))],
            ]));
        if (result.Study.IsOneFrame)
            yield break;
        yield return new AnswerSection(
            "The best design if the wing is different",
            [.. result.Scenarios.Where(scenario => scenario.Best is not null)
                .Select(scenario => $"{Capitalised(scenario)}: {GeometryText.Of(result.Study, scenario.Best!.Geometry)}.")]);
    }

    private static string[] PhaseRow(StudyResult result, PhaseResult phase, int index) =>
    [
        phase.Phase.Name,
        SideText.Moment(phase[PhaseQuantity.WingRollMoment]),
        SideText.Moment(phase[PhaseQuantity.YawPart]),
        phase.Phase.IsSettled ? SideText.Moment(phase[PhaseQuantity.WingWeightPart]) : "not yet",
        .. result.Scenarios.Select(scenario => scenario.Chosen.Failure is null
            ? SideText.Moment(scenario.Chosen.Phases[index][PhaseQuantity.Residual])
            : "cannot fly"),
    ];

    private static string[] Row(StudyResult result, string name, Func<WingScenario, string> cell) =>
        [name, "", "", "", .. result.Scenarios.Select(cell)];

    private static string Range(DesignEvaluation design)
    {
        if (design.Failure is not null)
            return "";
        var used = design.Phases.Select(phase => phase[PhaseQuantity.YawLeverage]).ToList();
        var (low, high) = (FormattableString.Invariant($"{used.Min():0.00}"), FormattableString.Invariant($"{used.Max():0.00}"));
        return low == high ? low : $"{low} to {high}";
    }

    private static IEnumerable<string> NegativeLeverage(StudyResult result) =>
        result.Scenarios.Any(scenario => scenario.Chosen.Phases.Any(phase => phase[PhaseQuantity.YawLeverage] < 0))
            ? ["A yaw leverage below 0 means that the wing, twisted by its risers, rolls against the yaw moment more than the sideslip "
                + "rolls with it."]
            : [];

    private static string Coupling(StudyResult result, WingScenario scenario) => NumberFormat.Text(
        1000 * RiserStiffness.RollMetres(scenario.Case.Of(result.Study.Wing), scenario.Chosen.Geometry.SpacingMetres), "mm");

    private static string BestOffset(StudyResult result, WingScenario scenario) => scenario.Best is not { } best ? "not known"
        : best.Geometry.OffsetMetres == 0 ? "none"
        : $"{result.Study.Factor(GeometryInput.LateralOffset).Unit.Text(Math.Abs(best.Geometry.OffsetMetres))} "
            + SideText.Side(best.Geometry.OffsetMetres);

    private static IEnumerable<string> UnknownBestDesigns(StudyResult result)
    {
        var unknown = result.Scenarios.Where(scenario => scenario.Best is null).Select(scenario => StudyText.Name(scenario.Case)).ToList();
        if (unknown.Count == 0)
            yield break;
        var why = result.Study is { Search: SearchSetting.Exhaustive, GridSize: > RunLimits.MaxDesignsForScenarioSearch and var designs }
            ? $"a grid of {NumberFormat.Count(designs, "design")} is not searched again for another wing"
            : "no design meets every limit there, or the search was stopped before it finished";
        yield return $"The best design with {string.Join(" and ", unknown)} is not known: {why}.";
    }

    private static IEnumerable<string> Warnings(WingScenario scenario)
    {
        if (scenario.Chosen.Failure is { } failure)
            yield return $"{Capitalised(scenario)}: this design cannot fly. {FailureText.Describe(failure)}.";
        var notHeld = scenario.Chosen.Phases.Where(phase => phase.CannotBeHeld).Select(SideText.EffortOf).ToList();
        if (notHeld.Count > 0)
            yield return $"{Capitalised(scenario)}: the pilot cannot hold this design in {string.Join(" and ", notHeld)}.";
    }

    private static string Capitalised(WingScenario scenario) => StudyText.Capitalised(StudyText.Name(scenario.Case));
}
