namespace FrameOpt.Line;

/// <summary>How long a search for a line may take. What it finds without being stopped never depends on the clock.</summary>
/// <param name="TimeLimit">Null: until the best is proven.</param>
/// <param name="Cancel">Asked every few milliseconds.</param>
public sealed record LineSettings(TimeSpan? TimeLimit = null, CancellationToken Cancel = default);
