namespace FrameOpt.Studies;

/// <summary>How many designs went where.</summary>
/// <param name="Evaluated">All designs evaluated.</param>
/// <param name="Failed">Those that cannot fly in some phase.</param>
/// <param name="OutsideLimits">Those that can fly but break a limit.</param>
/// <param name="Feasible">The rest.</param>
/// <param name="FailedBy">Why, in words, most frequent first.</param>
/// <param name="OutsideBy">For each limit in the study's order, how many of those that can fly break it.</param>
public sealed record RunCounts(
    long Evaluated,
    long Failed,
    long OutsideLimits,
    long Feasible,
    IReadOnlyList<ReasonCount> FailedBy,
    IReadOnlyList<ReasonCount> OutsideBy);
