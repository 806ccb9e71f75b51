namespace FrameOpt.Line;

/// <summary>Why a search for a line ended.</summary>
public enum LineStop
{
    /// <summary>No choice is better by more than one part in a thousand million.</summary>
    Proven,

    /// <summary>Proven best for the representatives of very many customers; the gap is what they leave open.</summary>
    Representatives,

    /// <summary>The time was up: the best so far, with the bound so far.</summary>
    TimeLimit,

    /// <summary>It was told to stop: the best so far, with the bound so far.</summary>
    Cancelled,
}
