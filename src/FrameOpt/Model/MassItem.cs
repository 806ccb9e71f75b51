namespace FrameOpt.Model;

/// <summary>One mass hung below the hang points.</summary>
/// <param name="Name">The study's own word for it.</param>
/// <param name="MassKilograms">Above zero, in kg.</param>
/// <param name="At">Its centre of gravity.</param>
/// <param name="IsBody">True for what leans with the pilot when weight is shifted.</param>
public sealed record MassItem(string Name, double MassKilograms, FramePoint At, bool IsBody);
