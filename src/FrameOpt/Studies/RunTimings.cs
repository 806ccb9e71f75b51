namespace FrameOpt.Studies;

/// <summary>Timings of a run; kept out of run.json so that the same run gives the same bytes.</summary>
/// <param name="StartedUtc">Start time.</param>
/// <param name="Threads">Worker threads.</param>
/// <param name="SearchSeconds">Seconds of evaluating designs and building the front.</param>
/// <param name="ScenarioSeconds">Seconds of the two further yaw leverages.</param>
/// <param name="CertificateSeconds">Seconds of the grid an evolutionary search is compared with; 0 for an exhaustive search.</param>
/// <param name="Machine">Operating system, architecture, processors.</param>
public sealed record RunTimings(DateTime StartedUtc, int Threads, double SearchSeconds, double ScenarioSeconds, double CertificateSeconds,
    string Machine);

/// <summary>Origin of a run, as run.json and the foot of the page state it.</summary>
/// <param name="StudyFileName">Name of the study file, without its folder.</param>
/// <param name="ToolVersion">Version of FrameOpt.</param>
/// <param name="Seed">Seed of the search; 0 for an exhaustive grid, which uses none.</param>
public sealed record RunInfo(string StudyFileName, string ToolVersion, ulong Seed);

/// <summary>Timings of the steps of a product line, in seconds.</summary>
/// <param name="Candidates">Finding the candidates.</param>
/// <param name="Costs">Computing the cost of every customer with every candidate.</param>
/// <param name="Choice">Solving for every number of geometries.</param>
/// <param name="Results">Assignments, each segment's own best geometry, the fitting chart.</param>
public sealed record ProductLineStepTimings(double Candidates, double Costs, double Choice, double Results);
