namespace FrameOpt.Analysis;

/// <summary>One point of a half-normal plot.</summary>
/// <param name="Index">Which effect of those given.</param>
/// <param name="Size">Its size without sign, in the response's unit.</param>
/// <param name="Quantile">Where it would stand among normal errors, in standard deviations.</param>
public readonly record struct HalfNormalPoint(int Index, double Size, double Quantile);
