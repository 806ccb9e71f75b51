namespace FrameOpt.Studies;

/// <summary>What came of reading a study file.</summary>
/// <param name="Study">The study, or null when there are mistakes.</param>
/// <param name="Mistakes">Every mistake found, in the order of the file's lines; empty when the study can be run.</param>
public sealed record StudyReading(Study? Study, IReadOnlyList<Mistake> Mistakes);
