using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Compare;

/// <summary>A comparison in words, the same for terminal and page.</summary>
public static class ComparisonSections
{
    internal const string WarningsTitle = "Check before comparing";

    internal const string DifferencesTitle = "How the studies differ";

    /// <summary>Every part, in reading order.</summary>
    /// <param name="comparison">What is compared.</param>
    /// <param name="maxDifferences">The most lines of differences.</param>
    public static IReadOnlyList<AnswerSection> Of(Comparison comparison, int maxDifferences = int.MaxValue) =>
    [
        Designs(comparison),
        .. comparison.Warnings.Count > 0 ? [new AnswerSection(WarningsTitle, comparison.Warnings)] : Array.Empty<AnswerSection>(),
        Phases(comparison),
        Mission(comparison),
        Drilling(comparison),
        Differences(comparison, maxDifferences),
        new AnswerSection("Cautions", Cautions.FirstPage),
    ];

    internal static AnswerSection Designs(Comparison comparison) => new("The designs", [.. comparison.Columns.Select(Headline)]);

    internal static AnswerSection Phases(Comparison comparison) =>
        new("Residual torque in each phase", [], ComparisonTables.Phases(comparison));

    internal static AnswerSection Mission(Comparison comparison) => new("Whole mission", [], ComparisonTables.Mission(comparison));

    internal static AnswerSection Drilling(Comparison comparison) =>
        new("Where to drill, seen from behind, from the plane of symmetry", [], ComparisonTables.Drilling(comparison));

    internal static AnswerSection Differences(Comparison comparison, int max)
    {
        List<string> lines = [.. DifferencesByColumn(comparison).SelectMany(
            part => part.Heading.Length > 0 ? part.Lines.Prepend(part.Heading) : part.Lines)];
        return new AnswerSection(
            DifferencesTitle,
            lines.Count <= max ? lines
                : [.. lines.Take(max), $"{NumberFormat.Count(lines.Count - max)} more: --out writes all of them to a page and a table."]);
    }

    /// <summary>What a design is; first, whether the pilot can hold it.</summary>
    internal static string Headline(ComparedColumn column)
    {
        var excessiveEffort = column.Phases.Where(phase => phase.CannotBeHeld)
            .Select(phase => $"{phase.Name} (effort {NumberFormat.Text(phase[PhaseQuantity.Effort], "")})").ToList();
        var warning = excessiveEffort.Count > 0 ? $"THE PILOT CANNOT HOLD IT in {string.Join(" and ", excessiveEffort)}. " : "";
        var arms = DatumText.MovingArms(column.Run.Machine);
        return $"{column.Letter}: {arms}{warning}{column.LimitWarning}{column.Source}: "
            + $"{GeometryText.Of(column.Run.Factors, column.Geometry)}.";
    }

    /// <summary>Every column's differences from the first; with a heading where there are several.</summary>
    internal static IEnumerable<(string Heading, IReadOnlyList<string> Lines)> DifferencesByColumn(Comparison comparison) =>
        comparison.Columns.Select((column, c) => (column, Differences: comparison.Differences[c])).Skip(1).Select(item => (
            comparison.Columns.Count > 2 && item.Differences.Count > 0 ? $"From {comparison.Columns[0].Letter} to {item.column.Letter}:"
                : "",
            (IReadOnlyList<string>)(item.Differences.Count > 0 ? [.. item.Differences.Select(difference => difference.Text)]
                : [SameStudyText(comparison.Columns[0], item.column)])));

    private static string SameStudyText(ComparedColumn first, ComparedColumn column) =>
        column.Run.Folder == first.Run.Folder ? $"{first.Letter} and {column.Letter} are designs of the same run."
        : column.Run.Hash == first.Run.Hash ? $"{first.Letter} and {column.Letter} are from the same study."
        : $"{first.Letter} and {column.Letter} are from equivalent studies; the files differ only in details without effect, such as "
            + $"comments.";
}

/// <summary>The figures of a comparison, a column for each design.</summary>
internal static class ComparisonTables
{
    private const string Absent = "not in its mission";

    /// <summary>Residual with its three parts, lean and effort of every phase of any mission.</summary>
    public static AnswerTable Phases(Comparison comparison) => new(
        Headers(comparison, "phase"),
        [.. PhaseNames(comparison).SelectMany(phase => (IReadOnlyList<string>[])
        [
            Row(phase, comparison, column => Cell(column, phase, found => SideText.Residual(found[PhaseQuantity.Residual]), Absent)),
            Row($"{phase}: roll part, yaw part, wing weight", comparison, column => Cell(column, phase, found => string.Join(", ",
                ((PhaseQuantity[])[PhaseQuantity.WingRollMoment, PhaseQuantity.YawPart, PhaseQuantity.WingWeightPart])
                    .Select(part => SideText.Moment(found[part]))))),
            Row($"{phase}: lean required", comparison, column => Cell(column, phase, found => SideText.Lean(found[PhaseQuantity.Lean]))),
            Row($"{phase}: effort", comparison, column => Cell(column, phase, found => found.IsSettled
                ? NumberFormat.Text(found[PhaseQuantity.Effort], "") + (found.CannotBeHeld ? " (CANNOT BE HELD)" : "")
                : "not settled: judge it by the twist")),
        ])]);

    /// <summary>Every response of the missions; the last column says which is better, or which is lower where they are not the same
    /// measure.</summary>
    public static AnswerTable Mission(Comparison comparison) => new(
        [.. Headers(comparison, "response of the mission"), "better"],
        [.. ResponseCatalogue.OfMissions.Where(quantity => comparison.Columns.Any(
            column => !double.IsNaN(column.Mission[quantity.Index]))).Select(quantity => (IReadOnlyList<string>)
        [
            .. Row(quantity.Name.Replace('_', ' '), comparison, column =>
                NumberFormat.Text(column.Mission[quantity.Index], quantity)),
            BetterText(comparison, quantity),
        ])]);

    /// <summary>Positions of the holes and every factor in words.</summary>
    public static AnswerTable Drilling(Comparison comparison) => new(
        Headers(comparison, "dimension"),
        [
            Row("left hang point", comparison, column =>
                DrillingDimensions.Place(-DrillingDimensions.LeftMetres(column.Geometry), Spacing(column))),
            Row("right hang point", comparison, column =>
                DrillingDimensions.Place(DrillingDimensions.RightMetres(column.Geometry), Spacing(column))),
            .. comparison.Columns.SelectMany(column => column.Run.Factors).DistinctBy(factor => factor.Input)
                .OrderBy(factor => factor.Input.Index).Select(factor =>
                Row(factor.Name.Replace('_', ' '), comparison, column =>
                    GeometryText.Of(column.Run.Factors.FirstOrDefault(own => own.Input == factor.Input) ?? factor,
                    column.Geometry[factor.Input]))),
            Row("measured", comparison, column => DatumText.Sentence(column.Run.Machine)),
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
        // A margin without bound and a response without basis are both null in run.json: neither can be judged.
        if (comparison.Columns.Any(column => double.IsNaN(column.Mission[quantity.Index])))
            return "not comparable";
        string Shown(ComparedColumn column) => NumberFormat.Text(column.Mission[quantity.Index], quantity);
        var best = isHigherBetter ? comparison.Columns.MaxBy(column => column.Mission[quantity.Index])!
            : comparison.Columns.MinBy(column => column.Mission[quantity.Index])!;
        var equal = comparison.Columns.Where(column => Shown(column) == Shown(best)).ToList();
        if (equal.Count == comparison.Columns.Count)
            return "equal";
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
