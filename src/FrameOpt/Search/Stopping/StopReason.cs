namespace FrameOpt.Search.Stopping;

/// <summary>Why a search ended.</summary>
public abstract record StopReason
{
    private StopReason()
    {
    }

    /// <summary>Every design of the grid was evaluated.</summary>
    public sealed record GridComplete : StopReason;

    /// <summary>The search evaluated as many designs as its stop rules allow.</summary>
    /// <param name="Evaluated">Designs evaluated, 1 or more.</param>
    public sealed record EvaluationsUsed(long Evaluated) : StopReason;

    /// <summary>The time allowed is over.</summary>
    /// <param name="Allowed">By the stop rules.</param>
    public sealed record TimeUsed(TimeSpan Allowed) : StopReason;

    /// <summary>The front hardly grew any more.</summary>
    /// <param name="Rule">The rule that the growth fell below.</param>
    public sealed record Stalled(StallRule Rule) : StopReason;

    /// <summary>A feasible design reached the target of every objective.</summary>
    public sealed record TargetReached : StopReason;

    /// <summary>A local search found no step that improves a design.</summary>
    public sealed record NoImprovingStep : StopReason;

    /// <summary>A search ended and a local search after it.</summary>
    /// <param name="Searched">Designs evaluated by the search.</param>
    /// <param name="Search">Why the search ended.</param>
    /// <param name="LocallySearched">Designs evaluated by the local search.</param>
    /// <param name="Local">Why the local search ended.</param>
    public sealed record LocalSearchEnded(long Searched, StopReason Search, long LocallySearched, StopReason Local) : StopReason;

    /// <summary>The run was stopped before the search came to its end.</summary>
    /// <param name="Evaluated">Designs evaluated by then.</param>
    /// <param name="Planned">Designs of the whole search.</param>
    public sealed record StoppedEarly(long Evaluated, long Planned) : StopReason;
}
