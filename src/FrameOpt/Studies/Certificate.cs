using FrameOpt.Search.Fronts;

namespace FrameOpt.Studies;

/// <summary>How good the front of an evolutionary search is, held against the exact front of a grid.</summary>
/// <param name="GridDesigns">How many designs the grid holds.</param>
/// <param name="IsEstimate">True when the grid is only a part of what the search could choose from.</param>
/// <param name="GridDescription">Which grid, in words.</param>
/// <param name="ExactFront">How many of its designs no other beats.</param>
/// <param name="Hypervolume">Of the front found, as a share of that of the exact front.</param>
/// <param name="Regrets">For each objective in the study's order and unit: by how much, at worst, the front found falls short of the exact
/// one.</param>
public sealed record Certificate(
    long GridDesigns, bool IsEstimate, string GridDescription, int ExactFront, HypervolumeRatio Hypervolume, IReadOnlyList<double> Regrets);
