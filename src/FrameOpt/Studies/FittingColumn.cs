namespace FrameOpt.Studies;

/// <summary>A column of the fitting chart.</summary>
/// <param name="Name">The choice it is for.</param>
/// <param name="Spans">From the lightest pilot to the heaviest, without gaps.</param>
public sealed record FittingColumn(string Name, IReadOnlyList<FittingSpan> Spans);
