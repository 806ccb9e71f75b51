using FrameOpt.Model.Mission;
using FrameOpt.Reports.Text;
using FrameOpt.Studies;

namespace FrameOpt.Reports.Answer;

/// <summary>What each uncertain number does alone, at both ends of where 8 of 10 cases lie.</summary>
internal static class NoiseBarsSection
{
    private const int MostNamed = 5;

    /// <summary>Above the bars wherever they stand.</summary>
    public const string Title = "What moves it most: each uncertain number alone";

    /// <summary>No limit is violated.</summary>
    public const string None = "none";

    private const string CannotFly = "cannot fly";

    /// <summary>What a reader sees beside a number that changes nothing.</summary>
    private const string Same = "the same";

    /// <summary>The table, its first row the design as drawn.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="design">As drawn.</param>
    /// <param name="uncertainty">Of that design.</param>
    /// <param name="most">Numbers shown, those that move the residual most.</param>
    public static AnswerSection Of(Study study, DesignEvaluation design, UncertaintyResult uncertainty, int most)
    {
        var bars = uncertainty.Bars;
        var left = bars.Count - most;
        return new AnswerSection(
            Title,
            [
                $"Each at its 10 % point and at its 90 % point, the others as in the study; the one that moves the residual torque in "
                    + $"{study.Mission[study.HeaviestSettledPhase].Name} most comes first.",
                .. study.IsOneFrame ? [] : new[] { Changes(bars) },
                .. left > 0 ? new[] { $"Left out here: {NumberFormat.Count(left, "number")} of less effect." } : [],
            ],
            new AnswerTable(
                ["number", "is off by", .. study.Mission.Select(phase => $"residual torque, {phase.Name}"), "largest effort",
                    "limits violated", .. study.IsOneFrame ? Array.Empty<string>() : ["best design there"]],
                [
                    Row(study, "as drawn", "nothing", design, ""),
                    .. bars.Take(most).SelectMany(bar => (IReadOnlyList<string>[])
                    [
                        End(bar, bar.LowDeviation, bar.Low, bar.LowBest), End(bar, bar.HighDeviation, bar.High, bar.HighBest),
                    ]),
                ]));
        IReadOnlyList<string> End(NoiseBar bar, double deviation, DesignEvaluation there, FrontDesign? best) => Row(
            study, bar.Source.Title, NoiseText.Deviation(bar.Source, deviation), there, Best(study, design, there, best));
    }

    /// <summary>What the best design would be with a number off, in the factors that differ from the chosen one.</summary>
    /// <param name="study">As understood.</param>
    /// <param name="chosen">As drawn.</param>
    /// <param name="there">The chosen design there.</param>
    /// <param name="best">Another design that is best there, or null.</param>
    public static string Best(Study study, DesignEvaluation chosen, DesignEvaluation there, FrontDesign? best)
    {
        // The chosen design is the best there, unless it violates a limit: then so does every other.
        if (best is null)
            return study.Limits.All(limit => limit.IsMetBy(there)) ? Same : "none meets every limit";
        return GeometryText.Difference(study, best.Geometry, chosen.Geometry) is { Length: > 0 } text ? text : Same;
    }

    /// <summary>The limits that a design violates, in words.</summary>
    public static string Violated(Study study, DesignEvaluation design) => design.Failure is not null ? CannotFly
        : string.Join(", ", study.Limits.Where(limit => !limit.IsMetBy(design)).Select(limit => limit.Response.Entry.Title).Distinct())
            is { Length: > 0 } text ? text : None;

    private static IReadOnlyList<string> Row(Study study, string name, string deviation, DesignEvaluation design, string best) =>
    [
        name,
        deviation,
        .. design.Failure is null ? design.Phases.Select(phase => SideText.Moment(phase[PhaseQuantity.Residual]))
            : study.Mission.Select(_ => CannotFly),
        design.Failure is null ? NumberFormat.Text(design[MissionQuantity.EffortWorst], "") : CannotFly,
        Violated(study, design),
        .. study.IsOneFrame ? Array.Empty<string>() : [best],
    ];

    private static string Changes(IReadOnlyList<NoiseBar> bars)
    {
        var changing = bars.Where(bar => bar.LowBest is not null || bar.HighBest is not null).Select(bar => bar.Source.Title).ToList();
        return changing.Count == 0 ? "None of them, alone, would make another design of the front the best."
            : changing.Count > MostNamed ? $"{changing.Count} of the {bars.Count}, alone, would make another design of the front the best."
            : $"Another design of the front would be the best with one of these off by so much: {string.Join("; ", changing)}.";
    }
}
