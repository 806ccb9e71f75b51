namespace FrameOpt.Studies;

/// <summary>Estimated time of a run, on the high side.</summary>
public static class RunEstimate
{
    /// <summary>Phase evaluations per second per processor.</summary>
    /// <remarks>Source: the shipped fine grid (1,102,941 designs, 5 phases) took 0.77 s for its first pass on two busy
    /// processors.</remarks>
    public const double PhasesPerSecond = 3e6;

    /// <summary>Time of a design that shares nothing with the design before it, relative to a design of a grid.</summary>
    private const double SingleDesignCost = 10;

    /// <summary>Cases of the noise that take the time of one design, on the high side.</summary>
    /// <remarks>Source: the search of the shipped fine grid over 256 cases took 48 to 63 times as long as without.</remarks>
    private const double CasesPerDesign = 4;

    /// <summary>Seconds to compute a grid, without starting the program and writing the files.</summary>
    /// <param name="designs">Number of designs of the grid.</param>
    /// <param name="phases">Number of phases of the mission.</param>
    /// <param name="processors">At least 1.</param>
    public static double Seconds(double designs, int phases, int processors)
    {
        // The search, and one more pass for each of the other cases of the wing while that is cheap.
        var passes = designs > RunLimits.MaxDesignsForScenarioSearch ? 1 : WingCases.All.Count;
        return passes * designs * phases / (PhasesPerSecond * processors);
    }

    /// <summary>Seconds to compute a study.</summary>
    /// <param name="study">With any search.</param>
    /// <param name="processors">At least 1.</param>
    public static double Seconds(Study study, int processors) => study.Search switch
    {
        SearchSetting.Evolutionary evolutionary => Seconds(evolutionary.Stop.Evaluations, study.Mission.Count, 1) * SingleDesignCost
            * (1 + (study.ResponsesOverCases.Count == 0 ? 0 : study.Noise.Cases / CasesPerDesign))
            + Seconds(Math.Min(study.GridSize ?? RunLimits.MaxPartialGrid, RunLimits.MaxFullGrid), study.Mission.Count,
                processors) / 3,
        _ when study.ResponsesOverCases.Count > 0 =>
            study.GridSize!.Value * (double)study.Mission.Count * study.Noise.Cases / CasesPerDesign / (PhasesPerSecond * processors),
        _ => Seconds(study.GridSize!.Value, study.Mission.Count, processors),
    };

    /// <summary>A duration in words: "a few seconds", "about 4 minutes".</summary>
    public static string InWords(double seconds) => seconds switch
    {
        < 2 => "a second or two",
        < 10 => "a few seconds",
        < 90 => FormattableString.Invariant($"about {Math.Ceiling(seconds / 10) * 10:0} seconds"),
        < 5400 => FormattableString.Invariant($"about {Math.Ceiling(seconds / 60):0} minutes"),
        _ => FormattableString.Invariant($"about {seconds / 3600:0.#} hours"),
    };
}

/// <summary>The largest numbers of designs that the parts of a run take.</summary>
public static class RunLimits
{
    /// <summary>Largest grid of an exhaustive search.</summary>
    public const long MaxGrid = 2_000_000_000;

    /// <summary>Above this number of designs the other cases of the wing are computed for the front only, not by a search of their
    /// own.</summary>
    public const long MaxDesignsForScenarioSearch = 500_000_000;

    /// <summary>Largest grid that is computed in full to compare an evolutionary search with it; of a larger one a part is.</summary>
    public const long MaxFullGrid = 20_000_000;

    /// <summary>Largest part of a grid for that comparison.</summary>
    public const long MaxPartialGrid = 2_000_000;

    /// <summary>Above this number of evaluations an evolutionary search is not repeated from other seeds.</summary>
    public const long MaxEvaluationsForSeeds = 200_000;

    /// <summary>So many other seeds a search is repeated from.</summary>
    public const int OtherSeeds = 4;

    /// <summary>Largest number of candidates of a product line.</summary>
    public const int MaxCandidates = 20_000;
}

/// <summary>Timings of a run; kept out of run.json so that the same run gives the same bytes.</summary>
/// <param name="StartedUtc">Start time.</param>
/// <param name="Threads">Worker threads.</param>
/// <param name="SearchSeconds">Seconds of evaluating designs and building the front.</param>
/// <param name="ScenarioSeconds">Seconds of the other cases of the wing.</param>
/// <param name="CertificateSeconds">Seconds of the grid an evolutionary search is compared with; 0 for an exhaustive search.</param>
/// <param name="Machine">Operating system, architecture, processors.</param>
public sealed record RunTimings(DateTime StartedUtc, int Threads, double SearchSeconds, double ScenarioSeconds, double CertificateSeconds,
    string Machine);

/// <summary>Origin of a run, as run.json and the foot of the page state it.</summary>
/// <param name="StudyFileName">Name of the study file, without its folder.</param>
/// <param name="ToolVersion">Version of FrameOpt.</param>
/// <param name="Seed">Seed of the search; 0 for an exhaustive grid, which uses none.</param>
public sealed record RunInfo(string StudyFileName, string ToolVersion, ulong Seed)
{
    /// <summary>The settings of one frame that was evaluated, each a factor, = and a value; null for a run.</summary>
    public IReadOnlyList<string>? Settings { get; init; }

    /// <summary>The options that named the customer of a line for whom it was evaluated, as typed; none for the study itself.</summary>
    public IReadOnlyList<(string Option, string Value)> Customer { get; init; } = [];
}

/// <summary>Timings of the steps of a product line, in seconds.</summary>
/// <param name="Candidates">Finding the candidates.</param>
/// <param name="Costs">Computing the cost of every customer with every candidate.</param>
/// <param name="Choice">Solving for every number of geometries.</param>
/// <param name="Results">Assignments, each segment's own best geometry, the fitting chart.</param>
public sealed record ProductLineStepTimings(double Candidates, double Costs, double Choice, double Results);
