namespace FrameOpt.Analysis;

/// <summary>From a lower to an upper value, in the response's unit.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public readonly record struct Interval(double Low, double High);
