namespace FrameOpt.Studies;

/// <summary>Where, when and with what a run was made: what run.json and the page foot say beside the answer.</summary>
/// <param name="StudyFileName">Name of the study file, without its folder.</param>
/// <param name="ToolVersion">Version of FrameOpt.</param>
/// <param name="Seed">Of the search; 0 for an exhaustive grid, which uses none.</param>
public sealed record RunInfo(string StudyFileName, string ToolVersion, ulong Seed);
