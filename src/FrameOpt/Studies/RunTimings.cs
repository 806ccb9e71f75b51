namespace FrameOpt.Studies;

/// <summary>How long the parts of a run took; kept out of run.json so that it stays the same bytes.</summary>
/// <param name="StartedUtc">When.</param>
/// <param name="Threads">Worker threads.</param>
/// <param name="SearchSeconds">Model, limits and front.</param>
/// <param name="ScenarioSeconds">The two further yaw leverages.</param>
/// <param name="CertificateSeconds">The grid an evolutionary search is held against; 0 for an exhaustive one.</param>
/// <param name="Machine">Operating system, architecture, processors.</param>
public sealed record RunTimings(DateTime StartedUtc, int Threads, double SearchSeconds, double ScenarioSeconds, double CertificateSeconds, string Machine);
