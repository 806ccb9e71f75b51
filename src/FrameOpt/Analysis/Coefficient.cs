using FrameOpt.Plans;

namespace FrameOpt.Analysis;

/// <summary>One coefficient of a fitted model, in the response's unit over the term's.</summary>
/// <param name="Term">What it multiplies.</param>
/// <param name="Value">The estimate.</param>
/// <param name="StandardError">Of the estimate; null where nothing can be tested.</param>
/// <param name="T">Value over standard error, infinite for an exact fit; null where nothing can be tested.</param>
/// <param name="P">Probability of a larger |t| by chance alone; null where nothing can be tested.</param>
/// <param name="VarianceInflation">How many times the other terms raise its variance: 1 for an orthogonal plan; null for the constant.</param>
public sealed record Coefficient(ModelTerm Term, double Value, double? StandardError, double? T, double? P, double? VarianceInflation);
