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

/// <summary>A line read back.</summary>
/// <param name="Name">Its name in sentences: line 2.</param>
/// <param name="Folder">As the user wrote it.</param>
/// <param name="Title">Of the study.</param>
/// <param name="Hash">Of the study file.</param>
/// <param name="Objective">In words.</param>
/// <param name="Cost">What a customer's cost is, in words.</param>
/// <param name="Weights">What customers are counted in: pieces or shares.</param>
/// <param name="Value">Of the objective, with its unit.</param>
/// <param name="Unit">Of the value.</param>
/// <param name="Amount">The value to the last digit, without its unit.</param>
/// <param name="Stop">How the selection ended.</param>
/// <param name="ServesAll">False where somebody is left unserved.</param>
/// <param name="CustomerCount">How many customers.</param>
/// <param name="Geometries">Name, share and dimensions of each.</param>
/// <param name="Boundaries">Who gets which, in sentences.</param>
/// <param name="Unserved">Sentences.</param>
/// <param name="Study">As understood.</param>
/// <param name="Asked">What was to be chosen, and for whom.</param>
/// <param name="Configurations">What each of them flies, under its name.</param>
/// <param name="Customers">One by one.</param>
internal sealed record ComparedLine(
    string Name, string Folder, string Title, string Hash,
    string Objective, string Cost, string Weights, string Value, string Unit, string Amount,
    string Stop, bool ServesAll, string CustomerCount, IReadOnlyList<IReadOnlyList<string>> Geometries, IReadOnlyList<string> Boundaries,
    IReadOnlyList<string> Unserved, StudyNode Study, StudyNode Asked, IReadOnlyList<StudyNode> Configurations, LineCustomers Customers);
