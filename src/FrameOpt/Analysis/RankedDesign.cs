namespace FrameOpt.Analysis;

/// <summary>The place of one design in a ranking.</summary>
/// <param name="Index">Which design of those ranked.</param>
/// <param name="Rank">From 1; equal scores share a rank.</param>
/// <param name="Score">Of the method.</param>
public readonly record struct RankedDesign(int Index, int Rank, double Score);
