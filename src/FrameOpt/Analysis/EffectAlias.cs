using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>An effect that a plan mixes with another.</summary>
/// <param name="Term">The effect.</param>
/// <param name="IsOpposite">Whether it enters with a minus.</param>
public readonly record struct EffectAlias(ModelTerm Term, bool IsOpposite);
