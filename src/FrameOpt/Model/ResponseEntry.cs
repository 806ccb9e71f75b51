namespace FrameOpt.Model;

/// <summary>How one response is written and read.</summary>
/// <param name="Name">As a study file writes it.</param>
/// <param name="Unit">The unit its value is held and shown in; empty for a plain number.</param>
/// <param name="Meaning">In words, for a table's header or a list of responses.</param>
public sealed record ResponseEntry(string Name, string Unit, string Meaning);
