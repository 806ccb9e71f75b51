using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>When nothing is feasible: the design that comes closest, and the limit that stops it.</summary>
/// <param name="Number">Its number in the grid, from 0.</param>
/// <param name="Evaluation">What the model says of it.</param>
/// <param name="BindingLimit">The limit it misses by most, in words with figures.</param>
public sealed record NearestMiss(long Number, DesignEvaluation Evaluation, string BindingLimit);
