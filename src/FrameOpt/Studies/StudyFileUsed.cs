namespace FrameOpt.Studies;

/// <summary>A file beside the study that it reads.</summary>
/// <param name="Name">As the study writes it.</param>
/// <param name="Hash">SHA-256 of its bytes, lower-case hexadecimal.</param>
public sealed record StudyFileUsed(string Name, string Hash);
