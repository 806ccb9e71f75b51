using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>An effect or interaction of a two-level plan.</summary>
/// <param name="Term">x1 for a main effect, x1x2 for an interaction.</param>
/// <param name="Aliases">What the plan cannot tell from it: the value is that of all together, those with a minus less.</param>
/// <param name="Value">Mean response at the high less that at the low level, in the response's unit.</param>
/// <param name="SumOfSquares">In the square of that unit.</param>
/// <param name="ContributionPercent">Of the total sum of squares, %.</param>
public sealed record Effect(ModelTerm Term, IReadOnlyList<EffectAlias> Aliases, double Value, double SumOfSquares, double ContributionPercent);
