namespace FrameOpt.Search;

/// <summary>Something a search may choose, and the values it may take.</summary>
/// <param name="Name">As the study writes it.</param>
/// <param name="Levels">One or more, increasing.</param>
public sealed record Factor(string Name, IReadOnlyList<double> Levels);
