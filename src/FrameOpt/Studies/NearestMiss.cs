using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>When nothing is feasible: the design that comes closest, and the limits that stop it.</summary>
/// <param name="Number">Its number in the grid, from 0.</param>
/// <param name="Evaluation">What the model says of it.</param>
/// <param name="BrokenLimits">Every limit it breaks, the one it misses by most first, in words with figures.</param>
public sealed record NearestMiss(long Number, DesignEvaluation Evaluation, IReadOnlyList<string> BrokenLimits);
