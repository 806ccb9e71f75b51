using FrameOpt.Model.Mission;
using FrameOpt.Search.Stopping;
using FrameOpt.Studies;
using static System.FormattableString;

namespace FrameOpt.Reports.Text;

/// <summary>The outcome of a run in words.</summary>
public static class RunText
{
    /// <summary>Why the search ended.</summary>
    public static string Of(StopReason reason) => reason switch
    {
        StopReason.GridComplete => "every design of the grid was evaluated",
        StopReason.EvaluationsUsed used => Invariant($"{used.Evaluated:N0} designs were evaluated: the limit on evaluations was reached"),
        StopReason.TimeUsed used => Invariant($"the time limit of {used.Allowed.TotalSeconds:0.###} s was reached"),
        StopReason.Stalled { Rule: var rule } => Invariant(
            $"stalled: the last {rule.Evaluations:N0} designs made the front's hypervolume grow by less than {100 * rule.Growth:0.###} %"),
        StopReason.TargetReached => "a design reached the target",
        StopReason.NoImprovingStep => "no step improved any design",
        StopReason.LocalSearchEnded ended =>
            Invariant($"the search ended with {ended.Searched:N0} designs ({Of(ended.Search)}), the polish after ")
            + Invariant($"{ended.LocallySearched:N0} more ({Of(ended.Local)})"),
        StopReason.StoppedEarly early => Invariant($"stopped after {early.Evaluated} of {early.Planned} designs"),
        _ => throw new ArgumentOutOfRangeException(nameof(reason)),
    };

    /// <summary>The grid that the front of a search is compared with.</summary>
    public static string Grid(Certificate certificate) => certificate.CoarserGrid is { } factors
        ? $"a coarser grid inside the factors' ranges ({string.Join(", ", factors.Where(factor => factor.IsSwept).Select(Levels))})"
        : "the whole grid of the study";

    private static string Levels(StudyFactor factor) => Invariant($"{factor.Name} {factor.LevelsSi.Count} levels");

    /// <summary>A limit that a design breaks, with the value the design has.</summary>
    public static string BrokenLimit(StudyLimit limit, DesignEvaluation design) =>
        $"{StudyText.LimitTitle(limit)}; this design " + (double.IsFinite(limit.ValueOf(design))
            ? Invariant($"has {limit.ValueOf(design):0.###} {limit.Response.Unit}").TrimEnd() : "is beyond any limit");
}
