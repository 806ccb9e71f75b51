namespace FrameOpt.Plans;

/// <summary>What a run is in its plan.</summary>
public enum PointKind
{
    /// <summary>A combination of levels of a factorial, or of its fraction.</summary>
    Factorial,

    /// <summary>On the axis of one factor, all others at their middle.</summary>
    Axial,

    /// <summary>All factors at their middle.</summary>
    Centre,

    /// <summary>Some factors at their ends, the others at their middle.</summary>
    Edge,

    /// <summary>All factors at an end but one, which is at its middle (definitive screening).</summary>
    Screening,

    /// <summary>Chosen by an optimality criterion.</summary>
    Optimal,

    /// <summary>Demanded by the user, or already run.</summary>
    Given,

    /// <summary>A point of a space-filling plan.</summary>
    SpaceFilling,
}
