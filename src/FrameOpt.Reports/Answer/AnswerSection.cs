namespace FrameOpt.Reports.Answer;

/// <summary>One part of the answer.</summary>
/// <param name="Title">A few words.</param>
/// <param name="Lines">Sentences, each a paragraph of its own.</param>
/// <param name="Table">Shown after the lines, or null.</param>
public sealed record AnswerSection(string Title, IReadOnlyList<string> Lines, AnswerTable? Table = null);

/// <summary>A small table of the answer: plain text, units included.</summary>
/// <param name="Headers">One for each column.</param>
/// <param name="Rows">Each has one text for every header; the first names the row.</param>
public sealed record AnswerTable(IReadOnlyList<string> Headers, IReadOnlyList<IReadOnlyList<string>> Rows);
