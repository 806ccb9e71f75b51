using FrameOpt.Reports.Answer;
using FrameOpt.Reports.Text;

namespace FrameOpt.Reports.Compare;

/// <summary>A comparison in words, for the terminal and the page alike.</summary>
public static class ComparisonSections
{
    internal const string WarningsTitle = "Look again before you compare";

    internal const string DifferencesTitle = "How the studies differ";

    /// <summary>Every part, in reading order.</summary>
    /// <param name="comparison">What is compared.</param>
    /// <param name="maxDifferences">So many lines of differences at most.</param>
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
        new("What each leaves in each phase", [], ComparisonTables.Phases(comparison));

    internal static AnswerSection Mission(Comparison comparison) => new("The mission as a whole", [], ComparisonTables.Mission(comparison));

    internal static AnswerSection Drilling(Comparison comparison) =>
        new("Where to drill, seen from behind, from the plane of symmetry", [], ComparisonTables.Drilling(comparison));

    internal static AnswerSection Differences(Comparison comparison, int max)
    {
        List<string> lines = [.. DifferencesByColumn(comparison).SelectMany(
            part => part.Heading.Length > 0 ? part.Lines.Prepend(part.Heading) : part.Lines)];
        return new AnswerSection(
            DifferencesTitle,
            lines.Count <= max ? lines
                : [.. lines.Take(max), $"{NumberFormat.Count(lines.Count - max)} more: --out writes them all to a page and a table."]);
    }

    /// <summary>What a design is; first of all, whether it can be held.</summary>
    internal static string Headline(ComparedColumn column)
    {
        var excessiveEffort = column.Phases.Where(phase => phase.Effort > 1)
            .Select(phase => $"{phase.Name} (effort {NumberFormat.Text(phase.Effort, "")})").ToList();
        return $"{column.Letter}: {(excessiveEffort.Count > 0 ? $"THE PILOT CANNOT HOLD IT in {string.Join(" and ", excessiveEffort)}. " : "")}{column.Source}: {GeometryText.Of(column.Run.Factors, column.Geometry)}.";
    }

    /// <summary>Every column's differences from the first; with a heading where there are several.</summary>
    internal static IEnumerable<(string Heading, IReadOnlyList<string> Lines)> DifferencesByColumn(Comparison comparison) =>
        comparison.Columns.Select((column, c) => (column, Differences: comparison.Differences[c])).Skip(1).Select(item => (
            comparison.Columns.Count > 2 && item.Differences.Count > 0 ? $"From {comparison.Columns[0].Letter} to {item.column.Letter}:"
                : "",
            (IReadOnlyList<string>)(item.Differences.Count > 0 ? [.. item.Differences.Select(difference => difference.Text)]
                : [SameStudyText(comparison.Columns[0], item.column)])));

    private static string SameStudyText(ComparedColumn first, ComparedColumn column) =>
        column.Run.Folder == first.Run.Folder ? $"{first.Letter} and {column.Letter} are designs of one run."
        : column.Run.Hash == first.Run.Hash ? $"{first.Letter} and {column.Letter} are of the same study."
        : $"{first.Letter} and {column.Letter} are of the same study as understood; the files differ only in what changes nothing, such as remarks.";
}
