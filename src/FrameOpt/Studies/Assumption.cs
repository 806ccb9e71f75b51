namespace FrameOpt.Studies;

/// <summary>Something the answer rests on that the study did not state.</summary>
/// <param name="What">In words.</param>
/// <param name="Value">With its unit.</param>
/// <param name="Source">A published source, or the word assumption with its range.</param>
public sealed record Assumption(string What, string Value, string Source);
