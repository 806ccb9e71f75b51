namespace FrameOpt.Reports;

/// <summary>One line of a study told in words.</summary>
/// <param name="Group">Machine, wing, mission and so on; the same for neighbouring rows.</param>
/// <param name="What">The name of the thing.</param>
/// <param name="Value">With its unit.</param>
public sealed record DescriptionRow(string Group, string What, string Value);
