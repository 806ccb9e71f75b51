using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>Finds why no candidate suits some customers.</summary>
internal static class InfeasibilityReason
{
    /// <summary>Counts what rules out the candidates for one row of customers and gives the most frequent cause.</summary>
    /// <param name="configuration">What the customers fly.</param>
    /// <param name="customers">None of the candidates suits them.</param>
    /// <param name="candidates">One or more.</param>
    public static InfeasibleCustomers Of(ProductLineConfiguration configuration, CustomerSegment customers,
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
        return new InfeasibleCustomers(customers, failure, limit, count, candidates.Count);
    }

    private static IEnumerable<(FlightFailure?, StudyLimit?)> Reasons(Study study, DesignEvaluation evaluation) =>
        evaluation.Failure is { } failure
        ? [(failure.Cause, null)]
        : study.Limits.Where(limit => !limit.AsConstraint.IsSatisfiedBy(limit.ValueOf(evaluation)))
            .Select(limit => ((FlightFailure?)null, (StudyLimit?)limit));
}
