namespace FrameOpt.Analysis;

/// <summary>Sums of squares of one source before they are tested.</summary>
internal sealed record LineSums(string Source, int Degrees, double Sequential, double Adjusted);
