namespace FrameOpt.Search;

/// <summary>How a gene may change.</summary>
internal enum GeneKind
{
    /// <summary>To any value of its range.</summary>
    Continuous,

    /// <summary>To another place in an order.</summary>
    Stepped,

    /// <summary>To any other of some options.</summary>
    Choice,
}
