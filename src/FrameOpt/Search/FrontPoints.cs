namespace FrameOpt.Search;

/// <summary>Designs none of which dominates another.</summary>
/// <param name="Ids">The designs' ids, ascending.</param>
/// <param name="Columns">One array for each objective, in the order of the ids.</param>
public sealed record FrontPoints(long[] Ids, double[][] Columns);
