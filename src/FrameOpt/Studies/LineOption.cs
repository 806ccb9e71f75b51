namespace FrameOpt.Studies;

/// <summary>Something the customers of a line choose: an engine, a wing.</summary>
/// <param name="Name">As the study writes it.</param>
/// <param name="Choices">Their names, one or more.</param>
public sealed record LineOption(string Name, IReadOnlyList<string> Choices);
