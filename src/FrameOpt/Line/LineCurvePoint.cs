namespace FrameOpt.Line;

/// <summary>The best line of a given number of variants.</summary>
/// <param name="Count">How many may be chosen.</param>
/// <param name="Solution">The best found.</param>
/// <param name="Gain">How much smaller the value is than with one variant fewer: null for the first, and where the line before leaves customers out.</param>
public sealed record LineCurvePoint(int Count, LineSolution Solution, double? Gain);
