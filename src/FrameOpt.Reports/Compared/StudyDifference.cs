namespace FrameOpt.Reports;

/// <summary>One thing in which two studies differ.</summary>
/// <param name="Group">The part of the study: mission, machine, wing and so on.</param>
/// <param name="What">Which of its values; may be empty.</param>
/// <param name="From">In the first study; null when it is not there.</param>
/// <param name="To">In the other; null when it is not there.</param>
public sealed record StudyDifference(string Group, string What, string? From, string? To)
{
    /// <summary>"mission: climb weight 0.2 -> 0.35".</summary>
    public string Text => $"{Group}: {(What.Length > 0 ? What + " " : "")}{(From, To) switch
    {
        (null, _) => $"added ({To})",
        (_, null) => $"removed ({From})",
        _ => $"{From} -> {To}",
    }}";
}
