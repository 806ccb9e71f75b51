using FrameOpt.Studies;

namespace FrameOpt.Running;

/// <summary>How long an exhaustive run will take, roughly and rather too long than too short.</summary>
public static class RunEstimate
{
    /// <summary>Phases of designs that one processor reckons in a second.</summary>
    /// <remarks>Source: the shipped fine grid (1,102,941 designs, 5 phases) took 0.77 s for its first pass on two busy
    /// processors.</remarks>
    public const double PhasesPerSecond = 3e6;

    /// <summary>So many times the time of a design of a grid one takes that has nothing in common with the design before it.</summary>
    private const double SingleDesignCost = 10;

    /// <summary>Seconds of computing a grid, without starting the program and writing the files.</summary>
    /// <param name="designs">Of the grid.</param>
    /// <param name="phases">Of the mission.</param>
    /// <param name="processors">1 or more.</param>
    public static double Seconds(double designs, int phases, int processors)
    {
        // The search, and one more pass for each of the two other yaw leverages while that is cheap.
        var passes = designs > StudyRunner.MaxDesignsForScenarioSearch ? 1 : 3;
        return passes * designs * phases / (PhasesPerSecond * processors);
    }

    /// <summary>Seconds of computing a study.</summary>
    /// <param name="study">With any search.</param>
    /// <param name="processors">1 or more.</param>
    public static double Seconds(Study study, int processors) => study.Search switch
    {
        SearchSetting.Evolutionary evolutionary => Seconds(evolutionary.Stop.Evaluations, study.Mission.Count, 1) * SingleDesignCost
            + Seconds(Math.Min(study.GridSize ?? CertificateRun.MaxPartialGrid, CertificateRun.MaxFullGrid), study.Mission.Count,
                processors) / 3,
        _ => Seconds(study.GridSize!.Value, study.Mission.Count, processors),
    };

    /// <summary>A span of time in words: "a few seconds", "about 4 minutes".</summary>
    public static string InWords(double seconds) => seconds switch
    {
        < 2 => "a second or two",
        < 10 => "a few seconds",
        < 90 => FormattableString.Invariant($"about {Math.Ceiling(seconds / 10) * 10:0} seconds"),
        < 5400 => FormattableString.Invariant($"about {Math.Ceiling(seconds / 60):0} minutes"),
        _ => FormattableString.Invariant($"about {seconds / 3600:0.#} hours"),
    };
}
