using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Tables;

/// <summary>The designs of the front as tables, the same in the workbook, in designs.csv and in run.json.</summary>
public static class FrontTable
{
    /// <summary>What run.json holds of every phase of a ranked design.</summary>
    public static IReadOnlyList<PhaseQuantity> PhaseQuantities { get; } =
    [
        PhaseQuantity.Residual, PhaseQuantity.WingRollMoment, PhaseQuantity.YawPart, PhaseQuantity.WingWeightPart, PhaseQuantity.Lean,
        PhaseQuantity.Effort,
    ];

    /// <summary>One row for each design: place, geometry in the user's units, drilling dimensions, objectives, then every mission response
    /// that is no objective.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="front">The designs, in order.</param>
    /// <param name="evaluations">Of the designs, in the same order.</param>
    public static Table Of(Study study, IReadOnlyList<FrontDesign> front, IReadOnlyList<DesignEvaluation> evaluations) => new(
        [
            .. Places(study, front),
            .. GeometryColumns.Of(study, row => front[row].Geometry),
            .. Objectives(study, front),
            .. Responses(study, evaluations),
        ],
        front.Count);

    /// <summary>What run.json holds: the same, then residual with its parts, lean and effort of every phase, so that designs can be
    /// compared from their folders alone.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="front">The designs, in order.</param>
    /// <param name="evaluations">Of the designs, in the same order.</param>
    public static Table WithPhases(Study study, IReadOnlyList<FrontDesign> front, IReadOnlyList<DesignEvaluation> evaluations)
    {
        var table = Of(study, front, evaluations);
        var phases = study.Mission.SelectMany((phase, p) =>
            PhaseQuantities.Select(quantity => ResponseColumn(
                $"{quantity.Name}[{phase.Name}]",
                quantity,
                row => evaluations[row].Phases[p][quantity])));
        return table with
        {
            Columns = [.. table.Columns, .. phases.Where(phase => table.Columns.All(column => column.Name != phase.Name))],
        };
    }

    /// <summary>One row for each phase of each design, the engine's speed beside the propeller's.</summary>
    /// <param name="machine">For the speed of the engine.</param>
    /// <param name="front">The designs, in order.</param>
    /// <param name="evaluations">Of the designs, in the same order.</param>
    public static Table Phases(Machine machine, IReadOnlyList<FrontDesign> front, IReadOnlyList<DesignEvaluation> evaluations)
    {
        var rows = front.Zip(evaluations).SelectMany(
            item => item.Second.Phases, (item, phase) => (Design: item.First, Phase: phase)).ToList();
        return new(
            [
                Column.OfNumbers("rank", "0", row => rows[row].Design.Rank),
                Column.OfNumbers("number", "0", row => rows[row].Design.Number),
                Column.OfTexts("phase", row => rows[row].Phase.Phase.Name),
                Column.OfNumbers("weight", "0.0##", row => rows[row].Phase.Phase.Weight),
                Column.OfTexts("steers", row => rows[row].Phase.Steers) with { WidthCharacters = 10 },
                .. ResponseCatalogue.OfPhases.SelectMany((entry, q) => (Column[])
                [
                    ResponseColumn(entry.Name, entry, row => rows[row].Phase.Values[q]),
                    .. entry == PhaseQuantity.Rpm && RpmText.Reduction(machine) is { } reduction
                        ? [ResponseColumn("engine_rpm", entry, row => reduction * rows[row].Phase.Values[q])] : Array.Empty<Column>(),
                ]),
            ],
            rows.Count);
    }

    private static IEnumerable<Column> Places(Study study, IReadOnlyList<FrontDesign> front) =>
    [
        Column.OfNumbers("rank", "0", row => front[row].Rank),
        Column.OfNumbers("number", "0", row => front[row].Number),
        Column.OfNumbers("knee", "\"knee\";\"\";\"\"", row => front[row].IsKnee ? 1 : 0),
        Column.OfNumbers(study.Ranking.Method == RankingMethod.Topsis ? "closeness" : "distance_to_ideal", "0.0000",
            row => front[row].Score),
    ];

    private static IEnumerable<Column> Objectives(Study study, IReadOnlyList<FrontDesign> front) =>
        study.Objectives.Select((objective, i) => ResponseColumn(
            StudyText.Name(objective.Response, objective.Magnitude), objective.Response.Entry, row => front[row].Objectives[i]));

    private static IEnumerable<Column> Responses(Study study, IReadOnlyList<DesignEvaluation> evaluations) =>
        ResponseCatalogue.OfMissions
            .Where(quantity => !study.Objectives.Any(objective => objective.Response.Entry == quantity))
            .Select(quantity => ResponseColumn(quantity.Name, quantity, row => evaluations[row][quantity]));

    private static Column ResponseColumn(string name, ResponseEntry entry, Func<int, double> value) =>
        Column.OfNumbers(name, entry.Unit, NumberFormat.FormatCode(entry.Unit), value);
}
