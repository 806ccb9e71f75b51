namespace FrameOpt.Reports;

/// <summary>One part of the answer.</summary>
/// <param name="Title">A few words.</param>
/// <param name="Lines">Sentences, each a paragraph of its own.</param>
/// <param name="Table">Shown after the lines, or null.</param>
public sealed record AnswerSection(string Title, IReadOnlyList<string> Lines, AnswerTable? Table = null);
