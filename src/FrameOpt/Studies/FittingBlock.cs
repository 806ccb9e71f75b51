namespace FrameOpt.Studies;

/// <summary>Columns of the fitting chart that have the further choices alike.</summary>
/// <param name="Title">Those choices; empty when the geometry depends on none.</param>
/// <param name="Columns">One for each choice of the first option.</param>
public sealed record FittingBlock(string Title, IReadOnlyList<FittingColumn> Columns);
