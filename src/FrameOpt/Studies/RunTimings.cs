namespace FrameOpt.Studies;

/// <summary>How long the parts of a run took; kept out of run.json so that it stays the same bytes.</summary>
/// <param name="StartedUtc">When.</param>
/// <param name="Threads">Worker threads.</param>
/// <param name="SearchSeconds">Model, limits and front.</param>
/// <param name="ScenarioSeconds">The two further yaw leverages.</param>
/// <param name="CertificateSeconds">The grid an evolutionary search is held against; 0 for an exhaustive one.</param>
/// <param name="Machine">Operating system, architecture, processors.</param>
public sealed record RunTimings(DateTime StartedUtc, int Threads, double SearchSeconds, double ScenarioSeconds, double CertificateSeconds,
    string Machine);

/// <summary>Where, when and with what a run was made: what run.json and the page foot say beside the answer.</summary>
/// <param name="StudyFileName">Name of the study file, without its folder.</param>
/// <param name="ToolVersion">Version of FrameOpt.</param>
/// <param name="Seed">Of the search; 0 for an exhaustive grid, which uses none.</param>
public sealed record RunInfo(string StudyFileName, string ToolVersion, ulong Seed);

/// <summary>How long the parts of a line took, in seconds.</summary>
/// <param name="Candidates">Finding them.</param>
/// <param name="Costs">Of every customer with every candidate.</param>
/// <param name="Choice">Choosing, for every number of geometries.</param>
/// <param name="Results">Who gets which, what would serve them, the fitting chart.</param>
public sealed record ProductLineStepTimings(double Candidates, double Costs, double Choice, double Results);
