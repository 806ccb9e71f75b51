namespace FrameOpt.Search;

/// <summary>The members of a front.</summary>
/// <param name="Ids">Ascending.</param>
/// <param name="Columns">Each objective's values, in the order of the ids.</param>
public sealed record FrontResult(long[] Ids, double[][] Columns);
