using FrameOpt.Search.Fronts;

namespace FrameOpt.Studies;

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
