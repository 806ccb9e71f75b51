using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>The answer of a run.</summary>
/// <param name="Study">As understood.</param>
/// <param name="Mission">The model the run used; it evaluates any further design.</param>
/// <param name="Front">In rank order, best first; empty when nothing is feasible.</param>
/// <param name="DroppedObjectives">Objectives without range on the front, left out of the ranking.</param>
/// <param name="Counts">How many designs went where.</param>
/// <param name="StopReason">Why the search ended, in words.</param>
/// <param name="IsComplete">False when it was stopped before every design was seen.</param>
/// <param name="Chosen">The best compromise, fully evaluated, or null.</param>
/// <param name="Baseline">The study's baseline, fully evaluated, or null.</param>
/// <param name="Scenarios">Yaw leverage 0.2, as given, 1.6, each once; empty when nothing is feasible.</param>
/// <param name="Bands">Balanced bands of the best compromise.</param>
/// <param name="NearestMiss">When nothing is feasible.</param>
public sealed record StudyResult(
    Study Study,
    MissionModel Mission,
    IReadOnlyList<FrontDesign> Front,
    IReadOnlyList<string> DroppedObjectives,
    RunCounts Counts,
    string StopReason,
    bool IsComplete,
    DesignEvaluation? Chosen,
    DesignEvaluation? Baseline,
    IReadOnlyList<LeverageScenario> Scenarios,
    IReadOnlyList<BalancedBand> Bands,
    NearestMiss? NearestMiss)
{
    /// <summary>What the study's plan taught, or null when it asks for none.</summary>
    public PlanAnswer? Plan { get; init; }

    /// <summary>How good the front of an evolutionary search is; null for an exhaustive one, whose front is exact, and for one that found nothing.</summary>
    public Certificate? Certificate { get; init; }
}
