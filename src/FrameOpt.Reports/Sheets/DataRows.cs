namespace FrameOpt.Reports;

/// <summary>The rows of a long table, still to be written under its header.</summary>
/// <param name="SheetName">On this sheet.</param>
/// <param name="FirstRow">From 1: the row after the header.</param>
/// <param name="Rows">Texts and numbers; a number that is not finite leaves its cell blank.</param>
internal sealed record DataRows(string SheetName, int FirstRow, IReadOnlyList<IReadOnlyList<object>> Rows);
