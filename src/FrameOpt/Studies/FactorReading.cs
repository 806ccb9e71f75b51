namespace FrameOpt.Studies;

/// <summary>What came of reading one value for a geometry input, as given on a command line.</summary>
/// <param name="Factor">Fixed at that value, or null after a mistake.</param>
/// <param name="Mistake">What is wrong, or null.</param>
public sealed record FactorReading(StudyFactor? Factor, Mistake? Mistake);
