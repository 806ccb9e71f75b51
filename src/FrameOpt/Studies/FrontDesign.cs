using FrameOpt.Model;

namespace FrameOpt.Studies;

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
