using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Compare;

/// <summary>The figures of a comparison, a column for each design.</summary>
internal static class ComparisonTables
{
    private const string Absent = "not in its mission";

    /// <summary>Residual, lean and effort of every phase of any mission.</summary>
    public static AnswerTable Phases(Comparison comparison) => new(
        Headers(comparison, "phase"),
        [.. PhaseNames(comparison).SelectMany(phase => (IReadOnlyList<string>[])
        [
            Row(phase, comparison, column => Cell(column, phase, found => SideText.Residual(found.ResidualNewtonMetres), Absent)),
            Row($"{phase}: to hold it", comparison, column => Cell(column, phase, found => SideText.Lean(found.LeanMillimetres))),
            Row($"{phase}: effort", comparison, column =>
                Cell(column, phase, found => NumberFormat.Text(found.Effort, "") + (found.Effort > 1 ? " (CANNOT BE HELD)" : ""))),
        ])]);

    /// <summary>Every response of the missions; the last column says which is better, or which is lower where they are not the same
    /// measure.</summary>
    public static AnswerTable Mission(Comparison comparison) => new(
        [.. Headers(comparison, "response of the mission"), "which"],
        [.. ResponseCatalogue.OfMissions.Where(quantity => comparison.Columns.Any(
            column => !double.IsNaN(column.Mission[quantity.Index]))).Select(quantity => (IReadOnlyList<string>)
        [
            .. Row(quantity.Name.Replace('_', ' '), comparison, column =>
                NumberFormat.Text(column.Mission[quantity.Index], quantity)),
            BetterText(comparison, quantity),
        ])]);

    /// <summary>Where the holes go and every factor in words.</summary>
    public static AnswerTable Drilling(Comparison comparison) => new(
        Headers(comparison, "dimension"),
        [
            Row("left hang point", comparison, column =>
                DrillingSection.Place(-DrillingDimensions.LeftMetres(column.Geometry), Spacing(column))),
            Row("right hang point", comparison, column =>
                DrillingSection.Place(DrillingDimensions.RightMetres(column.Geometry), Spacing(column))),
            .. comparison.Columns.SelectMany(column => column.Run.Factors).DistinctBy(factor => factor.Input)
                .OrderBy(factor => factor.Input.Index).Select(factor =>
                Row(factor.Name.Replace('_', ' '), comparison, column =>
                    GeometryText.Of(column.Run.Factors.FirstOrDefault(own => own.Input == factor.Input) ?? factor,
                    column.Geometry[factor.Input]))),
            Row("propeller turns", comparison, column => StudyText.RotationText(column.Run.Machine.Propeller.Rotation)),
        ]);

    /// <summary>The phases of all missions, each once.</summary>
    public static IReadOnlyList<string> PhaseNames(Comparison comparison) =>
        [.. comparison.Columns.SelectMany(column => column.Phases).Select(phase => phase.Name).Distinct()];

    private static IReadOnlyList<string> Headers(Comparison comparison, string first) =>
        [first, .. comparison.Columns.Select(column => column.Name)];

    private static IReadOnlyList<string> Row(string name, Comparison comparison, Func<ComparedColumn, string> cell) =>
        [name, .. comparison.Columns.Select(cell)];

    private static string Cell(ComparedColumn column, string phase, Func<ComparedPhase, string> words, string otherwise = "") =>
        column.Phases.FirstOrDefault(own => own.Name == phase) is { } found ? words(found) : otherwise;

    private static DisplayUnit Spacing(ComparedColumn column) =>
        column.Run.Factors.First(factor => factor.Input == GeometryInput.HangPointSpacing).Unit;

    private static string BetterText(Comparison comparison, MissionQuantity quantity)
    {
        var isHigherBetter = quantity.IsHigherBetter;
        // A margin without bound and a response without basis are both null in run.json: neither is judged.
        if (comparison.Columns.Any(column => double.IsNaN(column.Mission[quantity.Index])))
            return "not to be judged";
        string Shown(ComparedColumn column) => NumberFormat.Text(column.Mission[quantity.Index], quantity);
        var best = isHigherBetter ? comparison.Columns.MaxBy(column => column.Mission[quantity.Index])!
            : comparison.Columns.MinBy(column => column.Mission[quantity.Index])!;
        var equal = comparison.Columns.Where(column => Shown(column) == Shown(best)).ToList();
        if (equal.Count == comparison.Columns.Count)
            return "alike";
        var isFair = quantity != MissionQuantity.DistanceFromBaseline
            && comparison.Differences.All(differences => Comparability.IsComparable(differences, quantity));
        var word = (isFair, comparison.Columns.Count > 2, isHigherBetter) switch
        {
            (true, false, _) => "better",
            (true, true, _) => "best",
            (false, false, var higher) => higher ? "higher" : "lower",
            (false, true, var higher) => higher ? "highest" : "lowest",
        };
        return $"{string.Join(" and ", equal.Select(column => column.Letter))} {word}";
    }
}
