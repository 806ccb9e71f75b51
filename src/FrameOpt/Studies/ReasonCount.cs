namespace FrameOpt.Studies;

/// <summary>A reason in words and how many designs it stopped.</summary>
public sealed record ReasonCount(string Reason, long Count);
