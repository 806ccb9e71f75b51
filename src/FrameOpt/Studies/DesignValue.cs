namespace FrameOpt.Studies;

/// <summary>One geometry input of a design that was asked for.</summary>
/// <param name="Factor">The input at its one level, in the study's unit, or the typed one where it is no factor of the study.</param>
/// <param name="Origin">Where the level comes from, in words: "as set", "baseline", "fixed in the study".</param>
public sealed record DesignValue(StudyFactor Factor, string Origin)
{
    /// <summary>The level in m or rad.</summary>
    public double Si => Factor.LevelsSi[0];
}
