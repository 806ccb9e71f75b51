using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Tables;

/// <summary>The columns of the table of the front.</summary>
public static class FrontColumns
{
    /// <summary>Place, geometry in the user's units, drilling dimensions, objectives, then every mission response that is no
    /// objective.</summary>
    public static IReadOnlyList<FrontColumn> Of(Study study) =>
        [.. Places(study), .. Geometry(study), .. Objectives(study), .. Responses(study)];

    /// <summary>What run.json holds: those, and residual, lean and effort of every phase, so that designs can be compared from their
    /// folders alone.</summary>
    public static IReadOnlyList<FrontColumn> WithPhases(Study study)
    {
        var columns = Of(study);
        return [.. columns, .. Phases(study).Where(phase => columns.All(column => column.Name != phase.Name))];
    }

    private static IEnumerable<FrontColumn> Phases(Study study) => study.Mission.SelectMany((phase, p) =>
        ((PhaseQuantity[])[PhaseQuantity.Residual, PhaseQuantity.Lean, PhaseQuantity.Effort]).Select(quantity => new FrontColumn(
            $"{quantity.Name}[{phase.Name}]",
            quantity.Unit,
            NumberFormat.FormatCode(quantity.Unit),
            (_, evaluation) => evaluation.Phases[p][quantity])));

    private static IEnumerable<FrontColumn> Places(Study study) =>
    [
        new("rank", "", "0", (design, _) => design.Rank),
        new("number", "", "0", (design, _) => design.Number),
        new("knee", "", "\"knee\";\"\";\"\"", (design, _) => design.IsKnee ? 1 : 0),
        new(study.Ranking.Method == RankingMethod.Topsis ? "closeness" : "distance_to_ideal", "", "0.0000", (design, _) => design.Score),
    ];

    private static IEnumerable<FrontColumn> Geometry(Study study) => GeometryFields.Of(study)
        .Select(field => new FrontColumn(field.Name, field.Unit, GeometryField.FormatCode, (design, _) => field.Value(design.Geometry)));

    private static IEnumerable<FrontColumn> Objectives(Study study) => study.Objectives.Select((objective, i) => new FrontColumn(
        StudyText.Name(objective.Response, objective.Magnitude),
        objective.Response.Unit,
        NumberFormat.FormatCode(objective.Response.Unit),
        (design, _) => design.Objectives[i]));

    private static IEnumerable<FrontColumn> Responses(Study study) => ResponseCatalogue.OfMissions
        .Where(quantity => !study.Objectives.Any(objective => objective.Response.Entry == quantity))
        .Select(quantity => new FrontColumn(
            quantity.Name,
            quantity.Unit,
            NumberFormat.FormatCode(quantity.Unit),
            (_, evaluation) => evaluation[quantity]));
}

/// <summary>One column of the table of the front, the same in the workbook, in designs.csv and in run.json, which has more.</summary>
/// <param name="Name">As files for other programs write it.</param>
/// <param name="Unit">Of its values; empty for a plain number.</param>
/// <param name="FormatCode">How a spreadsheet shows it.</param>
/// <param name="Value">Of one design of the front and its evaluation; NaN where there is none.</param>
public sealed record FrontColumn(
    string Name, string Unit, string FormatCode, Func<FrontDesign, DesignEvaluation, double> Value)
{
    /// <summary>Name and unit in one text: "lateral_offset [mm]".</summary>
    public string Header => Unit.Length == 0 ? Name : $"{Name} [{Unit}]";
}
