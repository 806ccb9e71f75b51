namespace FrameOpt.Reports;

/// <summary>Something in a run.json is not as a run writes it. Never leaves the reading of the file: it becomes a sentence for the user.</summary>
internal sealed class DamagedRunException(string where, string what) : Exception($"at {(where.Length > 0 ? where : "its beginning")}: {what}");
