namespace FrameOpt.Search;

/// <summary>Stop when the share of the objectives' box that the front dominates has hardly grown.</summary>
/// <param name="Evaluations">Over so many designs, 1 or more.</param>
/// <param name="Growth">Relative growth of the hypervolume below which the search has stalled, above 0.</param>
public sealed record StallRule(long Evaluations, double Growth);
