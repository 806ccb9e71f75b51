using FrameOpt.Model;
using FrameOpt.Running;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Text;

/// <summary>A study in a few lines, to see at a glance whether it is the one that was meant.</summary>
public static class StudyOverview
{
    private const string Group = "In short";

    /// <summary>The lines.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="processors">Of this computer, for the time.</param>
    public static IReadOnlyList<DescriptionRow> Of(Study study, int processors) =>
    [
        new(Group, "title", study.FullTitle),
        .. study.Question.Length > 0 ? [new DescriptionRow(Group, "question", study.Question)] : Array.Empty<DescriptionRow>(),
        new(Group, "designs", Designs(study)),
        new(Group, "a run takes",
            $"{RunEstimate.InWords(RunEstimate.Seconds(study, processors))} on this computer, and starting and writing the files"),
        new(Group, "varied", Factors(study, isSwept: true)),
        new(Group, "fixed", Factors(study, isSwept: false)),
        new(Group, "left hang point", Holes(study, left: true)),
        new(Group, "right hang point", Holes(study, left: false)),
        new(Group, "phases", Phases(study)),
        new(Group, "objectives", string.Join(", ", study.Objectives.Select(
            objective => $"{StudyText.Goal(objective)} {StudyText.Name(objective.Response, objective.Magnitude)}"))),
        new(Group, "limits", study.Limits.Count == 0 ? "none: nothing is ruled out but what cannot fly"
            : string.Join("; ", study.Limits.Select(StudyText.Limit))),
        new(Group, "assumed", study.Assumptions.Count == 0 ? "nothing"
            : $"{study.Assumptions.Count} values that the study does not give; they are listed below"),
        new(Group, "variants", Variants(study)),
    ];

    private static string Designs(Study study)
    {
        if (study.Search is SearchSetting.Evolutionary evolutionary)
            return $"up to {NumberFormat.Count(evolutionary.Stop.Evaluations)} {StudyText.DesignSpace(study)}, each in {study.Mission.Count} phases";
        var swept = study.Factors.Where(factor => factor.IsSwept).ToList();
        var product = swept.Count > 1
            ? $" = {string.Join(" x ", swept.Select(factor => NumberFormat.Count(factor.LevelsSi.Count)))} levels" : "";
        return $"{NumberFormat.Count(study.GridSize!.Value)}{product}, each in {study.Mission.Count} phases";
    }

    private static string Factors(Study study, bool isSwept)
    {
        var words = study.Factors.Where(factor => factor.IsSwept == isSwept).Select(factor => isSwept
            ? $"{factor.Name} {factor.Unit.Text(factor.LevelsSi[0])} to {factor.Unit.Text(factor.LevelsSi[^1])}"
            : $"{factor.Name} at {factor.Unit.Text(factor.LevelsSi[0])}");
        return string.Join(", ", words) is { Length: > 0 } text ? text : "nothing";
    }

    /// <summary>Between which places one hang point moves over the whole grid, to hold against the frame.</summary>
    private static string Holes(Study study, bool left)
    {
        var spacing = study.Factors.First(factor => factor.Input == GeometryInput.HangPointSpacing);
        var offset = study.Factors.First(factor => factor.Input == GeometryInput.LateralOffset).LevelsSi;
        // Metres to the right of the plane of symmetry.
        var (first, last) = left
            ? (-spacing.LevelsSi[^1] / 2 + offset[0], -spacing.LevelsSi[0] / 2 + offset[^1])
            : (spacing.LevelsSi[0] / 2 + offset[0], spacing.LevelsSi[^1] / 2 + offset[^1]);
        string Place(double right) => $"{spacing.Unit.Text(Math.Abs(right))} {SideText.Side(right)}";
        return $"{(first == last ? Place(first) : $"{Place(first)} to {Place(last)}")} of the plane of symmetry";
    }

    private static string Phases(Study study)
    {
        var totalWeight = study.Mission.Sum(phase => phase.Weight);
        return string.Join(", ", study.Mission.Select(phase => phase.Weight > 0
            ? FormattableString.Invariant($"{phase.Name} {100 * phase.Weight / totalWeight:0.#} %")
            : $"{phase.Name} not counted in the means"));
    }

    private static string Variants(Study study) => study.Variants.Count == 0
        ? "none"
        : $"{string.Join(", ", study.Variants)}; {(study.Variant.Length == 0 ? "this is the file as it stands: choose one with --variant" : $"this is {study.Variant}")}";
}
