using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Why nothing suits a customer.</summary>
internal static class InfeasibilityReason
{
    /// <summary>What rules out the most candidates, in words: "effort_worst at most 0.8 rules out 1,395 of 1,395 candidates".</summary>
    public static string Of(ProductLineConfiguration configuration, double pilotKilograms, ProductLineCandidates candidates)
    {
        var study = configuration.For(pilotKilograms);
        var mission = StudyProblem.Model(study);
        var counts = new Dictionary<string, int>();
        for (var c = 0; c < candidates.Count; c++)
        {
            foreach (var reason in Reasons(study, mission.Evaluate(candidates.On(study.Machine, c))))
                counts[reason] = counts.GetValueOrDefault(reason) + 1;
        }

        var (words, count) = counts.MaxBy(pair => pair.Value);
        return FormattableString.Invariant($"{words} rules out {count} of {candidates.Count} candidates");
    }

    private static IEnumerable<string> Reasons(Study study, DesignEvaluation evaluation) => evaluation.Failure is { } failure
        ? [$"that it cannot fly ({failure.Split(" (")[0]})"]
        : study.Limits.Where(limit => !limit.AsConstraint.IsSatisfiedBy(limit.ValueOf(evaluation)))
            .Select(limit => $"the limit {limit.Text}");
}
