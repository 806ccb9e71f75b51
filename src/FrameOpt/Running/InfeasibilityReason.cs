using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>What rules out the most candidates for customers that none of them suits.</summary>
/// <param name="Customers">The customers.</param>
/// <param name="Failure">Why those candidates cannot fly, or null when a limit rules them out.</param>
/// <param name="Limit">The limit they break, or null when they cannot fly.</param>
/// <param name="RuledOut">How many candidates it rules out.</param>
/// <param name="Candidates">How many there are.</param>
public sealed record InfeasibilityReason(
    CustomerSegment Customers, FlightFailure? Failure, StudyLimit? Limit, int RuledOut, int Candidates)
{
    /// <summary>Counts what rules out the candidates for one row of customers.</summary>
    /// <param name="configuration">What the customers fly.</param>
    /// <param name="customers">The customers.</param>
    /// <param name="candidates">None of them suits these customers.</param>
    internal static InfeasibilityReason Of(ProductLineConfiguration configuration, CustomerSegment customers,
        ProductLineCandidates candidates)
    {
        var study = configuration.For(customers.PilotMassKilograms);
        var mission = StudyProblem.Model(study);
        var counts = new Dictionary<(FlightFailure? Failure, StudyLimit? Limit), int>();
        for (var c = 0; c < candidates.Count; c++)
        {
            foreach (var reason in Reasons(study, mission.Evaluate(candidates.On(study.Machine, c))))
                counts[reason] = counts.GetValueOrDefault(reason) + 1;
        }

        var ((failure, limit), count) = counts.MaxBy(pair => pair.Value);
        return new InfeasibilityReason(customers, failure, limit, count, candidates.Count);
    }

    private static IEnumerable<(FlightFailure?, StudyLimit?)> Reasons(Study study, DesignEvaluation evaluation) =>
        evaluation.Failure is { } failure
        ? [(failure.Cause, null)]
        : study.Limits.Where(limit => !limit.AsConstraint.IsSatisfiedBy(limit.ValueOf(evaluation)))
            .Select(limit => ((FlightFailure?)null, (StudyLimit?)limit));
}
