namespace FrameOpt.Reports;

/// <summary>A small table of the answer: plain text, units included.</summary>
/// <param name="Headers">One for each column.</param>
/// <param name="Rows">As many texts in each as there are headers; the first names the row.</param>
public sealed record AnswerTable(IReadOnlyList<string> Headers, IReadOnlyList<IReadOnlyList<string>> Rows);
