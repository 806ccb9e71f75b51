using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>A geometry input of a study: swept over its levels, or fixed at one.</summary>
/// <param name="Input">Which geometry input.</param>
/// <param name="Name">As the study file writes it.</param>
/// <param name="LevelsSi">One or more, increasing, in m or rad; one level is a fixed factor. Of a continuous factor the two ends of its range.</param>
/// <param name="Unit">The unit the user typed.</param>
public sealed record StudyFactor(GeometryInput Input, string Name, IReadOnlyList<double> LevelsSi, DisplayUnit Unit)
{
    /// <summary>True when any value between the ends is allowed; a search of the grid cannot take such a factor.</summary>
    public bool IsContinuous { get; init; }

    /// <summary>True when there is something to choose.</summary>
    public bool IsSwept => LevelsSi.Count > 1;

    /// <summary>Highest less lowest level, in m or rad.</summary>
    public double RangeSi => LevelsSi[^1] - LevelsSi[0];
}
