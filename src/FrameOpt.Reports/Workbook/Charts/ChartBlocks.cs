using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Reports.Workbook.Cells;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Workbook.Charts;

/// <summary>The figures that the charts draw.</summary>
internal static class ChartBlocks
{
    private const int MaxObjectives = 3;
    private const int MaxNameLength = 40;

    /// <summary>Baseline first (blank when there is none), then the front by rank: rank, and up to three objectives.</summary>
    public static ChartBlock Front(RunReport report)
    {
        var study = report.Result.Study;
        var objectives = study.Objectives.Take(MaxObjectives).ToList();
        List<object> baseline = ["baseline", .. objectives.Select(objective => (object)BaselineValue(report.Result, objective))];
        return new ChartBlock(
            [
                new DataColumn("front: rank", DataColumn.TextFormat, 10),
                .. objectives.Select(objective => DataColumn.OfNumbers(StudyText.AxisLabel(objective),
                    NumberFormat.FormatCode(objective.Response.Unit))),
            ],
            [
                baseline,
                .. report.Result.Front.Take(DisplayedDesigns.MaxDesigns).Select(design => (object[])[
                    FormattableString.Invariant($"{design.Rank}"), .. design.Objectives.Take(MaxObjectives).Cast<object>()]),
            ]);
    }

    /// <summary>The residual of each phase for designs to compare.</summary>
    public static ChartBlock Phases(Study study, IReadOnlyList<ComparedDesign> designs) => new(
        [
            new DataColumn("phase", DataColumn.TextFormat, 18),
            .. designs.Select(design => DataColumn.OfNumbers($"residual, {design.Name} [N·m], right +", "0.00")),
        ],
        [.. study.Mission.Select((phase, p) => (object[])[
            TextTruncation.Truncate(phase.Name, MaxNameLength),
                .. designs.Select(design => (object)design.Evaluation.Phases[p][PhaseQuantity.Residual])])]);

    /// <summary>Residual and torque of the best compromise over the propeller's speed.</summary>
    public static ChartBlock Curve(StudyResult result) => new(
        [DataColumn.OfNumbers("propeller speed [rpm]", "0"), DataColumn.OfNumbers("residual [N·m], right +", "0.00"),
            DataColumn.OfNumbers("propeller torque [N·m]", "0.00")],
        [.. new BalancedBands(result.Mission, result.Study.Band.PhaseIndex).Curve(result.Chosen!.Geometry)
            .Select(point => (object[])[point.Rpm, point.ResidualNewtonMetres, point.TorqueNewtonMetres])]);

    /// <summary>The outline of each balanced band, a blank row between two.</summary>
    public static ChartBlock Band(StudyResult result)
    {
        var within = result.Study.Band.WithinNewtonMetres;
        return new ChartBlock(
            [DataColumn.OfNumbers("balanced band [rpm]", "0"), DataColumn.OfNumbers("balanced band [N·m]", "0.00")],
            [.. result.Bands.SelectMany(band => (object[][])[
                [band.FromRpm, -within], [band.FromRpm, within], [band.ToRpm, within], [band.ToRpm, -within], [band.FromRpm, -within],
                    [double.NaN, double.NaN]])]);
    }

    /// <summary>Where each phase under power lies: its own propeller speed, airspeed and weight.</summary>
    public static ChartBlock Marks(StudyResult result) => new(
        [
            new DataColumn("phase under power", DataColumn.TextFormat, 18),
            DataColumn.OfNumbers("propeller speed [rpm]", "0"),
            DataColumn.OfNumbers("residual [N·m], right +", "0.00"),
        ],
        [.. result.Chosen!.Phases.Where(phase => phase.Phase.Power is not PhasePower.EngineOff)
            .Select(phase => (object[])[TextTruncation.Truncate(phase.Phase.Name, MaxNameLength), phase[PhaseQuantity.Rpm],
                phase[PhaseQuantity.Residual]])]);

    private static double BaselineValue(StudyResult result, StudyObjective objective) =>
        result.Baseline is not { Failure: null } baseline ? double.NaN
        : objective.Magnitude ? Math.Abs(baseline[objective.Response])
        : baseline[objective.Response];
}
