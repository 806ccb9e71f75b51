namespace FrameOpt.Reports;

/// <summary>A cell that recomputes.</summary>
/// <param name="Text">Without the leading =; English function names, no dynamic arrays.</param>
/// <param name="Cached">What it gives for the workbook as written: a number or a text, for programs that do not recompute.</param>
internal sealed record Formula(string Text, object Cached);
