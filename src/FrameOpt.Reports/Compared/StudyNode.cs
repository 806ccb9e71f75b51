namespace FrameOpt.Reports;

/// <summary>A value of a study as understood, or what holds such values, in the words of the field.</summary>
/// <param name="Name">Beside its neighbours; empty where the names of its parts say enough.</param>
/// <param name="Kind">What it is.</param>
/// <param name="Text">In words, with units.</param>
/// <param name="Exact">To the last digit; two values are the same when these are.</param>
/// <param name="Parts">Of a group or a table, in the study's order.</param>
public sealed record StudyNode(string Name, StudyNodeKind Kind, string Text, string Exact, IReadOnlyList<StudyNode> Parts);
