using FrameOpt.Model;
using FrameOpt.Model.Mission;
using FrameOpt.Search.Fronts;
using FrameOpt.Search.Stopping;

namespace FrameOpt.Studies;

/// <summary>The answer of a run.</summary>
/// <param name="Study">As understood.</param>
/// <param name="Mission">The model the run used; it evaluates any further design.</param>
/// <param name="Front">In rank order, best first; empty when nothing is feasible.</param>
/// <param name="DroppedObjectives">Objectives without range on the front, left out of the ranking.</param>
/// <param name="Counts">How many designs went where.</param>
/// <param name="StopReason">Why the search ended.</param>
/// <param name="Chosen">The best compromise, fully evaluated, or null.</param>
/// <param name="Baseline">The study's baseline, fully evaluated, or null.</param>
/// <param name="Scenarios">One for each <see cref="WingCase"/>, in their order; empty when nothing is feasible.</param>
/// <param name="Bands">Balanced bands of the best compromise.</param>
/// <param name="NearestMiss">When nothing is feasible.</param>
public sealed record StudyResult(
    Study Study,
    MissionModel Mission,
    IReadOnlyList<FrontDesign> Front,
    IReadOnlyList<string> DroppedObjectives,
    RunCounts Counts,
    StopReason StopReason,
    DesignEvaluation? Chosen,
    DesignEvaluation? Baseline,
    IReadOnlyList<WingScenario> Scenarios,
    IReadOnlyList<BalancedBand> Bands,
    NearestMiss? NearestMiss)
{
    /// <summary>False when the run was stopped before its search came to an end.</summary>
    public bool IsComplete => StopReason is not StopReason.StoppedEarly;

    /// <summary>What the study's plan taught, or null when it asks for none.</summary>
    public PlanResult? Plan { get; init; }

    /// <summary>How far each dimension of the chosen design may be off before it violates a limit.</summary>
    public IReadOnlyList<LimitMargin> Margins { get; init; } = [];

    /// <summary>How sure the answer is; null when there is no design to be sure of.</summary>
    public UncertaintyResult? Uncertainty { get; init; }

    /// <summary>How good the front of an evolutionary search is; null for an exhaustive one, whose front is exact, and for one that found
    /// nothing.</summary>
    public Certificate? Certificate { get; init; }
}

/// <summary>A design that no other feasible design beats, with its place in the ranking.</summary>
/// <param name="Rank">From 1; equal scores share a rank.</param>
/// <param name="Number">Its number in the grid, from 0.</param>
/// <param name="Geometry">The design.</param>
/// <param name="Objectives">In the study's order and each response's unit; sizes where an objective counts size.</param>
/// <param name="Score">Distance to the ideal (less is better) or TOPSIS closeness (more is better).</param>
/// <param name="IsKnee">True for the one design furthest from the plane through the best of each objective.</param>
public sealed record FrontDesign(
    int Rank,
    long Number,
    FrameGeometry Geometry,
    IReadOnlyList<double> Objectives,
    double Score,
    bool IsKnee);

/// <summary>The design that comes closest when nothing is feasible, and the limits it breaks.</summary>
/// <param name="Number">Its number in the grid, from 0.</param>
/// <param name="Evaluation">What the model says of it.</param>
/// <param name="BrokenLimits">Every limit it breaks, the one it misses by most first.</param>
public sealed record NearestMiss(long Number, DesignEvaluation Evaluation, IReadOnlyList<StudyLimit> BrokenLimits);

/// <summary>How many designs went where.</summary>
/// <param name="Evaluated">All designs evaluated.</param>
/// <param name="Failed">Those that cannot fly in some phase.</param>
/// <param name="Infeasible">Those that can fly but break a limit.</param>
/// <param name="Feasible">The rest.</param>
/// <param name="FailedBy">How many each failure stopped, the most frequent first.</param>
/// <param name="ViolatedBy">For each limit in the study's order, how many of those that can fly break it.</param>
public sealed record RunCounts(
    long Evaluated,
    long Failed,
    long Infeasible,
    long Feasible,
    IReadOnlyList<FailureCount> FailedBy,
    IReadOnlyList<long> ViolatedBy);

/// <summary>How many designs cannot fly for one reason.</summary>
/// <param name="Failure">Kind and phase.</param>
/// <param name="Count">Designs it stopped, 1 or more.</param>
public sealed record FailureCount(FlightFailure Failure, long Count);

/// <summary>How good the front of an evolutionary search is, compared with the exact front of a grid.</summary>
/// <param name="GridDesigns">How many designs the grid holds.</param>
/// <param name="CoarserGrid">The factors with the levels of the grid where it is only a part of what the search could choose from; null
/// where it is the whole grid of the study.</param>
/// <param name="ExactFront">How many designs are on its front.</param>
/// <param name="Hypervolume">Of the front found, as a share of that of the exact front.</param>
/// <param name="Regrets">For each objective in the study's order and unit: by how much, at worst, the front found falls short of the exact
/// one.</param>
public sealed record Certificate(
    long GridDesigns, IReadOnlyList<StudyFactor>? CoarserGrid, int ExactFront, HypervolumeRatio Hypervolume, IReadOnlyList<double> Regrets)
{
    /// <summary>True when the grid is only a part of what the search could choose from.</summary>
    public bool IsEstimate => CoarserGrid is not null;
}
