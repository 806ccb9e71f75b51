using FrameOpt.Model.Mission;

namespace FrameOpt.Reports.Compare;

/// <summary>Whether figures of two studies answer the same question.</summary>
internal static class Comparability
{
    private const string Leverage = "yaw leverage";

    /// <summary>Why the figures of a design are not to be held against those of the first, each a sentence; none when they are.</summary>
    public static IEnumerable<string> Reasons(IReadOnlyList<StudyDifference> differences, ComparedColumn first, ComparedColumn other)
    {
        List<string> changed = [.. ChangedConditions(differences)];
        if (changed.Count > 0)
            yield return $"NOT THE SAME QUESTION: {other.Letter} has another {string.Join(", another ", changed)} than {first.Letter}. Its figures answer a different question: a lower one does not make the better geometry.";
        foreach (var (quantity, because) in RedefinedResponses(differences)
            .Where(item => !double.IsNaN(first.Mission[item.Quantity.Index] + other.Mission[item.Quantity.Index])))
            yield return $"{quantity.Name.Replace('_', ' ')} of {other.Letter} and of {first.Letter} are not the same measure: {because}.";
    }

    /// <summary>True when this response of both designs is the same measure under the same circumstances.</summary>
    public static bool IsComparable(IReadOnlyList<StudyDifference> differences, MissionQuantity quantity) =>
        !ChangedConditions(differences).Any() && RedefinedResponses(differences).All(item => item.Quantity != quantity);

    /// <summary>The parts of a study that every figure hangs on.</summary>
    private static IEnumerable<string> ChangedConditions(IReadOnlyList<StudyDifference> differences) => differences
        .Select(item => item.Group == "wing" && item.Path.StartsWith(Leverage, StringComparison.Ordinal) ? Leverage : item.Group)
        .Where(part => part is "mission" or "machine" or "wing" or Leverage)
        .Distinct();

    /// <summary>Responses whose definition hangs on settings of their own.</summary>
    private static IEnumerable<(MissionQuantity Quantity, string Because)> RedefinedResponses(IReadOnlyList<StudyDifference> differences)
    {
        if (differences.Any(item => item.Group == "strength" && item.Path != "overhang"))
            yield return (MissionQuantity.HangPointLoad, "the limit load factor differs");
        if (differences.Any(item => item.Group == "strength"))
            yield return (MissionQuantity.ArmMoment, "limit load factor or overhang differs");
        if (differences.Any(item => item.Group is "baseline" or "factors"))
            yield return (MissionQuantity.DistanceFromBaseline, "the baseline or the ranges of the factors differ");
    }
}
