using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Compare;

/// <summary>What differs between the studies of two lines: the study itself, what was asked, and what each configuration flies.</summary>
internal static class LineDifferences
{
    /// <summary>The parts of a study on which the cost of a customer depends.</summary>
    private static readonly string[] conditions = ["machine", "wing", "mission", "limits", "strength"];

    /// <summary>Every value that differs; what the study changes for all configurations alike stands once.</summary>
    public static IReadOnlyList<StudyDifference> Of(ComparedLine from, ComparedLine to)
    {
        var ofStudy = StudyDifferences.Of(from.Study, to.Study);
        var known = ofStudy.ToHashSet();
        return
        [
            .. StudyDifferences.Of(from.Asked, to.Asked)
                .Select(one => one with { Group = "line", Path = $"{one.Group} {one.Path}".Trim() }),
            .. ofStudy,
            .. from.Configurations.Join(to.Configurations, one => one.Name, other => other.Name, (one, other) => (one, other))
                .SelectMany(pair => StudyDifferences.Of(pair.one, pair.other).Where(one => !known.Contains(one))
                    .Select(one => one with { Group = pair.one.Name, Path = $"{one.Group} {one.Path}".Trim() })),
        ];
    }

    /// <summary>Why a lower cost of the other line does not mean a better line; none where it does.</summary>
    public static IEnumerable<string> NotComparable(ComparedLine first, ComparedLine other)
    {
        if (other.Objective != first.Objective)
            yield return $"NOT COMPARABLE: {other.Name} minimises the {other.Objective}, {first.Name} the {first.Objective}.";
        var differences = Of(first, other);
        var configurations = first.Configurations.Select(one => one.Name).ToHashSet();
        List<string> changed = [.. differences.Select(one => configurations.Contains(one.Group) ? "what a configuration flies"
            : conditions.Contains(one.Group) ? one.Group : "").Where(part => part.Length > 0).Distinct()];
        if (changed.Count > 0)
            yield return $"NOT COMPARABLE: {other.Name} differs from {first.Name} in {string.Join(", ", changed)}. A lower value then does "
                + "not mean a better line.";
    }

    /// <summary>For each line but the first how its study differs.</summary>
    public static AnswerSection Section(IReadOnlyList<ComparedLine> lines, int max)
    {
        List<string> all = [.. lines.Skip(1).SelectMany(line =>
        {
            var differences = Of(lines[0], line);
            IEnumerable<string> heading = lines.Count > 2 ? [$"From {lines[0].Name} to {line.Name}:"] : [];
            return differences.Count > 0 ? heading.Concat(differences.Select(one => one.Text))
                : [$"{lines[0].Name} and {line.Name} are from {(line.Hash == lines[0].Hash ? "the same study" : "equivalent studies")}."];
        })];
        return new AnswerSection(ComparisonSections.DifferencesTitle, all.Count <= max ? all
            : [.. all.Take(max), $"{NumberFormat.Count(all.Count - max)} more: --out writes all of them to a page and a table."]);
    }
}
