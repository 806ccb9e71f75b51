namespace FrameOpt.Search;

/// <summary>What a search works on: factors, goals, limits, and a function from designs to their evaluations.</summary>
/// <param name="Factors">One or more.</param>
/// <param name="RowFactor">Index of the factor along which a row of designs is cheapest to evaluate.</param>
/// <param name="Goals">Two to five.</param>
/// <param name="Bounds">Any number.</param>
/// <param name="Evaluate">Fills objectives, bounded values and failures of a batch; called by several threads at once, each with its own batch.</param>
public sealed record Problem(
    IReadOnlyList<Factor> Factors,
    int RowFactor,
    IReadOnlyList<Goal> Goals,
    IReadOnlyList<Bound> Bounds,
    Action<EvaluatedBatch> Evaluate);
